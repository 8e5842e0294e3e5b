package gloam.units;

import java.util.Arrays;
import org.hipparchus.stat.StatUtils;

/** The middle of some values, and how far they scatter about it, neither moved by a few that lie far off. */
public final class Median {

    /** A normal distribution's standard deviation over its median deviation. */
    public static final double NORMAL = 1.4826;

    private Median() {
    }

    /** The middle of at least one value. */
    public static double of(double... values) {
        return StatUtils.percentile(values, 50);
    }

    /** The standard deviation of a median of normal values, by their scatter about it. */
    public static double error(double[] values, double median) {
        return Math.sqrt(Math.PI / 2 / values.length) * scatter(values, median);
    }

    /** The standard deviation of at least one value about another, by the median deviation. */
    public static double scatter(double[] values, double about) {
        return NORMAL * of(Arrays.stream(values).map(value -> Math.abs(value - about)).toArray());
    }
}
