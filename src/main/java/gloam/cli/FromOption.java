package gloam.cli;

import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import java.util.function.Supplier;

/** Says of which option a problem comes. */
final class FromOption {

    private FromOption() {
    }

    /** The value made of an option; a problem with it names the option. */
    static <T> T of(String option, Supplier<T> value) {
        try {
            return value.get();
        } catch (BadInput bad) {
            throw bad.from(option);
        }
    }

    /** The same of something done with an option. */
    static void run(String option, Runnable action) {
        of(option, () -> {
            action.run();
            return option;
        });
    }

    /** The number an option gave, when it lies in its range. */
    static double checked(String option, Range range, double number) {
        return of(option, () -> range.check(number));
    }

    /** The number an option gave, with its unit or without, when it lies in its range. */
    static double checked(String option, Range range, Quantity quantity) {
        return of(option, () -> quantity.in(range));
    }
}
