package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import gloam.units.Range;
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
public record FrameQuestion(Site site, Framing framing, List<Interval> openings, Duration every,
        boolean airless) {

    private static final Range POINTS = new Range("number of points along a trail", 1, 10_000, "");

    /** Copies the list; refuses too many points with {@link gloam.units.BadInput}. */
    public FrameQuestion {
        openings = List.copyOf(openings);
        double openMs = openings.stream().map(Interval::lasts).mapToLong(Duration::toMillis).sum();
        POINTS.check(Math.ceil(openMs / every.toMillis()));
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return new Interval(openings.get(0).start(), openings.get(openings.size() - 1).endExclusive());
    }

    /** How long the shutter is open in all, in s. */
    public double openS() {
        return openings.stream().mapToDouble(Interval::seconds).sum();
    }

    /** How targets run at the site, with or without refraction as asked. */
    public TrailEstimator estimator(Ephemeris ephemeris) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        return airless ? estimator.airless() : estimator;
    }
}
