package gloam.planner;

/**
 * How far an exposure gives what its wish asks for, 0 to 1: 1 within a tolerance, beyond it the Gaussian of the miss.
 *
 * <p>The tolerances and spreads are common practice, no source: a print half a stop off is still the picture meant.
 */
final class Satisfaction {

    /** No tone further from the one wanted is considered, in stops. */
    static final double MOST_TONE_MISS_STOPS = 1.5;
    /** Less than this is not worth a sheet. */
    static final double LEAST = 0.3;

    private static final double TONE_TOLERANCE_STOPS = 0.25;
    private static final double TONE_SPREAD_STOPS = 0.75;
    private static final double RECORDS_SPREAD_MAG = 0.5;

    private Satisfaction() {
    }

    /** By the tone made, in stops from the mid-tone. */
    static double ofTone(Wish.Tone wanted, double madeStops) {
        double missStops = wanted instanceof Wish.Tone.Near near ? Math.abs(madeStops - near.stops())
                : wanted instanceof Wish.Tone.AtMost most ? madeStops - most.stops() : 0;
        return gaussian(missStops - TONE_TOLERANCE_STOPS, TONE_SPREAD_STOPS);
    }

    /** By how many magnitudes deeper the trail limit would have to be for all to record that must. */
    static double ofRecords(double shortfallMag) {
        return gaussian(shortfallMag, RECORDS_SPREAD_MAG);
    }

    private static double gaussian(double miss, double spread) {
        return miss <= 0 ? 1 : Math.exp(-0.5 * miss * miss / (spread * spread));
    }
}
