package gloam.ephemeris;

/**
 * How many stars there are beyond those of a catalogue.
 *
 * <p><b>Model.</b> Stars of the whole sky by V magnitude as the Hipparcos catalogue counts them to magnitude
 * 8 (ESA 1997, SP-1200; counts as in OEIS A053406); from there to 11 they grow as in the model of Bahcall and
 * Soneira 1980 (ApJS 44, 73, equation B1) at 30° galactic latitude. Around a place the brighter stars stand
 * for the fainter ones, so that the Milky Way comes with them. <b>Valid.</b> To magnitude 11. <b>Error.</b> A
 * tenth to magnitude 8, a fifth beyond, and the square root of the number that they are reckoned from.
 * <b>Departures.</b> Fainter stars crowd a little more towards the Milky Way than bright ones.
 */
public final class FainterStars {

    private static final double FIRST_MAG = 4;
    /** Common logarithms of the number of stars to magnitude 4, 5, 6, 7, 8, 9, 10 and 11. */
    private static final double[] LOG_NUMBER = {2.7084, 3.2041, 3.6962, 4.1855, 4.6113, 5.0073, 5.3932,
            5.7668};

    private FainterStars() {
    }

    /**
     * Number of stars between two V magnitudes for each one brighter than the first, 4 to 11; the second
     * counts as 11 at most.
     */
    public static double each(double fromMag, double toMag) {
        return toMag <= fromMag ? 0 : Math.pow(10, logNumber(toMag) - logNumber(fromMag)) - 1;
    }

    private static double logNumber(double mag) {
        double place = Math.max(0, Math.min(LOG_NUMBER.length - 1, mag - FIRST_MAG));
        int below = Math.min((int) place, LOG_NUMBER.length - 2);
        return LOG_NUMBER[below] + (place - below) * (LOG_NUMBER[below + 1] - LOG_NUMBER[below]);
    }
}
