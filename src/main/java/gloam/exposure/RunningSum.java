package gloam.exposure;

import java.time.Instant;
import java.util.Optional;

/**
 * Integral over time of a rate known at even steps, forwards and backwards.
 *
 * <p>Between two steps the rate is taken as exponential, which light fading or growing in twilight and any
 * power of it nearly are; where it is zero at one end, as straight.
 */
final class RunningSum {

    private static final double NEARLY_EVEN = 1e-6;

    /** Share of the whole by which rounding may have made an amount larger than it was. */
    private static final double ROUNDING = 1e-12;

    private final Grid grid;
    private final double[] ratesPerS;
    private final double[] sums;

    RunningSum(Grid grid, double[] ratesPerS) {
        this.grid = grid;
        this.ratesPerS = ratesPerS;
        this.sums = new double[ratesPerS.length];
        for (int panel = 0; panel < grid.steps(); panel++) {
            sums[panel + 1] = sums[panel] + within(panel, 1);
        }
    }

    /** What has come together from one instant to a later one, both cut to the span. */
    double between(Instant from, Instant to) {
        return until(to) - until(from);
    }

    /**
     * When that much has come together since an instant: later by 1 ns at least, that instant where it is
     * nothing or less, empty when not by the end of the span.
     */
    Optional<Instant> reached(Instant from, double amount) {
        if (amount <= 0) {
            return Optional.of(from);
        }
        double wanted = until(from) + amount;
        if (wanted > sums[grid.steps()] * (1 + ROUNDING)) {
            return Optional.empty();
        }
        int panel = panelReaching(wanted);
        Instant at = grid.at(panel + shareFor(panel, wanted - sums[panel]));
        return Optional.of(at.isAfter(from) ? at : from.plusNanos(1));
    }

    private double until(Instant at) {
        double step = grid.stepOf(at);
        int panel = grid.panelOf(step);
        return sums[panel] + within(panel, step - panel);
    }

    private int panelReaching(double wanted) {
        int low = 0;
        int high = grid.steps();
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (sums[middle] >= wanted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private double within(int panel, double share) {
        double first = ratesPerS[panel];
        double last = ratesPerS[panel + 1];
        if (first > 0 && last > 0) {
            double growth = Math.log(last / first);
            double mean = Math.abs(growth) < NEARLY_EVEN ? 1 + growth * share / 2
                    : Math.expm1(growth * share) / (growth * share);
            return share == 0 ? 0 : grid.stepS() * share * first * mean;
        }
        return grid.stepS() * share * (first + share * (last - first) / 2);
    }

    private double shareFor(int panel, double amount) {
        double first = ratesPerS[panel];
        double last = ratesPerS[panel + 1];
        double even = amount / grid.stepS();
        if (first > 0 && last > 0) {
            double growth = Math.log(last / first);
            return Math.min(1, Math.abs(growth) < NEARLY_EVEN ? even / first
                    : Math.log1p(growth * even / first) / growth);
        }
        double root = Math.sqrt(Math.max(0, first * first + 2 * (last - first) * even));
        return Math.min(1, 2 * even / (first + root));
    }
}
