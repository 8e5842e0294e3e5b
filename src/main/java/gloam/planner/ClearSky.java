package gloam.planner;

import java.util.BitSet;
import java.util.OptionalDouble;

/** The chance that the sky of a night stays clear between two of its minutes, added up once. */
final class ClearSky {

    private static final int NODE_MIN = NightClock.NODE_MIN;

    private final Trip trip;
    private final NightClock clock;
    private final double[] logarithm;
    private final int[] unknown;

    /**
     * The sky of a night of a trip.
     *
     * @param asked the minutes between which it may be asked for
     */
    ClearSky(Trip trip, NightClock clock, BitSet asked) {
        this.trip = trip;
        this.clock = clock;
        this.logarithm = new double[clock.nodes() + 1];
        this.unknown = new int[clock.nodes() + 1];
        int first = Math.max(0, asked.nextSetBit(0)) / NODE_MIN;
        int last = trip.forecast().isEmpty() ? -1 : asked.length() / NODE_MIN;
        for (int node = first; node <= last; node++) {
            OptionalDouble clear = trip.forecast().get()
                    .clearChance(clock.span(node * NODE_MIN, (node + 1) * NODE_MIN));
            logarithm[node + 1] = logarithm[node] + Math.log(clear.orElse(1));
            unknown[node + 1] = unknown[node] + (clear.isPresent() ? 0 : 1);
        }
    }

    /** The chance for an exposure, 0 to 1. */
    double chance(int openMin, int closeMin) {
        return unknown[closeMin / NODE_MIN + 1] > unknown[openMin / NODE_MIN]
                ? trip.clearChance(clock.span(openMin, closeMin)) : Math.exp(upTo(closeMin) - upTo(openMin));
    }

    private double upTo(int minute) {
        int node = minute / NODE_MIN;
        return logarithm[node] + (logarithm[node + 1] - logarithm[node]) * (minute % NODE_MIN) / NODE_MIN;
    }
}
