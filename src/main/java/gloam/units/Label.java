package gloam.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The words by which people and files write constants: their names in small letters, the parts joined by
 * hyphens.
 */
public final class Label {

    private Label() {
    }

    /** A constant as a file or an option writes it, such as {@code waxing-crescent}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A constant as a sentence writes it, such as {@code waxing crescent}. */
    public static String words(Enum<?> constant) {
        return of(constant).replace('-', ' ');
    }

    /** The labels of constants, in their order. */
    public static List<String> all(List<? extends Enum<?>> constants) {
        return constants.stream().map(Label::of).toList();
    }

    /** The one of some constants that a word names, in letters of either size; empty where it names none. */
    public static <E extends Enum<E>> Optional<E> named(String word, List<E> constants) {
        int index = all(constants).indexOf(word.strip().toLowerCase(Locale.ROOT));
        return index < 0 ? Optional.empty() : Optional.of(constants.get(index));
    }
}
