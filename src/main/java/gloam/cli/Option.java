package gloam.cli;

import gloam.store.Input;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option: how it is written and read, and once the command line is read what it was given.
 *
 * @param <V> what it gives
 */
final class Option<V> {

    /** Where in the help stands what is told after the others. */
    private static final int LAST = 100;

    private final OptionSpec.Builder spec;
    private final Cell<V> cell = new Cell<>();
    private final Optional<V> unsaid;

    private Option(String name, String description, Optional<V> unsaid) {
        this.spec = OptionSpec.builder(name).description(description).getter(cell).setter(cell);
        this.unsaid = unsaid;
    }

    /** An option with one value. */
    static <T> Option<T> single(String name, String label, Class<T> type, String description) {
        Option<T> option = new Option<>(name, description, Optional.empty());
        option.spec.paramLabel(label).type(type);
        return option.readAs(type);
    }

    /** An option that names what is to be read; a shell completes it as the name of a file. */
    static Option<Input> input(String name, String label, String description) {
        Option<Input> option = new Option<>(name, description, Optional.empty());
        option.spec.paramLabel(label).type(Path.class);
        return option.readAs(Input.class);
    }

    /** An option that may be given more than once. */
    static <T> Option<List<T>> repeated(String name, String label, Class<T> type, String description) {
        Option<List<T>> option = new Option<>(name, description, Optional.of(List.of()));
        option.spec.paramLabel(label).type(List.class).auxiliaryTypes(type);
        return option.readAs(type);
    }

    /** An option without a value. */
    static Option<Boolean> flag(String name, String description) {
        Option<Boolean> option = new Option<>(name, description, Optional.of(false));
        option.spec.type(Boolean.class).arity("0");
        return option;
    }

    private Option<V> readAs(Class<?> type) {
        Optional<ITypeConverter<?>> converter = Converters.of(type);
        return converter.isPresent() ? readBy(converter.get()) : this;
    }

    /** Read by a converter of its own, not by that of its type. */
    Option<V> readBy(ITypeConverter<?> converter) {
        spec.converters(converter);
        return this;
    }

    /** Completed by a shell with these words. */
    Option<V> completedBy(Iterable<String> words) {
        spec.completionCandidates(words);
        return this;
    }

    /** Several values at once stand with commas between them. */
    Option<V> withCommas() {
        spec.splitRegex(",");
        return this;
    }

    /** Reading that text where the option is not given. */
    Option<V> byDefault(String text) {
        spec.defaultValue(text);
        return this;
    }

    /** Never left out. */
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

    OptionSpec spec() {
        return spec.build();
    }
}
