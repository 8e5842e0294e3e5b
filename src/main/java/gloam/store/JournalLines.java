package gloam.store;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a journal as whoever adds one needs them: looked at, not read.
 *
 * @param lines the lines
 * @param torn  whether the last one has no line end
 */
record JournalLines(List<String> lines, boolean torn) {

    private static final Pattern ID = Pattern.compile("\"id\"\\s*:\\s*\"([^\"]*)\"");
    private static final Pattern WRITTEN = Pattern.compile("^.*?\"written\":\"[^\"]*\",");
    private static final String WHOLE_NUMBER = "[0-9]{1,9}";

    /** Copies the list. */
    JournalLines {
        lines = List.copyOf(lines);
    }

    /** The lines in a journal's bytes. */
    static JournalLines of(byte[] bytes) {
        return new JournalLines(new String(bytes, StandardCharsets.UTF_8).lines().toList(),
                bytes.length > 0 && bytes[bytes.length - 1] != '\n');
    }

    /** A name that no entry has, nor any damaged line may have: the next whole number. */
    String freeId() {
        int most = ids().stream().filter(id -> id.matches(WHOLE_NUMBER)).mapToInt(Integer::parseInt)
                .reduce(lines.size(), Math::max);
        return String.valueOf(most + 1);
    }

    /** The names of entries that say the same as a line, whenever they were written. */
    List<String> same(String line) {
        String says = says(line);
        return lines.stream().filter(other -> says(other).equals(says)).flatMap(other -> id(other).stream())
                .toList();
    }

    private static String says(String line) {
        Matcher written = WRITTEN.matcher(line);
        return written.find() ? line.substring(written.end()) : "";
    }

    private Set<String> ids() {
        Set<String> ids = new HashSet<>();
        lines.forEach(line -> id(line).ifPresent(ids::add));
        return ids;
    }

    private static Optional<String> id(String line) {
        Matcher id = ID.matcher(line);
        return id.find() ? Optional.of(id.group(1)) : Optional.empty();
    }
}
