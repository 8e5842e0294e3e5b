package gloam.view;

import java.util.ArrayList;
import java.util.List;

/**
 * An axis of exposure times on a drawing, each step of it in equal ratios.
 *
 * @param leastS the time at its left end, in seconds
 * @param mostS  the time at its right end
 * @param left   where it begins
 * @param width  how long it is
 */
record TimeAxis(double leastS, double mostS, double left, double width) {

    /** Round times, those first that are marked before others. */
    private static final List<Double> ROUND_S = List.of(0.001, 0.01, 0.1, 1.0, 10.0, 60.0, 600.0, 3600.0,
            14_400.0, 86_400.0, 864_000.0, 7200.0, 28_800.0, 1800.0, 300.0);

    /** Where a time stands; one before the axis at its left end. */
    double x(double seconds) {
        return left + width * Math.log(Math.max(seconds, leastS) / leastS) / Math.log(mostS / leastS);
    }

    /** The round times on it that stand at least so far apart. */
    List<Double> ticks(double apart) {
        List<Double> ticks = new ArrayList<>();
        for (double time : ROUND_S) {
            if (time >= leastS && time <= mostS
                    && ticks.stream().allMatch(other -> Math.abs(x(time) - x(other)) >= apart)) {
                ticks.add(time);
            }
        }
        return ticks;
    }
}
