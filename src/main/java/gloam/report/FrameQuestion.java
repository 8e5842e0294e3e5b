package gloam.report;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;

/**
 * What is asked about a framing.
 *
 * @param site    where
 * @param framing where the camera points
 * @param open    from opening to closing the shutter
 * @param every   spacing of the points along a trail
 * @param airless whether refraction is left out
 */
public record FrameQuestion(Site site, Framing framing, Interval open, Duration every, boolean airless) {

    TrailEstimator estimator(Ephemeris ephemeris) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        return airless ? estimator.airless() : estimator;
    }
}
