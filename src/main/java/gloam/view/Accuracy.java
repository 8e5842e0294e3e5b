package gloam.view;

import gloam.gear.FNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;

/** How far a number of a report is cut where it is handed on as a number: by the unit its name ends in. */
final class Accuracy {

    private static final int MOST_DECIMALS = 8;
    private static final Map<String, Cut> BY_UNIT = new HashMap<>();

    static {
        decimals(7, "LatitudeDeg", "LongitudeDeg");
        decimals(6, "DiameterDeg");
        decimals(5, "Deg", "IlluminatedFraction");
        decimals(4, "PhaseAngleDeg", "Mm", "MmH", "Fraction", "Chance", "Share", "Transmittance", "FNumber", "FNumbers", "Days");
        decimals(3, "LengthDeg", "FromAimDeg", "OffDeg", "Stops", "StopsOverSky", "CornerStopsStopped", "ExtinctionMag",
                "LastsS", "OpenS", "Min", "Hours", "Reflectance", "Iso", "Density", "Score", "Worth", "Correlation",
                "Mean", "Sd");
        decimals(2, "Mag", "Magnitude", "MagArcsec2", "M", "TNumber", "Contrast", "Bv", "ChanceOfOneHit");
        decimals(1, "Um", "C");
        decimals(-2, "K");
        digits(9, "Km");
        digits(5, "S");
        digits(4, "Lx", "Lux", "CdM2");
        round(5, "AzimuthDeg", "AscensionDeg");
        round(3, "DirectionDeg");
    }

    private Accuracy() {
    }

    /** A way to cut numbers. */
    interface Cut {

        /** The number cut; refuses what is none. */
        BigDecimal of(double number);

        /** The number cut, without an exponent as far as that reads well. */
        default String text(double number) {
            if (!Double.isFinite(number)) {
                throw new IllegalStateException("not a finite number in a report: " + number);
            }
            BigDecimal cut = of(number).stripTrailingZeros();
            return cut.scale() <= MOST_DECIMALS ? cut.toPlainString() : cut.toString();
        }
    }

    /**
     * The way to cut numbers of a name: that of the longest of its endings that is known.
     *
     * @throws IllegalStateException when none is
     */
    static Cut of(String name) {
        String words = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        for (int i = 0; i < words.length(); i++) {
            Cut cut = Character.isUpperCase(words.charAt(i)) ? BY_UNIT.get(words.substring(i)) : null;
            if (cut != null) {
                return cut;
            }
        }
        throw new IllegalStateException("the number " + name + " does not end in a known unit");
    }

    private static void decimals(int decimals, String... units) {
        known(number -> decimals(number, decimals), units);
    }

    private static void digits(int digits, String... units) {
        known(number -> BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_EVEN)), units);
    }

    /** Directions all round, 0 (included) to 360 (left out). */
    private static void round(int decimals, String... units) {
        BigDecimal turn = BigDecimal.valueOf(360);
        known(number -> decimals(number, decimals).remainder(turn), units);
    }

    private static BigDecimal decimals(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static void known(Cut cut, String... units) {
        for (String unit : units) {
            BY_UNIT.put(unit, cut);
        }
    }
}
