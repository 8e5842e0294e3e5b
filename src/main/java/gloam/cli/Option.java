package gloam.cli;

import gloam.store.Input;
import gloam.units.BadInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option: how it is written and read, and once the command line is read what it was given.
 *
 * @param <V> what it gives
 */
final class Option<V> {

    /** Place in the help of options that come after the others. */
    private static final int LAST = 100;

    private static final String COMMA = ",";

    private final OptionSpec.Builder spec;
    private final Cell<V> cell = new Cell<>();
    private final Class<?> type;
    private final Optional<V> unsaid;
    private Optional<ITypeConverter<?>> converter = Optional.empty();
    private boolean commas;

    private Option(String name, String description, Class<?> type, Optional<V> unsaid) {
        this.spec = OptionSpec.builder(name).description(description).getter(cell).setter(cell);
        this.type = type;
        this.unsaid = unsaid;
    }

    /** An option with one value. */
    static <T> Option<T> single(String name, String label, Class<T> type, String description) {
        Option<T> option = new Option<>(name, description, type, Optional.empty());
        option.spec.paramLabel(label).type(type);
        return option.readAs();
    }

    /** An option that names what is to be read; a shell completes it as the name of a file. */
    static Option<Input> input(String name, String label, String description) {
        Option<Input> option = new Option<>(name, description, Input.class, Optional.empty());
        option.spec.paramLabel(label).type(Path.class);
        return option.readAs();
    }

    /** An option that may be given more than once. */
    static <T> Option<List<T>> repeated(String name, String label, Class<T> type, String description) {
        Option<List<T>> option = new Option<>(name, description, type, Optional.of(List.of()));
        option.spec.paramLabel(label).type(List.class).auxiliaryTypes(type);
        return option.readAs();
    }

    /** An option without a value. */
    static Option<Boolean> flag(String name, String description) {
        Option<Boolean> option = new Option<>(name, description, Boolean.class, Optional.of(false));
        option.spec.type(Boolean.class).arity("0");
        return option;
    }

    private Option<V> readAs() {
        Optional<ITypeConverter<?>> known = Converters.of(type);
        return known.isPresent() ? readBy(known.get()) : this;
    }

    /** Read by a converter of its own, not by that of its type. */
    Option<V> readBy(ITypeConverter<?> reader) {
        converter = Optional.of(reader);
        spec.converters(reader);
        return this;
    }

    /** Completed by a shell with these words. */
    Option<V> completedBy(Iterable<String> words) {
        spec.completionCandidates(words);
        return this;
    }

    /** Several values at once stand with commas between them. */
    Option<V> withCommas() {
        commas = true;
        spec.splitRegex(COMMA).hideParamSyntax(true).paramLabel(spec.paramLabel() + ",…");
        return this;
    }

    /** Reading that text where the option is not given. */
    Option<V> byDefault(String text) {
        spec.defaultValue(text);
        return this;
    }

    /** Makes it required. */
    Option<V> required() {
        spec.required(true);
        return this;
    }

    /** Denied by the same name with no- before it. */
    Option<V> deniable() {
        spec.negatable(true);
        return this;
    }

    /** Told after the others in the help. */
    Option<V> last() {
        spec.order(LAST);
        return this;
    }

    /** Whether it was given or has a default. */
    boolean given() {
        return cell.value().isPresent();
    }

    /** What was given or stands by default, if anything. */
    Optional<V> value() {
        return cell.value();
    }

    /** The value of an option that is known to have one; not said, a list is empty and a flag says no. */
    V get() {
        return cell.value().or(() -> unsaid).orElseThrow();
    }

    /** Puts a value in place of what was given, or takes that away. */
    void put(Optional<V> value) {
        cell.put(value);
    }

    /**
     * Gives it a text as the command line would, beside what it has where it may be given more than once.
     *
     * @throws BadInput when the text cannot be read
     */
    @SuppressWarnings("unchecked")
    void answer(String text) {
        if (!several()) {
            cell.set(read(text));
            return;
        }
        List<Object> all = new ArrayList<>((List<Object>) get());
        Stream.of(commas ? text.split(COMMA) : new String[] {text}).map(this::read).forEach(all::add);
        cell.set(List.copyOf(all));
    }

    private Object read(String text) {
        try {
            return converter.isPresent() ? converter.get().convert(text) : Converters.plain(type, text);
        } catch (BadInput bad) {
            throw bad;
        } catch (Exception unexpected) {
            throw new IllegalStateException(unexpected);
        }
    }

    /** Takes away what was given: a default stands again, and what may not be left out stays. */
    void leaveOut(Optional<V> before) {
        if (spec.defaultValue() != null) {
            cell.put(Optional.empty());
            answer(spec.defaultValue());
        } else {
            cell.put(spec.required() ? before : Optional.empty());
        }
    }

    private boolean several() {
        return unsaid.isPresent() && type != Boolean.class;
    }

    /** How the command line writes it with a value. */
    String written(String name, String value) {
        if (type != Boolean.class) {
            return name + "='" + value.replace("'", "'\\''") + "'";
        }
        return (Boolean) Converters.plain(type, value) ? name : name.replaceFirst("--", "--no-");
    }

    OptionSpec spec() {
        return spec.build();
    }
}
