package gloam.store;

import gloam.units.BadInput;
import gloam.units.Label;
import gloam.units.Nearest;
import gloam.units.Quantity;
import gloam.units.Range;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * A piece of a file with its path of keys, to be read as this or that; what cannot be read so is a {@link
 * Fault}.
 *
 * @param node   the piece
 * @param path   its path of keys
 * @param source the file it stands in
 */
record Item(Node node, String path, Source source) {

    private static final Pattern NUMBER = Pattern.compile(
            "[-+]?((0|[1-9][0-9]{0,17})(\\.[0-9]{0,30})?|\\.[0-9]{1,30})([eE][-+]?[0-9]{1,3})?");
    private static final int MOST_TEXT = 500;

    /** Where it stands. */
    Where where() {
        return new Where(source.name(), node.line(), node.column(), path);
    }

    /** A fault at this place. */
    Fault fault(String problem) {
        return Fault.at(where(), problem);
    }

    /** What a reader makes of it; empty when it makes nothing, after noting why. */
    <T> Optional<T> attempt(Function<Item, T> reader) {
        try {
            return Optional.of(reader.apply(this));
        } catch (Fault fault) {
            fault.problem().ifPresent(source.findings()::add);
        } catch (BadInput refused) {
            refused.problems().forEach(problem -> source.findings().add(new Problem(where(), problem)));
        }
        return Optional.empty();
    }

    /** What a reader makes of it, or a gap. */
    <T> Value<T> value(Function<Item, T> reader) {
        return new Value<>(this, attempt(reader));
    }

    /** Says what it is read as, where that is not plain from how it is read. */
    void readAs(String kind) {
        source.findings().readAs(path, kind);
    }

    /** Says in which range it is read as a number, where a narrower one follows from other values. */
    void readAs(Range range) {
        source.findings().readAs(path, range);
    }

    /** A text: any single value that is not a list or section, as the file writes it. */
    String text() {
        readAs("text");
        String text = scalar("text").text().strip();
        if (text.length() > MOST_TEXT) {
            throw fault("text of " + text.length() + " characters; at most " + MOST_TEXT
                    + " are read. Shorten it.");
        }
        return text;
    }

    /** Whether nothing is there. */
    boolean empty() {
        return node instanceof Node.Scalar scalar && scalar.text().isBlank();
    }

    /** A number in a range, plain or with its unit. */
    double number(Range range) {
        return number(range, text -> new Quantity(text).in(range));
    }

    /** A number in a range where it stands plain, else what a reader makes of the text. */
    double number(Range range, ToDoubleFunction<String> reader) {
        readAs(range);
        String unit = Quantity.unitName(range);
        Node.Scalar scalar = scalar(unit);
        Optional<Double> plain = parsed(scalar.text());
        boolean text = scalar.kind() == Node.Kind.TEXT;
        if (plain.isPresent() ? text : !text || new Quantity(Shown.brief(scalar.text())).plain()) {
            throw fault("expected " + unit + ", found " + Shown.quoted(scalar.text()) + (plain.isPresent()
                    ? ". Take its quotes away." : ". Write a plain number, " + range.allowed() + "."));
        }
        try {
            return plain.isPresent() ? range.check(plain.get())
                    : reader.applyAsDouble(Shown.brief(scalar.text()));
        } catch (BadInput refused) {
            throw fault(refused.getMessage());
        }
    }

    /** The number a text is in plain decimal form; empty for any other text, whatever YAML takes it for. */
    static Optional<Double> parsed(String text) {
        return NUMBER.matcher(text).matches() ? Optional.of(Double.parseDouble(text)) : Optional.empty();
    }

    /** A whole number in a range. */
    int whole(Range range) {
        double number = number(range);
        readAs("whole number, " + range.allowed());
        if (number != Math.rint(number)) {
            throw fault("expected a whole number, found " + Shown.quoted(scalar("").text())
                    + ". Leave out the fraction.");
        }
        return (int) number;
    }

    /** One of a few words, written in lower case with hyphens. */
    <E extends Enum<E>> E word(List<E> allowed) {
        List<String> words = Label.all(allowed);
        readAs(Shown.oneOf(words));
        String word = scalar(Shown.oneOf(words)).text().strip();
        return Label.named(word, allowed)
                .orElseThrow(() -> fault("expected " + Shown.oneOf(words) + ", found "
                + Shown.quoted(word) + Nearest.sentence(word, words).map(". "::concat).orElse("")));
    }

    /** Yes or no. */
    boolean flag() {
        readAs("true or false");
        String word = scalar("true or false").text().strip();
        if (!word.equals("true") && !word.equals("false")) {
            throw fault("expected true or false, found " + Shown.quoted(word));
        }
        return word.equals("true");
    }

    /** The keys of a section, which may stand in a file of its own. */
    Fields fields() {
        readAs("section");
        Item item = opened("a section of keys");
        if (item.node instanceof Node.Section section) {
            return new Fields(section, item);
        }
        throw item.fault("expected a section of keys, found " + item.found());
    }

    /**
     * A list of so many items, which may stand in a file of its own; every item is tried before a fault stops
     * it.
     */
    <T> List<T> list(Range count, Function<Item, T> reader) {
        readAs("list of " + count.allowed());
        Item item = opened("a list");
        if (item.node instanceof Node.Row row) {
            count.check(row.items().size());
            return item.list(row, reader);
        }
        throw item.fault("expected a list, found " + item.found());
    }

    private <T> List<T> list(Node.Row row, Function<Item, T> reader) {
        List<T> list = new ArrayList<>();
        for (int i = 0; i < row.items().size(); i++) {
            new Item(row.items().get(i), path + "[" + i + "]", source).attempt(reader).ifPresent(list::add);
        }
        if (list.size() < row.items().size()) {
            throw Fault.alreadyNoted();
        }
        return List.copyOf(list);
    }

    /** What stands here, or in the file named here; a word that no file has as its name names none. */
    private Item opened(String expected) {
        if (node instanceof Node.Gap) {
            throw Fault.alreadyNoted();
        }
        if (!(node instanceof Node.Scalar scalar) || scalar.kind() != Node.Kind.TEXT) {
            return this;
        }
        if (scalar.text().matches("[\\w-]+")
                && Files.notExists(source.path().resolveSibling(FileName.path(scalar.text())))) {
            throw fault("expected " + expected + ", found " + Shown.quoted(scalar.text())
                    + ". No file has that name either.");
        }
        return source.beside(scalar.text()).rootAt(path);
    }

    Node.Scalar scalar(String expected) {
        if (node instanceof Node.Scalar scalar && scalar.kind() != Node.Kind.NOTHING
                && !scalar.text().isBlank()) {
            return scalar;
        }
        if (node instanceof Node.Gap) {
            throw Fault.alreadyNoted();
        }
        throw fault("expected " + expected + ", found " + found());
    }

    private String found() {
        if (node instanceof Node.Section) {
            return "a section of keys";
        }
        if (node instanceof Node.Scalar scalar) {
            return scalar.kind() == Node.Kind.NOTHING || scalar.text().isBlank()
                    ? "nothing. Write a value." : Shown.quoted(scalar.text());
        }
        return "a list";
    }
}
