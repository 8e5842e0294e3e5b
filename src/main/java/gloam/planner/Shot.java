package gloam.planner;

import gloam.gear.FNumber;
import gloam.trail.Framing;

/**
 * One exposure considered for a wish.
 *
 * @param framing      how the camera looks
 * @param openMin      minute of opening
 * @param closeMin     minute of closing
 * @param fNumber      the f-number
 * @param toneStops    the sky's tone at the frame's centre
 * @param shortfallMag magnitudes by which the trail limit misses what must record; not positive when it does not
 * @param satisfaction how far it gives what the wish asks for, 0 to 1
 * @param safety       how far it is from the bounds of what the wish asks for, 0 (on one) to 1
 */
record Shot(Framing framing, int openMin, int closeMin, FNumber fNumber, double toneStops,
        double shortfallMag,
            double satisfaction, double safety) {

    private static final int SAFETY_STEPS = 10;
    private static final int MERIT_A_THOUSANDTH = 1000;
    private static final double MOST_MERIT = 1e6;

    int durationMin() {
        return closeMin - openMin;
    }

    int middleMin() {
        return openMin + durationMin() / 2;
    }

    /** What it is to be preferred by: satisfaction in thousandths, of equals the safer in tenths. */
    long merit() {
        return merit(satisfaction, safety);
    }

    /** The merit of a satisfaction and a safety. */
    static long merit(double satisfaction, double safety) {
        return MERIT_A_THOUSANDTH * Math.round(satisfaction * 1000) + Math.round(safety * SAFETY_STEPS);
    }

    /** The merit as a share of 1, but for safety the satisfaction. */
    double value() {
        return merit() / MOST_MERIT;
    }
}
