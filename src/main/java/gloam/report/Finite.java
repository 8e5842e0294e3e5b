package gloam.report;

import java.util.OptionalDouble;

/** Numbers that may not be. */
final class Finite {

    private Finite() {
    }

    /** The number where it is one; nothing where it is infinite or none. */
    static OptionalDouble of(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
