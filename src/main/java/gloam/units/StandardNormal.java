package gloam.units;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The standard normal distribution, read off a table of what the library says of it: choosing exposures and
 * drawing trails ask by the million, and the library takes forty times as long.
 */
public final class StandardNormal {

    /** So many standard deviations out all of it lies on one side, to 1e-9. */
    private static final int REACH = 6;
    private static final int STEPS_A_SIGMA = 512;
    /** Share below 0 and each step above it. */
    private static final double[] BELOW = table();

    private StandardNormal() {
    }

    private static double[] table() {
        NormalDistribution standard = new NormalDistribution();
        return IntStream.rangeClosed(0, REACH * STEPS_A_SIGMA)
                .mapToDouble(step -> standard.cumulativeProbability((double) step / STEPS_A_SIGMA)).toArray();
    }

    /** Share of the distribution below a number of standard deviations from its middle, 0 to 1, to 1.2e-7. */
    public static double below(double sigmas) {
        double out = Math.abs(sigmas) * STEPS_A_SIGMA;
        int step = (int) out;
        double share = out >= REACH * STEPS_A_SIGMA ? 1 : BELOW[step]
                + (out - step) * (BELOW[step + 1] - BELOW[step]);
        return sigmas > 0 ? share : 1 - share;
    }
}
