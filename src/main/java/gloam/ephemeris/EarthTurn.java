package gloam.ephemeris;

/** The turn of the Earth against the stars: the rate of its rotation angle (IAU Resolution B1.8 of 2000). */
public final class EarthTurn {

    /** In rad/s. */
    public static final double RAD_S = 1.00273781191135448 * 2 * Math.PI / 86_400;

    private EarthTurn() {
    }

    /** By how many degrees the sky turns in so many seconds. */
    public static double degrees(double seconds) {
        return Math.toDegrees(RAD_S * seconds);
    }
}
