package gloam.view;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;

/**
 * What is asked about a framing.
 *
 * @param site     where
 * @param framing  where the camera points
 * @param openings when the shutter is open, in order of time, at least one, without overlaps
 * @param every    spacing of the points along a trail
 * @param airless  whether refraction is left out
 */
public record FrameQuestion(Site site, Framing framing, List<Interval> openings, Duration every, boolean airless) {

    /** Copies the list. */
    public FrameQuestion {
        openings = List.copyOf(openings);
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return Interval.span(openings);
    }

    TrailEstimator estimator(Ephemeris ephemeris) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        return airless ? estimator.airless() : estimator;
    }
}
