package gloam.units;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The check that keeps infinity and NaN out of results: asked by the records that results are made of.
 *
 * <p>A number that is honestly without bound or not there is an empty {@link java.util.OptionalDouble}.
 */
public final class Finite {

    private Finite() {
    }

    /**
     * The value itself.
     *
     * @param what the value's name, with its unit
     * @throws IllegalArgumentException when it is not finite: a slip in a computation, never a user's error
     */
    public static double check(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is not finite: " + value);
        }
        return value;
    }

    /** The number where it is one; nothing where it is infinite or none. */
    public static OptionalDouble of(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    /** The same of a number that may be missing. */
    public static OptionalDouble of(Optional<Double> number) {
        return number.map(Finite::of).orElseGet(OptionalDouble::empty);
    }
}
