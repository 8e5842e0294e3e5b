package gloam.support;

import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

/**
 * The Moon's geocentric place.
 *
 * <p><b>Model.</b> "Low-precision formulas for geocentric coordinates of the Moon", The Astronomical Almanac,
 * section D; ecliptic and equinox of date.
 * <b>Valid.</b> Near our time.
 * <b>Error.</b> Rarely more than 0.3° in longitude, 0.2° in latitude and 0.003° in parallax.
 * <b>Departures.</b> None.
 */
final class LowPrecisionMoon {

    private static final double EARTH_RADIUS_KM = 6378.137;

    /** Degrees of amplitude, phase and rate a Julian century; sines. */
    private static final double[][] LONGITUDE = {
        { 6.29, 135.0,  477198.87},
        {-1.27, 259.3, -413335.36},
        { 0.66, 235.7,  890534.22},
        { 0.21, 269.9,  954397.74},
        {-0.19, 357.5,   35999.05},
        {-0.11, 186.5,  966404.03},
    };
    /** Degrees of amplitude, phase and rate a Julian century; sines. */
    private static final double[][] LATITUDE = {
        { 5.13,  93.3,  483202.02},
        { 0.28, 228.2,  960400.89},
        {-0.28, 318.3,    6003.15},
        {-0.17, 217.6, -407332.21},
    };
    /** Degrees of amplitude, phase (a quarter turn on, for cosines) and rate a Julian century. */
    private static final double[][] PARALLAX = {
        {0.0518, 225.0,  477198.87},
        {0.0095, 349.3, -413335.36},
        {0.0078, 325.7,  890534.22},
        {0.0028, 359.9,  954397.74},
    };

    private LowPrecisionMoon() {
    }

    /** Geocentric place in km, ecliptic of date, for days from J2000.0 (TT). */
    static Vector ecliptic(double daysFromJ2000) {
        double centuries = daysFromJ2000 / 36525;
        double longitudeDeg = 218.32 + 481267.881 * centuries + sumDeg(LONGITUDE, centuries);
        double latitudeDeg = sumDeg(LATITUDE, centuries);
        double parallaxDeg = 0.9508 + sumDeg(PARALLAX, centuries);
        return Vector.polar(toRadians(longitudeDeg), toRadians(latitudeDeg),
                EARTH_RADIUS_KM / sin(toRadians(parallaxDeg)));
    }

    private static double sumDeg(double[][] terms, double centuries) {
        double sumDeg = 0;
        for (double[] term : terms) {
            sumDeg += term[0] * sin(toRadians(term[1] + term[2] * centuries));
        }
        return sumDeg;
    }
}
