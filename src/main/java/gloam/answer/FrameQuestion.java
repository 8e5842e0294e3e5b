package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.util.List;

/**
 * A question about a framing.
 *
 * @param site     where
 * @param setting  where the camera points, and when its shutter is open
 * @param every    spacing of the points along a trail
 * @param airless  whether to ignore refraction
 */
public record FrameQuestion(Site site, Setting setting, Duration every, boolean airless) {

    private static final Range POINTS = new Range("number of points along a trail", 1, 10_000, "");

    /** Refuses too many points with {@link gloam.units.BadInput}. */
    public FrameQuestion {
        double openMs = setting.openings().stream().map(Interval::lasts).mapToLong(Duration::toMillis).sum();
        POINTS.check(Math.ceil(openMs / every.toMillis()));
    }

    /** Where the camera points. */
    public Framing framing() {
        return setting.framing();
    }

    /** When the shutter is open, in order of time. */
    public List<Interval> openings() {
        return setting.openings();
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return setting.whole();
    }

    /** How long the shutter is open in all, in s. */
    public double openS() {
        return Interval.seconds(openings());
    }

    /** Computes trails at the site, with or without refraction as asked. */
    public TrailEstimator estimator(Ephemeris ephemeris) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        return airless ? estimator.airless() : estimator;
    }
}
