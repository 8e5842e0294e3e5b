package gloam.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value asked of a section: usable, or a gap whose problem has been noted, so that reading can go on to the
 * next.
 *
 * @param place   what it was read from; the section where the value is a default
 * @param content the value, empty for a gap
 */
record Value<T>(Item place, Optional<T> content) {

    /** The value; for a gap, gives up whatever was to be made of it. */
    T get() {
        return content.orElseThrow(Fault::alreadyNoted);
    }

    /** All values of a map, by its keys. */
    static <K, T> Map<K, T> all(Map<K, Value<T>> values) {
        Map<K, T> all = new LinkedHashMap<>();
        values.forEach((key, value) -> all.put(key, value.get()));
        return all;
    }

    /** A value made of this one. */
    <R> Value<R> map(Function<T, R> change) {
        return new Value<>(place, content.map(change));
    }
}
