package gloam.gear;

import gloam.units.BadInput;
import gloam.units.Quantity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The f-numbers that lenses are marked with and the exact values they stand for (ISO 517:2008).
 *
 * <p>Whole stops are 2^(k/2), half stops 2^(k/4), thirds 2^(k/6). A number off the list means itself.
 */
public final class FNumbers {

    private static final double[] MARKINGS = {
        0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128,
        1.2, 1.7, 2.4, 3.3, 4.8, 6.7, 9.5, 13, 19,
        1.1, 1.6, 1.8, 2.2, 2.5, 3.2, 3.5, 4.5, 5, 6.3, 7.1, 9, 10, 14, 18, 20};

    /** Whole, half and third stops from f/0.7 to f/128, f/1 to f/32 for the halves and thirds as the standard has. */
    private static final double[] EXACT = DoubleStream.concat(
            IntStream.rangeClosed(-1, 14).mapToDouble(k -> Math.pow(2, k / 2.0)),
            IntStream.rangeClosed(0, 60).filter(k -> k % 2 == 0 || k % 3 == 0)
                    .mapToDouble(k -> Math.pow(2, k / 12.0))).toArray();

    private FNumbers() {
    }

    /** The exact f-number of a text such as {@code 11}, {@code f/11} or {@code 1:11}. */
    public static double of(String text) {
        Quantity number = new Quantity(text.strip().replaceFirst("^(?:[fF]\\s*/?|1:)", ""));
        if (!number.plain()) {
            throw new BadInput("expected an f-number such as 11 or f/11, found \"" + text + "\"");
        }
        return exact(number.in(Lens.F_NUMBER));
    }

    /** The exact value of a marking, the nearest one where two share it; any other number itself. */
    public static double exact(double marking) {
        boolean onList = Arrays.stream(MARKINGS).anyMatch(listed -> listed == marking);
        return onList ? nearest(EXACT, marking) : marking;
    }

    /** The marking an exact value is engraved as; any other number itself. */
    public static double marking(double exact) {
        return Arrays.stream(MARKINGS).filter(marking -> exact(marking) == exact).findFirst().orElse(exact);
    }

    private static double nearest(double[] values, double wanted) {
        return Arrays.stream(values).boxed()
                .min(Comparator.comparingDouble(value -> Math.abs(value - wanted))).orElse(wanted);
    }
}
