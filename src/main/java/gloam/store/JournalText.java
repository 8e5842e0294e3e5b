package gloam.store;

import gloam.journal.Entry;
import gloam.units.BadInput;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bytes of a journal taken apart: every line read by itself, so that a damaged one spoils no other.
 *
 * @param entries entries in the order in which they stand
 * @param damages what could not be read, with its line
 */
record JournalText(List<Entry> entries, List<String> damages) {

    private static final int MOST_SHOWN = 50;

    /** Copies the lists. */
    JournalText {
        entries = List.copyOf(entries);
        damages = List.copyOf(damages);
    }

    /** The journal in a file's bytes. */
    static JournalText of(Path file, byte[] bytes) {
        List<Entry> entries = new ArrayList<>();
        List<String> damages = new ArrayList<>();
        int number = 0;
        for (int start = 0; start < bytes.length;) {
            int end = start;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            number++;
            try {
                entry(file, number, ByteBuffer.wrap(bytes, start, end - start)).ifPresent(entries::add);
            } catch (BadInput damaged) {
                damages.addAll(end == bytes.length
                        ? List.of(file + ":" + number + ": the last line is broken off; its entry was never "
                                + "acknowledged. Add it again.")
                        : damaged.problems());
            }
            start = end + 1;
        }
        return new JournalText(entries, shown(damages));
    }

    private static List<String> shown(List<String> damages) {
        List<String> shown = new ArrayList<>(damages.subList(0, Math.min(MOST_SHOWN, damages.size())));
        if (damages.size() > MOST_SHOWN) {
            shown.add("and " + (damages.size() - MOST_SHOWN) + " more");
        }
        return shown;
    }

    /** The entry in a line of a file; empty for a blank line. */
    static Optional<Entry> entry(Path file, int number, ByteBuffer bytes) {
        String line;
        try {
            line = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
        } catch (CharacterCodingException malformed) {
            throw new BadInput(file + ":" + number + ": not UTF-8 text. The line is left out.");
        }
        if (line.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(JournalLine.read(new Tree.Text(file.toString(), number, line)));
    }
}
