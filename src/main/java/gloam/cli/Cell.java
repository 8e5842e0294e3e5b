package gloam.cli;

import java.util.Optional;
import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;

/** Where picocli leaves what the command line gave. */
final class Cell<V> implements IGetter, ISetter {

    private V value;

    /** What was given or stands by default, if anything. */
    Optional<V> value() {
        return Optional.ofNullable(value);
    }

    /** Puts a value in place of what it has, or leaves it empty. */
    void put(Optional<V> given) {
        value = given.orElse(null);
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T> T get() {
        return (T) value;
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T> T set(T given) {
        value = (V) given;
        return given;
    }
}
