package gloam.units;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The standard normal distribution, read off a table of what the library says of it: choosing exposures and
 * drawing trails ask by the million, and the library takes forty times as long. Between the steps of the
 * table runs the cubic that has the distribution's density at both ends.
 */
public final class StandardNormal {

    /** So many standard deviations out all of it lies on one side, to 1e-9. */
    private static final int REACH = 6;
    private static final int STEPS_A_SIGMA = 64;
    private static final NormalDistribution STANDARD = new NormalDistribution();
    /** Share below 0 and each step above it, and how much it grows in a step there. */
    private static final double[] BELOW = table(STANDARD::cumulativeProbability);
    private static final double[] GROWTH = table(sigmas -> STANDARD.density(sigmas) / STEPS_A_SIGMA);

    private StandardNormal() {
    }

    private static double[] table(DoubleUnaryOperator of) {
        return IntStream.rangeClosed(0, REACH * STEPS_A_SIGMA)
                .mapToDouble(step -> of.applyAsDouble((double) step / STEPS_A_SIGMA)).toArray();
    }

    /** Share of the distribution below a number of standard deviations from its middle, 0 to 1, to 1e-9. */
    public static double below(double sigmas) {
        double out = Math.abs(sigmas) * STEPS_A_SIGMA;
        int step = (int) out;
        double share = out >= REACH * STEPS_A_SIGMA ? 1 : between(step, out - step);
        return sigmas > 0 ? share : 1 - share;
    }

    private static double between(int step, double part) {
        double rise = BELOW[step + 1] - BELOW[step];
        double atStart = GROWTH[step] - rise;
        double atEnd = rise - GROWTH[step + 1];
        return BELOW[step] + part * (rise + (1 - part) * (atStart * (1 - part) + atEnd * part));
    }
}
