package gloam.store;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A key of the trip file, as the code that reads the file knows it.
 *
 * @param path    its path of keys, such as {@code wishes[].trail-mm.least}; the keys of any film begin with
 *                {@code film}
 * @param kind    what its value is: its unit and allowed range, or the words to choose from
 * @param without {@code required}, or its default; empty if it has none
 * @param meaning its meaning, in a sentence or a few
 * @param example a value as written in a file; empty for a section
 */
public record TripKey(String path, String kind, String without, String meaning, String example) {

    /** The key itself, the end of its path. */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Its unit, allowed range and default in a few words, such as {@code degrees, -180 … 180; default 0}. */
    public String rules() {
        return joined("; ", List.of(kind.equals("section") ? "" : kind, without));
    }

    /** The first sentence of its meaning, without the full stop. */
    public String shortMeaning() {
        return meaning.replaceFirst("[.:] .*", "").replaceFirst("\\.$", "");
    }

    private static String joined(String between, List<String> parts) {
        return parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(between));
    }
}
