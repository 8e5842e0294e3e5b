package gloam.gear;

import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import gloam.units.Stops;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An f-number: what the lens is marked with and the exact value it stands for (ISO 517:2008).
 *
 * <p>Whole stops are 2^(k/2), half stops 2^(k/4), thirds 2^(k/6). A number off the list means itself. In
 * order the one that lets most light through comes first.
 *
 * @param marked as engraved, such as 11
 * @param exact  focal length over the diameter of the entrance pupil, such as 11.3137, 0.7 to 512
 */
public record FNumber(double marked, double exact) implements Comparable<FNumber> {

    /** Allowed f-numbers. */
    public static final Range RANGE = new Range("f-number", 0.7, 512, "");

    private static final double[] MARKINGS = {
        0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128,
        1.2, 1.7, 2.4, 3.3, 4.8, 6.7, 9.5, 13, 19,
        1.1, 1.6, 1.8, 2.2, 2.5, 3.2, 3.5, 4.5, 5, 6.3, 7.1, 9, 10, 14, 18, 20};

    /** The whole stops from f/1 of f/0.7, of f/128, the last that has a marking, and of f/512. */
    private static final int WIDEST = -1;
    private static final int LAST_MARKED = 14;
    private static final int NARROWEST = 18;

    /** Whole stops from f/0.7 to f/128, half and third stops from f/1 to f/32, as the standard has them. */
    private static final double[] EXACT = DoubleStream.concat(
            IntStream.rangeClosed(WIDEST, LAST_MARKED).mapToDouble(FNumber::wholeStop),
            IntStream.rangeClosed(0, 60).filter(k -> k % 2 == 0 || k % 3 == 0)
                    .mapToDouble(k -> Math.pow(2, k / 12.0))).toArray();

    /** The f-number of an entrance pupil as wide as the focal length is long. */
    public static final FNumber ONE = exact(1);

    /** Refuses, with {@link BadInput}, an f-number outside the range. */
    public FNumber {
        RANGE.check(marked);
        RANGE.check(exact);
    }

    /** The f-number of a marking. */
    public static FNumber marked(double marking) {
        return new FNumber(marking, exactOf(marking));
    }

    /** The f-number of an exact value, under its marking; one off the list is marked as itself. */
    public static FNumber exact(double exact) {
        return new FNumber(Arrays.stream(MARKINGS).filter(marking -> exactOf(marking) == exact).findFirst()
                .orElse(exact), exact);
    }

    /** The f-number of a text such as {@code 11}, {@code f/11} or {@code 1:11}. */
    public static FNumber of(String text) {
        Quantity number = new Quantity(text.strip().replaceFirst("^(?:[fF]\\s*/?|1:)", ""));
        if (!number.plain()) {
            throw new BadInput("expected an f-number such as 11 or f/11, found \"" + text + "\"");
        }
        return marked(number.in(RANGE));
    }

    /** The f-numbers of some markings, in their order. */
    public static List<FNumber> series(double... markings) {
        return Arrays.stream(markings).mapToObj(FNumber::marked).toList();
    }

    /** The whole stops from f/0.7 to f/512, the widest first. */
    public static List<FNumber> wholeStops() {
        return Stream.concat(IntStream.rangeClosed(WIDEST, LAST_MARKED).mapToObj(k -> exact(wholeStop(k))),
                IntStream.rangeClosed(LAST_MARKED + 1,
                NARROWEST).mapToObj(k -> marked(Math.rint(wholeStop(k)))))
                .toList();
    }

    /** The exact value of a marking, the nearest one where two share it; any other number itself. */
    public static double exactOf(double marking) {
        boolean onList = Arrays.stream(MARKINGS).anyMatch(listed -> listed == marking);
        return onList ? Arrays.stream(EXACT).boxed()
                .min(Comparator.comparingDouble(value -> Math.abs(value - marking))).orElseThrow() : marking;
    }

    private static double wholeStop(int k) {
        return Math.pow(2, k / 2.0);
    }

    /** The square of its exact value, by which it divides light. */
    public double squared() {
        return exact * exact;
    }

    /** How much more light it lets through than another, in stops. */
    public double stopsOver(FNumber other) {
        return 2 * Stops.between(exact, other.exact);
    }

    /** Its marking alone, such as 11. */
    public String number() {
        return BigDecimal.valueOf(marked).stripTrailingZeros().toPlainString();
    }

    /** It as written, such as f/11. */
    @Override
    public String toString() {
        return "f/" + number();
    }

    @Override
    public int compareTo(FNumber other) {
        return Double.compare(exact, other.exact);
    }
}
