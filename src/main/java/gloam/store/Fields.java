package gloam.store;

import gloam.units.Nearest;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The keys of a section, asked for one by one.
 *
 * <p>What is asked for is known; {@link #noOthers} then notes the keys that were never asked for and the
 * required ones that are missing.
 */
final class Fields {

    private static final String REQUIRED = "required";

    private final Node.Section section;
    private final Item item;
    private final Set<String> known = new LinkedHashSet<>();
    private final List<String> missing = new ArrayList<>();

    /** The keys of a section that stands at an item. */
    Fields(Node.Section section, Item item) {
        this.section = section;
        this.item = item;
    }

    /** Whether the key is there. */
    boolean has(String key) {
        return section.entry(key).isPresent();
    }

    /** A value that must be there. */
    <T> Value<T> required(String key, Function<Item, T> reader) {
        Optional<Item> found = find(key);
        if (found.isEmpty()) {
            missing.add(key);
        }
        without(key, REQUIRED);
        return found.map(place -> place.value(reader))
                .orElseGet(() -> new Value<>(item, Optional.empty()));
    }

    /** A value that decides which other keys there are; without it the section is not read further. */
    <T> T deciding(String key, Function<Item, T> reader) {
        Item found = find(key).orElseThrow(() -> Fault.at(where(key), missing(key)));
        without(key, REQUIRED);
        return reader.apply(found);
    }

    /** An optional value. */
    <T> Value<Optional<T>> optional(String key, Function<Item, T> reader) {
        return find(key).map(place -> place.value(reader).map(Optional::of))
                .orElseGet(() -> new Value<>(item, Optional.of(Optional.empty())));
    }

    /** A value that has a default; the text says what that is. */
    <T> Value<T> orDefault(String key, T fallback, String shown, Function<Item, T> reader) {
        return orElse(key, new Value<>(item, Optional.of(fallback)), shown, reader);
    }

    /** A value that has another one as its default; the text says what that is. */
    <T> Value<T> orElse(String key, Value<T> fallback, String shown, Function<Item, T> reader) {
        Optional<Item> found = find(key);
        if (found.isEmpty()) {
            item.source().findings().usedDefault(path(key), shown);
        }
        without(key, "default " + shown);
        return found.map(place -> place.value(reader)).orElse(fallback);
    }

    /** Says by which rule the default of a key is found, where its value is not the same in every file. */
    void defaultRule(String key, String rule) {
        without(key, "default " + rule);
    }

    /** A number that has a default. */
    Value<Double> numberOr(String key, double fallback, Range range) {
        return orDefault(key, fallback, Shown.number(fallback), value -> value.number(range));
    }

    /** A number that must be there. */
    Value<Double> number(String key, Range range) {
        return required(key, value -> value.number(range));
    }

    /** The value of whichever of several keys is there; none may be, two may not. */
    <T> Value<Optional<T>> oneOf(List<Choice<T>> choices) {
        Value<Optional<T>> chosen = new Value<>(item, Optional.of(Optional.empty()));
        String first = "";
        for (Choice<T> choice : choices) {
            Value<Optional<T>> value = optional(choice.key(), choice.reader());
            if (has(choice.key()) && !first.isEmpty()) {
                note(value.place().where(), "stands beside " + first + "; keep one of the two");
            } else if (has(choice.key())) {
                chosen = value;
                first = choice.key();
            }
        }
        return chosen;
    }

    /** The value of whichever of several keys is there; with none, a default under the first key's name. */
    <T> Value<T> oneOf(List<Choice<T>> choices, T fallback, String shown) {
        if (choices.stream().map(Choice::key).noneMatch(this::has)) {
            item.source().findings().usedDefault(path(choices.get(0).key()), shown);
        }
        without(choices.get(0).key(), "default " + shown);
        return oneOf(choices).map(chosen -> chosen.orElse(fallback));
    }

    /** The value of whichever of several keys is there; one must be. */
    <T> Value<T> exactlyOneOf(List<Choice<T>> choices) {
        Value<Optional<T>> chosen = oneOf(choices);
        List<String> keys = choices.stream().map(Choice::key).toList();
        keys.forEach(key -> without(key, "one of " + Shown.oneOf(keys) + " is required"));
        if (keys.stream().noneMatch(this::has)) {
            note(item.where(), "needs one of the keys " + String.join(", ", keys) + ".");
            return new Value<>(item, Optional.empty());
        }
        return new Value<>(chosen.place(), chosen.content().flatMap(Function.identity()));
    }

    /** A key that is known but may not stand here: refused where it is there. */
    void refuse(String key, String problem) {
        find(key).ifPresent(place -> note(place.where(), problem));
    }

    /**
     * Notes keys that are there and were never asked for, and keys that were asked for in vain and are
     * required.
     */
    void noOthers() {
        for (Node.Entry entry : section.entries()) {
            if (!known.contains(entry.key())) {
                Optional<String> meant = Nearest.to(entry.key(), missing);
                meant.ifPresent(missing::remove);
                note(new Where(item.source().name(), entry.line(), entry.column(), path(entry.key())),
                        "unknown key. " + Nearest.hint(entry.key(), meant.<Set<String>>map(Set::of)
                        .orElse(known)));
            }
        }
        missing.forEach(key -> note(where(key), missing(key)));
    }

    private static String missing(String key) {
        return "is missing. Add the key " + key + ".";
    }

    private Where where(String key) {
        return new Where(item.source().name(), section.line(), section.column(), path(key));
    }

    private void note(Where where, String problem) {
        item.source().findings().add(new Problem(where, problem));
    }

    private Optional<Item> find(String key) {
        known.add(key);
        Optional<Node.Entry> entry = section.entry(key);
        item.source().findings().asked(path(key), entry.stream().mapToInt(Node.Entry::line).findFirst());
        return entry.map(there -> new Item(there.value(), path(key), item.source()));
    }

    private void without(String key, String what) {
        item.source().findings().without(path(key), what);
    }

    private String path(String key) {
        String shown = Shown.plain(key);
        return item.path().isEmpty() ? shown : item.path() + "." + shown;
    }

    /**
     * One of several keys that exclude each other.
     *
     * @param key    the key
     * @param reader what makes its value
     */
    record Choice<T>(String key, Function<Item, T> reader) {
    }
}
