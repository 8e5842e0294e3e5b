package gloam.units;

/** Ratios of light counted in stops, the logarithm to the base 2; plus is more light. */
public final class Stops {

    /** Magnitudes in a stop, by Pogson's law. */
    public static final double MAG = 2.5 * Math.log10(2);

    private static final double LN_2 = Math.log(2);

    private Stops() {
    }

    /**
     * How many stops the amount {@code to} is above the amount {@code from}, both positive and in one unit.
     */
    public static double between(double from, double to) {
        return Math.log(to / from) / LN_2;
    }

    /** The factor that stands for a number of stops: 2 for one stop, 0.5 for minus one. */
    public static double factor(double stops) {
        return Math.exp(stops * LN_2);
    }
}
