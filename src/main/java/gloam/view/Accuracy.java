package gloam.view;

import gloam.gear.FNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoField;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/**
 * How far a number or a moment of a report is cut where it is handed on as such: a number by the unit that
 * its name ends in, a moment by what its name, that of its record before it, says of its kind.
 */
final class Accuracy {

    private static final int MOST_DECIMALS = 8;
    private static final String NO_UNIT = "";
    private static final Map<String, Cut> BY_UNIT = new HashMap<>();

    /** The accuracy claimed for what is found in the sky. */
    private static final Step FOUND = new Step("to 0.1 s", Duration.ofMillis(100));
    /** What was asked for or is set by the clock. */
    private static final Step GIVEN = new Step("to 1 ms", Duration.ofMillis(1));
    private static final Map<String, Step> BY_KIND = new HashMap<>();

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
        decimals(3, "percent", "Percent");
        decimals(3, "hours", "Hours");
        decimals(3, NO_UNIT, "Reflectance", "Iso", "Density", "Score", "Worth", "Exponent",
                "Correlation", "Mean", "Sd");
        decimals(2, "magnitudes", "Mag", "Magnitude", "Bv");
        decimals(2, "magnitudes per square arcsecond", "MagArcsec2");
        decimals(2, "metres", "M");
        decimals(2, NO_UNIT, "Price", "TNumber", "Contrast", "ChanceOfOneHit");
        decimals(1, "micrometres", "Um");
        decimals(1, "degrees Celsius", "C");
        decimals(-2, "kelvins", "K");
        digits(9, "kilometres", "Km");
        digits(5, "seconds", "S");
        digits(4, "lux", "Lx", "Lux");
        digits(4, "candelas per square metre", "CdM2");
        round(5, "AzimuthDeg", "AscensionDeg");
        round(3, "DirectionDeg");
        moments(FOUND, "EventAt", "QuarterAt", "ApproachAt", "SkyAt", "BestAt", "HighestAt", "InFrameAt",
                "PrepareAt", "From", "To");
        moments(GIVEN, "At", "LookedUntil");
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
     * A way to cut moments.
     *
     * @param words how far they are cut
     * @param whole the step to whose multiples they are rounded
     */
    record Step(String words, Duration whole) {

        /** The moment cut. */
        OffsetDateTime of(OffsetDateTime at) {
            long step = whole.toNanos();
            long nanos = Math.floorDiv(at.getNano() + step / 2, step) * step;
            return at.with(ChronoField.NANO_OF_SECOND, 0).plusNanos(nanos);
        }
    }

    /**
     * The way to cut numbers of a name: that of the longest of its endings that is known.
     *
     * @throws IllegalStateException when none is
     */
    static Cut of(String name) {
        return ending(name, BY_UNIT).orElseThrow(() ->
                new IllegalStateException("the number " + name + " does not end in a known unit"));
    }

    /**
     * The way to cut moments of a name.
     *
     * @param record what has them, as {@link #name} names it
     * @throws IllegalStateException when none is known
     */
    static Step of(String record, String name) {
        return ending(record + capitalized(name), BY_KIND).orElseThrow(() ->
                new IllegalStateException("the moment " + name + " of " + record + " is of no known kind"));
    }

    /** A record's name in the contract: without what says that it is a row of a report. */
    static String name(Class<?> record) {
        return record.getSimpleName().replaceFirst("(?<=.)Row$", "");
    }

    private static <T> Optional<T> ending(String name, Map<String, T> known) {
        String words = capitalized(name);
        return IntStream.range(0, words.length()).filter(i -> Character.isUpperCase(words.charAt(i)))
                .mapToObj(i -> known.get(words.substring(i))).filter(Objects::nonNull).findFirst();
    }

    private static String capitalized(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static void moments(Step step, String... endings) {
        for (String ending : endings) {
            BY_KIND.put(ending, step);
        }
    }

    private static void decimals(int decimals, String unit, String... endings) {
        String places = decimals < 0 ? "to the next 1" + "0".repeat(-decimals) : "to " + decimals
                + " decimal places";
        known(number -> decimals(number, decimals), unit, places, endings);
    }

    private static void digits(int digits, String unit, String... endings) {
        known(number -> BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_EVEN)),
                unit, "to " + digits + " significant figures", endings);
    }

    /** Directions, from 0 to below 360. */
    private static void round(int decimals, String... endings) {
        BigDecimal turn = BigDecimal.valueOf(360);
        known(number -> decimals(number, decimals).remainder(turn), "degrees, 0 to below 360",
                "to " + decimals + " decimal places", endings);
    }

    private static BigDecimal decimals(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static void known(DoubleFunction<BigDecimal> rule, String unit, String places,
            String... endings) {
        Cut cut = new Cut(unit.isEmpty() ? places : unit + ", " + places, rule);
        for (String ending : endings) {
            BY_UNIT.put(ending, cut);
        }
    }
}
