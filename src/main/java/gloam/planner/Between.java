package gloam.planner;

import java.util.OptionalDouble;

/**
 * A number's bounds, both included; empty where there is none.
 *
 * @param least the least
 * @param most  the most
 */
public record Between(OptionalDouble least, OptionalDouble most) {

    /** Any number. */
    public static final Between ANY = new Between(OptionalDouble.empty(), OptionalDouble.empty());

    /** Whether any number is as good. */
    public boolean any() {
        return least.isEmpty() && most.isEmpty();
    }

    /** Numbers from one to another. */
    static Between of(double least, double most) {
        return new Between(OptionalDouble.of(least), OptionalDouble.of(most));
    }

    /** By how much a number is over the least, infinite without. */
    double overLeast(double number) {
        return number - least.orElse(Double.NEGATIVE_INFINITY);
    }

    /** By how much a number is under the most, infinite without. */
    double underMost(double number) {
        return most.orElse(Double.POSITIVE_INFINITY) - number;
    }

    /** How far inside the nearer bound a number is, negative outside, infinite without bounds. */
    double margin(double number) {
        return Math.min(overLeast(number), underMost(number));
    }
}
