package gloam.view;

import gloam.gear.FNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;

/** How far a number of a report is cut where it is handed on as a number: by the unit its name ends in. */
final class Accuracy {

    private static final int MOST_DECIMALS = 8;
    private static final String NO_UNIT = "";
    private static final Map<String, Cut> BY_UNIT = new HashMap<>();

    static {
        decimals(7, "degrees", "LatitudeDeg", "LongitudeDeg");
        decimals(6, "degrees", "DiameterDeg");
        decimals(5, "degrees", "Deg");
        decimals(5, NO_UNIT, "IlluminatedFraction");
        decimals(4, "degrees", "PhaseAngleDeg");
        decimals(4, "mm", "Mm");
        decimals(4, "mm per hour", "MmH");
        decimals(4, "days", "Days");
        decimals(4, NO_UNIT, "Fraction", "Chance", "Share", "Transmittance", "FNumber", "FNumbers");
        decimals(3, "degrees", "LengthDeg", "FromAimDeg", "OffDeg");
        decimals(3, "stops", "Stops", "StopsOverSky", "CornerStopsStopped");
        decimals(3, "magnitudes", "ExtinctionMag");
        decimals(3, "seconds", "LastsS", "OpenS");
        decimals(3, "minutes", "Min");
        decimals(3, "hours", "Hours");
        decimals(3, NO_UNIT, "Reflectance", "Iso", "Density", "Score", "Worth", "Correlation", "Mean", "Sd");
        decimals(2, "magnitudes", "Mag", "Magnitude", "Bv");
        decimals(2, "magnitudes per square arcsecond", "MagArcsec2");
        decimals(2, "metres", "M");
        decimals(2, NO_UNIT, "TNumber", "Contrast", "ChanceOfOneHit");
        decimals(1, "micrometres", "Um");
        decimals(1, "degrees Celsius", "C");
        decimals(-2, "kelvins", "K");
        digits(9, "kilometres", "Km");
        digits(5, "seconds", "S");
        digits(4, "lux", "Lx", "Lux");
        digits(4, "candelas per square metre", "CdM2");
        round(5, "AzimuthDeg", "AscensionDeg");
        round(3, "DirectionDeg");
    }

    private Accuracy() {
    }

    /**
     * A way to cut numbers.
     *
     * @param words their unit, and how far they are cut
     * @param rule  cuts a number; refuses what is none
     */
    record Cut(String words, DoubleFunction<BigDecimal> rule) {

        /** The number cut. */
        BigDecimal of(double number) {
            return rule.apply(number);
        }

        /** The number cut, without an exponent as far as that reads well. */
        String text(double number) {
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

    private static void decimals(int decimals, String unit, String... endings) {
        String places = decimals < 0 ? "to the next 1" + "0".repeat(-decimals) : "to " + decimals + " decimal places";
        known(number -> decimals(number, decimals), unit, places, endings);
    }

    private static void digits(int digits, String unit, String... endings) {
        known(number -> BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_EVEN)), unit,
                "to " + digits + " significant figures", endings);
    }

    /** Directions all round, 0 (included) to 360 (left out). */
    private static void round(int decimals, String... endings) {
        BigDecimal turn = BigDecimal.valueOf(360);
        known(number -> decimals(number, decimals).remainder(turn), "degrees, 0 to below 360",
                "to " + decimals + " decimal places", endings);
    }

    private static BigDecimal decimals(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static void known(DoubleFunction<BigDecimal> rule, String unit, String places, String... endings) {
        Cut cut = new Cut(unit.isEmpty() ? places : unit + ", " + places, rule);
        for (String ending : endings) {
            BY_UNIT.put(ending, cut);
        }
    }
}
