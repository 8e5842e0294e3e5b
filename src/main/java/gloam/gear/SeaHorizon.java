package gloam.gear;

/**
 * How far below the level the horizon of the sea is seen.
 *
 * <p><b>Model.</b> Dip in minutes of arc = 1.76 times the root of the height of eye in metres, refraction
 * included: The Nautical Almanac, altitude correction tables. <b>Valid.</b> Heights to some thousands of
 * metres. <b>Error.</b> A few minutes of arc where sea and air differ in temperature. <b>Departures.</b>
 * None; at and below the sea's level the dip is 0.
 */
final class SeaHorizon {

    private static final double ARCMIN_ROOT_M = 1.76;

    private SeaHorizon() {
    }

    /** The dip in degrees, positive downward, from a height over the sea in metres. */
    static double dipDeg(double heightM) {
        return ARCMIN_ROOT_M * Math.sqrt(Math.max(0, heightM)) / 60;
    }
}
