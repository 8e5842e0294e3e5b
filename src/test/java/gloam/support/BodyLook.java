package gloam.support;

import static java.lang.Math.abs;
import static java.lang.Math.log10;

import gloam.ephemeris.Body;

/**
 * How bright and how large bodies look, roughly.
 *
 * <p><b>Model.</b> Planets: J. Meeus, Astronomical Algorithms, 2nd ed., ch. 41 (after G. Müller) and ch. 55;
 * Moon: C. W. Allen as quoted by Krisciunas &amp; Schaefer 1991, PASP 103, 1033; Sun: −26.74.
 * <b>Valid.</b> Phase angles at which the body can be seen at night.
 * <b>Error.</b> About 0.3 mag.
 * <b>Departures.</b> Saturn without its rings' tilt, at a middling −0.4 mag for them.
 */
final class BodyLook {

    private static final double KM_A_AU = 149_597_870.7;
    private static final double MOON_MEAN_KM = 384_400;
    private static final double MOON_RADIUS_KM = 1737.4;

    private BodyLook() {
    }

    /** Apparent V magnitude, distances in au. */
    static double magnitude(Body body, double phaseDeg, double fromSunAu, double fromSiteAu) {
        double spread = body == Body.SUN ? 5 * log10(fromSiteAu)
                : body == Body.MOON ? 5 * log10(fromSiteAu * KM_A_AU / MOON_MEAN_KM)
                : 5 * log10(fromSunAu * fromSiteAu);
        return spread + atUnitDistanceMag(body, phaseDeg);
    }

    private static double atUnitDistanceMag(Body body, double iDeg) {
        return switch (body) {
            case SUN -> -26.74;
            case MOON -> -12.73 + 0.026 * abs(iDeg) + 4e-9 * Math.pow(iDeg, 4);
            case MERCURY -> -0.42 + 0.0380 * iDeg - 0.000273 * iDeg * iDeg + 0.000002 * iDeg * iDeg * iDeg;
            case VENUS -> -4.40 + 0.0009 * iDeg + 0.000239 * iDeg * iDeg - 0.00000065 * iDeg * iDeg * iDeg;
            case MARS -> -1.52 + 0.016 * iDeg;
            case JUPITER -> -9.40 + 0.005 * iDeg;
            case SATURN -> -8.88 - 0.4;
            case URANUS -> -7.19;
            case NEPTUNE -> -6.87;
        };
    }

    /** Half the disc's angle in radians, distance in au. */
    static double semidiameterRad(Body body, double fromSiteAu) {
        double atOneAuArcsec = switch (body) {
            case SUN -> 959.63;
            case MOON -> Math.toDegrees(Math.asin(MOON_RADIUS_KM / KM_A_AU)) * 3600;
            case MERCURY -> 3.36;
            case VENUS -> 8.34;
            case MARS -> 4.68;
            case JUPITER -> 98.44;
            case SATURN -> 82.73;
            case URANUS -> 35.02;
            case NEPTUNE -> 33.50;
        };
        return Math.asin(Math.sin(Math.toRadians(atOneAuArcsec / 3600)) / fromSiteAu);
    }
}
