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

    /** How far inside the nearer bound a number is, negative outside, infinite without bounds. */
    double margin(double number) {
        return Math.min(number - least.orElse(Double.NEGATIVE_INFINITY), most.orElse(Double.POSITIVE_INFINITY) - number);
    }
}
