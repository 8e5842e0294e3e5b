package gloam.planner;

/**
 * What an exposure adds to a trip, as one whole number, so that sums are exact and equals are equal: its
 * worth times its chance, and far below it what is preferred where nothing of that is lost.
 */
final class Gain {

    /** A ten-thousandth of a worth of 1. */
    private static final long STEP = 1_000_000_000;
    private static final int STEPS_A_HUNDREDTH = 100;
    private static final long PREFERENCE = 100;

    /** Lost with each night on which anything is exposed: less than any preference among exposures counts. */
    static final long NIGHT_OUT = PREFERENCE / 10;
    /** Lost with each move to another site, where travel takes time: less than a night out. */
    static final long MOVE = NIGHT_OUT / 10;

    private static final int EARLY_MIN = 60;
    private static final long HOUR = 1_000_000;

    private Gain() {
    }

    /**
     * How late a night out is, by which timetables of the same gain are told apart: first by the full hours
     * at which their nights end, summed up, then by how early in the trip their sheets are exposed.
     *
     * @param endMin when the last sheet of the night is done, in minutes of the night
     * @param night  number of the night
     * @param sheets how many are exposed on it
     */
    static long late(int endMin, int night, int sheets) {
        return endMin / EARLY_MIN * HOUR + (long) night * sheets;
    }

    /**
     * The gain of an exposure.
     *
     * @param worth      the worth of its wish
     * @param hundredths its chance in hundredths, more than 0
     * @param preference see {@link Preference#of}
     */
    static long of(double worth, int hundredths, int preference) {
        return Math.round(worth * hundredths * STEPS_A_HUNDREDTH) * STEP + preference * PREFERENCE;
    }

    /** A gain, or a sum of up to a hundred, as far as it is worth: without what is preferred. */
    static long ofWorth(long gain) {
        return Math.floorDiv(gain, STEP) * STEP;
    }

    /** The worth times the chance of an exposure. */
    static double worth(long gain) {
        return (double) Math.floorDiv(gain, STEP) / STEPS_A_HUNDREDTH / Chance.CERTAIN;
    }
}
