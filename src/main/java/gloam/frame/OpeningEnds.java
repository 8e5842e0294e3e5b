package gloam.frame;

import gloam.ephemeris.EarthTurn;
import gloam.units.Median;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;

/**
 * How an opening of the shutter differs from what was noted, by the ends of its trails.
 *
 * <p>The camera was turned about the sky's pole so that all ends together are where they should be; what is
 * left is how each differs from the others.
 *
 * @param begins        how many beginnings of trails were found
 * @param opensLaterS   by how much it opened later, in s; empty where too few were found
 * @param opensErrorS   one standard deviation of that
 * @param ends          how many ends were found
 * @param closesLaterS  by how much it closed later, in s
 * @param closesErrorS  one standard deviation of that
 */
public record OpeningEnds(int begins, OptionalDouble opensLaterS, OptionalDouble opensErrorS, int ends,
        OptionalDouble closesLaterS, OptionalDouble closesErrorS) {

    private static final int LEAST = 3;
    private static final double OUTLYING = 2.5;
    private static final double LEAST_REACH_DEG = 0.15;

    static OpeningEnds of(TrailEnds found, double everyDeg) {
        return new OpeningEnds(found.beginsDeg().length, later(found.beginsDeg()),
                error(found.beginsDeg(), everyDeg), found.endsDeg().length, later(found.endsDeg()),
                error(found.endsDeg(), everyDeg));
    }

    private static OptionalDouble later(double[] deg) {
        return deg.length < LEAST ? OptionalDouble.empty()
                : OptionalDouble.of(seconds(StatUtils.mean(sound(deg))));
    }

    private static OptionalDouble error(double[] deg, double everyDeg) {
        double[] sound = sound(deg);
        return deg.length < LEAST ? OptionalDouble.empty() : OptionalDouble.of(seconds(
                Math.max(everyDeg / 2, Math.sqrt(StatUtils.variance(sound))) / Math.sqrt(sound.length)));
    }

    /** Those that do not lie far off, where other trails cross. */
    private static double[] sound(double[] deg) {
        double middle = deg.length == 0 ? 0 : Median.of(deg);
        double reach = deg.length == 0 ? 0 : Math.max(LEAST_REACH_DEG, OUTLYING * Median.scatter(deg,
                middle));
        return Arrays.stream(deg).filter(one -> Math.abs(one - middle) <= reach).toArray();
    }

    private static double seconds(double deg) {
        return Math.toRadians(deg) / EarthTurn.RAD_S;
    }
}
