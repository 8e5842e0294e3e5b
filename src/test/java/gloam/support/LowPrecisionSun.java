package gloam.support;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

/**
 * The Sun's geocentric place.
 *
 * <p><b>Model.</b> "Low-precision formulas for the Sun's coordinates", The Astronomical Almanac, section C;
 * apparent, ecliptic and equinox of date.
 * <b>Valid.</b> 1950 to 2050.
 * <b>Error.</b> 0.01° inside that span.
 * <b>Departures.</b> Used to 2060.
 */
final class LowPrecisionSun {

    private LowPrecisionSun() {
    }

    /** Geocentric place in au, ecliptic of date, for days from J2000.0 (TT). */
    static Vector ecliptic(double daysFromJ2000) {
        double meanLongitudeDeg = 280.460 + 0.9856474 * daysFromJ2000;
        double anomalyRad = toRadians(357.528 + 0.9856003 * daysFromJ2000);
        double longitudeDeg = meanLongitudeDeg + 1.915 * sin(anomalyRad) + 0.020 * sin(2 * anomalyRad);
        double distanceAu = 1.00014 - 0.01671 * cos(anomalyRad) - 0.00014 * cos(2 * anomalyRad);
        return Vector.polar(toRadians(longitudeDeg), 0, distanceAu);
    }
}
