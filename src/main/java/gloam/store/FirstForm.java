package gloam.store;

import gloam.journal.Entry;
import gloam.units.BadInput;
import gloam.units.Sha256;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * Reads lines of a journal's first form, in which entries were numbered and a correction was a whole sheet.
 *
 * <p>A line is named by its text, so that copies of it are the same line; a number means the last line of
 * that number before, and a correction what it says differently from the last word on the sheet before. So
 * numbers that clash in journals put one behind the other do no harm.
 */
final class FirstForm {

    private static final int NAME_BYTES = 8;

    private final Map<String, String> sheets = new HashMap<>();
    private final Map<String, Entry> lastWords = new HashMap<>();

    /**
     * A line read.
     *
     * @param number its number
     * @param sheet  the sheet as the line has it
     * @param change what it corrects, if it is a correction
     */
    record Read(String number, Entry sheet, Optional<JournalChange> change) {
    }

    /**
     * Reads a line; those before it have been read.
     *
     * @throws BadInput if it corrects what is not there
     */
    Read read(JournalText.Line line) {
        JournalLine keys = line.keys().orElseThrow();
        String name = name(line.text());
        Entry entry = line.sheet().orElseThrow().identified(name);
        if (keys.corrects().isEmpty()) {
            sheets.put(keys.id(), name);
            lastWords.put(name, entry);
            return new Read(keys.id(), entry, Optional.empty());
        }
        String sheet = Optional.ofNullable(sheets.get(keys.corrects().get())).orElseThrow(() ->
                new BadInput("entry " + keys.id() + " corrects entry " + keys.corrects().get()
                        + ", which is not before it; it is left out"));
        Entry before = lastWords.get(sheet);
        Instant after = before.writtenAt().plusNanos(1);
        Entry now = entry.identified(sheet).writtenAt(entry.writtenAt().isBefore(after) ? after
                : entry.writtenAt());
        sheets.put(keys.id(), sheet);
        lastWords.put(sheet, now);
        return new Read(keys.id(), now, Optional.of(JournalChange.between(before, now, name)));
    }

    private static String name(String line) {
        return HexFormat.of().formatHex(Sha256.of(line.getBytes(StandardCharsets.UTF_8)), 0, NAME_BYTES);
    }
}
