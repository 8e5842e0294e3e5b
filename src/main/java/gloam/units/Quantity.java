package gloam.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: plain, or with its unit, such as {@code 114}, {@code 11.4 cm}, {@code 1h30m}
 * or {@code 40°24′36″}.
 *
 * <p>A plain number counts in the unit that is asked for. Units are converted exactly, in decimals.
 *
 * @param text what was written
 */
public record Quantity(String text) {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");
    private static final Pattern PART =
            Pattern.compile("(\\d{1,40}(?:\\.\\d{0,40})?|\\.\\d{1,40})\\s*([^\\d\\s.:+-][^\\d\\s.]*)\\s*");
    private static final Pattern COLONS =
            Pattern.compile("([+-]?)(\\d{1,4}):(\\d{1,2}(?:\\.\\d{0,20})?)(?::(\\d{1,2}(?:\\.\\d{0,20})?))?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+\\D*");
    private static final Range DURATION = new Range("duration", 0.001, 864_000, "s");

    /** Names of the units that a {@link Range} gives in short. */
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("", "a number"), Map.entry("deg", "degrees"), Map.entry("m", "metres"),
            Map.entry("mm", "millimetres"), Map.entry("um", "micrometres"), Map.entry("min", "minutes"),
            Map.entry("s", "seconds"), Map.entry("%", "percent"), Map.entry("mag", "magnitudes"),
            Map.entry("mag/arcsec2", "magnitudes per square arcsecond"));

    /** Takes blanks at the ends away and writes the minus sign as a hyphen. */
    public Quantity {
        text = text.strip().replace('\u2212', '-');
    }

    /** Whether it is a number without a unit. */
    public boolean plain() {
        return NUMBER.matcher(text).matches();
    }

    /**
     * The number in a range's unit.
     *
     * @throws BadInput when it is no number, has a unit of another kind, or lies outside the range
     */
    public double in(Range range) {
        if (plain()) {
            return range.check(Double.parseDouble(text));
        }
        if (Double.isInfinite(range.most()) && text.equalsIgnoreCase("infinity")) {
            return range.most();
        }
        Dimension dimension = Dimension.of(range.unit());
        BigDecimal unit = dimension.size(range.unit()).orElse(BigDecimal.ONE);
        return range.check(size(dimension, range).divide(unit, MathContext.DECIMAL128).doubleValue());
    }

    /** A plain decimal number, without a unit. */
    public static double number(String text) {
        Quantity number = new Quantity(text);
        if (!number.plain()) {
            throw new BadInput("expected a plain number, found \"" + text + "\"");
        }
        return Double.parseDouble(number.text());
    }

    /**
     * A length of time such as {@code 30s}, {@code 1h50m}, {@code 1:30:00} or {@code PT18M}, to a thousandth
     * of a second.
     *
     * @throws BadInput when it has no unit, so that nobody knows what it counts, or is beyond 1 ms … 240 h
     */
    public static Duration duration(String text) {
        Quantity quantity = new Quantity(text);
        if (quantity.plain() || !quantity.text.matches("[\\dPp.].*")) {
            throw new BadInput("expected a duration such as 30s, 18m, 1h50m or PT18M, found \"" + text
                    + "\"");
        }
        return Duration.ofMillis(BigDecimal.valueOf(quantity.in(DURATION)).movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** The name in full of a range's unit. */
    public static String unitName(Range range) {
        return NAMES.getOrDefault(range.unit(), range.unit());
    }

    private BigDecimal size(Dimension dimension, Range range) {
        if (dimension == Dimension.TIME && text.matches("[Pp].*")) {
            return iso(range);
        }
        boolean negative = text.startsWith("-");
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal larger = null;
        for (Part part : parts(dimension, range)) {
            BigDecimal size = dimension.size(part.unit).orElseThrow(() -> unknownUnit(dimension, range));
            BigDecimal amount = new BigDecimal(part.number).multiply(size);
            if (larger != null && amount.compareTo(larger) >= 0) {
                throw refusal(range, "A part may not reach the one before it.");
            }
            sum = sum.add(amount);
            larger = size;
        }
        return negative ? sum.negate() : sum;
    }

    private BigDecimal iso(Range range) {
        try {
            Duration duration = Duration.parse(text);
            return BigDecimal.valueOf(duration.toSeconds()).add(BigDecimal.valueOf(duration.getNano(), 9));
        } catch (DateTimeException | ArithmeticException strange) {
            throw refusal(range, "Write a duration such as PT18M or 18m.");
        }
    }

    private List<Part> parts(Dimension dimension, Range range) {
        Matcher colons = COLONS.matcher(text);
        List<Part> parts = colons.matches() ? colons(dimension, range, colons) : withUnits(dimension, range);
        if (parts.subList(0, parts.size() - 1).stream().anyMatch(part -> part.number.contains("."))) {
            throw refusal(range, "Only the last part may have a fraction.");
        }
        return parts;
    }

    private List<Part> withUnits(Dimension dimension, Range range) {
        List<Part> parts = new ArrayList<>();
        String unsigned = text.replaceFirst("^[+-]", "").replaceFirst("arcsec\\^?2$", "arcsec²");
        Matcher matcher = PART.matcher(unsigned);
        int end = 0;
        while (matcher.find() && matcher.start() == end) {
            parts.add(new Part(matcher.group(1), matcher.group(2)));
            end = matcher.end();
        }
        if (parts.isEmpty() || end < unsigned.length()) {
            throw parts.isEmpty() ? refusal(range, remedy(range)) : unknownUnit(dimension, range);
        }
        return parts;
    }

    private List<Part> colons(Dimension dimension, Range range, Matcher colons) {
        Optional<String> last = Optional.ofNullable(colons.group(4));
        if (dimension == Dimension.TIME && last.isEmpty()) {
            String first = colons.group(2);
            String second = colons.group(3);
            throw refusal(range, "Write " + first + "h" + second + "m or " + first + "m" + second
                    + "s, whichever is meant.");
        }
        if (dimension != Dimension.TIME && dimension != Dimension.ANGLE) {
            throw refusal(range, remedy(range));
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(colons.group(2), dimension == Dimension.TIME ? "h" : "d"));
        parts.add(new Part(colons.group(3), "m"));
        last.ifPresent(seconds -> parts.add(new Part(seconds, "s")));
        return parts;
    }

    private BadInput unknownUnit(Dimension dimension, Range range) {
        return dimension == Dimension.NUMBER ? refusal(range, remedy(range))
                : refusal(range, "Units that fit: " + String.join(", ", dimension.units()) + ".");
    }

    private static String remedy(Range range) {
        return "Write a plain number, " + range.allowed()
                + (Double.isInfinite(range.most()) ? ", or infinity." : ".");
    }

    private BadInput refusal(Range range, String remedy) {
        return new BadInput("expected " + unitName(range) + ", found \"" + text + "\". "
                + (DECIMAL_COMMA.matcher(text).matches() ? "Write a point before the decimals." : remedy));
    }

    private record Part(String number, String unit) {

        Part {
            unit = unit.toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
