package gloam.report;

import gloam.units.Angle;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/** Cuts numbers to the accuracy claimed for them, once and for every rendering. */
final class Rounding {

    private static final double[] TENS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7};

    private Rounding() {
    }

    /** A position in the sky in degrees, to 1e-5 (0.04″). */
    static double positionDeg(Angle angle) {
        return decimals(angle.degrees(), 5);
    }

    /** An azimuth in degrees, 0 (included) to 360 (left out), to 1e-5. */
    static double azimuthDeg(Angle azimuth) {
        double deg = positionDeg(azimuth.positive());
        return deg >= 360 ? 0 : deg;
    }

    /** A direction on the sheet in degrees, 0 (included) to 360 (left out), to 1e-3. */
    static double directionDeg(Angle direction) {
        double deg = angleDeg(direction.positive());
        return deg >= 360 ? 0 : deg;
    }

    /** A phase angle or a length on the sky in degrees, to 1e-3. */
    static double angleDeg(Angle angle) {
        return decimals(angle.degrees(), 3);
    }

    /** A magnitude, to 0.01. */
    static double mag(double mag) {
        return decimals(mag, 2);
    }

    /** A magnitude where there is one. */
    static OptionalDouble magIfKnown(double mag) {
        return Double.isFinite(mag) ? OptionalDouble.of(mag(mag)) : OptionalDouble.empty();
    }

    /** A number of stops, to 0.001. */
    static double stops(double stops) {
        return decimals(stops, 3);
    }

    /** A share from 0 to 1, to 1e-4. */
    static double fraction(double fraction) {
        return decimals(fraction, 4);
    }

    /** A length on the sheet in mm, to 0.1 µm. */
    static double mm(double mm) {
        return decimals(mm, 4);
    }

    /** The same where there is one. */
    static OptionalDouble mm(Optional<Double> mm) {
        return mm.map(length -> OptionalDouble.of(mm(length))).orElse(OptionalDouble.empty());
    }

    /** Hours, to 0.001 (3.6 s). */
    static double hours(double hours) {
        return decimals(hours, 3);
    }

    /** An exposure time in s, to five digits. */
    static double seconds(double seconds) {
        return digits(seconds, 5);
    }

    /** A luminance or an illuminance, to four digits. */
    static double light(double light) {
        return digits(light, 4);
    }

    /** A distance in km, to nine digits. */
    static double distanceKm(double km) {
        return digits(km, 9);
    }

    /** A number with so many decimals, 0 to 7, minus zero made plain. */
    static double decimals(double value, int decimals) {
        return Math.rint(value * TENS[decimals]) / TENS[decimals] + 0.0;
    }

    private static double digits(double value, int digits) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN)).doubleValue()
                : value;
    }
}
