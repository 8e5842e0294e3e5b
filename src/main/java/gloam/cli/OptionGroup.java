package gloam.cli;

import gloam.store.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Options that belong together: its fields, in the order of the help.
 *
 * <p>They are declared to picocli by calls. It could read them from annotations, but Java makes the classes
 * for that anew at each start, which takes as long as starting Java.
 */
abstract class OptionGroup {

    private final List<Consumer<CommandSpec>> parts = new ArrayList<>();
    private final Map<String, Option<?>> named = new LinkedHashMap<>();

    /** An option of the group. */
    final <T> Option<T> option(String name, String label, Class<T> type, String description) {
        return added(name, Option.single(name, label, type, description));
    }

    /** An option of the group that names what is to be read. */
    final Option<Input> input(String name, String label, String description) {
        return added(name, Option.input(name, label, description));
    }

    /** An option of the group that may be given more than once. */
    final <T> Option<List<T>> repeated(String name, String label, Class<T> type, String description) {
        return added(name, Option.repeated(name, label, type, description));
    }

    /** An option of the group without a value. */
    final Option<Boolean> flag(String name, String description) {
        return added(name, Option.flag(name, description));
    }

    private <V> Option<V> added(String name, Option<V> option) {
        named.put(name, option);
        parts.add(spec -> spec.addOption(option.spec()));
        return option;
    }

    /** A group of options in this one. */
    final <G extends OptionGroup> G group(G group) {
        named.putAll(((OptionGroup) group).named);
        parts.add(spec -> spec.addMixin(group.getClass().getSimpleName(), group.spec()));
        return group;
    }

    /** The option of that name in the group or in those within it. */
    final Optional<Option<?>> named(String name) {
        return Optional.ofNullable(named.get(name));
    }

    /** Whether any of several options of the group was given. */
    final boolean anyGiven(String... names) {
        return Arrays.stream(names).anyMatch(name -> named.get(name).given());
    }

    /** Something else to be declared. */
    final void declare(Consumer<CommandSpec> part) {
        parts.add(part);
    }

    /** The group as picocli knows it. */
    CommandSpec spec() {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
        parts.forEach(part -> part.accept(spec));
        return spec;
    }
}
