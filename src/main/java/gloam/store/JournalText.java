package gloam.store;

import gloam.journal.Entry;
import gloam.units.BadInput;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The bytes of a journal taken apart: every line read by itself, so that a damaged one spoils no other.
 *
 * @param lines the lines but for blank ones, in the order in which they stand
 * @param torn  whether the last line has no line end
 */
record JournalText(List<Line> lines, boolean torn) {

    private static final Pattern VERSION =
            Pattern.compile("^\\{\\s*\"gloam-journal\"\\s*:\\s*(\\d{1,3})\\b");
    private static final Pattern CHANGE = Pattern.compile("(?<!\\\\)\"change\"\\s*:\\s*\\{");
    private static final Pattern PACK = Pattern.compile("(?<!\\\\)\"pack\"\\s*:\\s*\\{");
    private static final String MARK = "\uFEFF";
    /** What every line begins with. */
    static final String BEGINNING = "{\"gloam-journal\"";

    /** Copies the list. */
    JournalText {
        lines = List.copyOf(lines);
    }

    /**
     * A line of a journal; where it can be read, either a sheet, a correction or a pack.
     *
     * @param where    the file and the line's number
     * @param text     the text without byte order mark and line end
     * @param keys     the keys of the sheet in it, if any
     * @param sheet    that sheet
     * @param change   the correction in it, if any
     * @param pack     the pack noted in it, if any
     * @param newer    whether a newer Gloam wrote it
     * @param problems what is wrong with it
     */
    record Line(String where, String text, Optional<JournalLine> keys, Optional<Entry> sheet,
            Optional<JournalChange> change, Optional<JournalPack> pack, boolean newer,
            List<String> problems) {

        private static Line unread(String where, String text, boolean newer, List<String> problems) {
            return new Line(where, text, Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty(), newer, problems);
        }

        /** Whether it can be used. */
        boolean read() {
            return sheet.isPresent() || change.isPresent() || pack.isPresent();
        }

        /** Whether a line of a journal stood there once, whole or broken off. */
        boolean ofAJournal() {
            String packed = text.replaceAll("\\s", "");
            return packed.contains(BEGINNING.substring(1)) || BEGINNING.startsWith(packed);
        }

        /** Whether it is from before names were drawn at random. */
        boolean first() {
            return keys.filter(line -> line.gloamJournal() == 1).isPresent();
        }
    }

    /** The journal in a file's bytes. */
    static JournalText of(Path file, byte[] bytes) {
        List<byte[]> raw = raw(bytes);
        boolean torn = bytes.length > 0 && bytes[bytes.length - 1] != '\n';
        List<Line> lines = new ArrayList<>();
        for (int number = 1; number <= raw.size(); number++) {
            try {
                String text = text(raw.get(number - 1));
                if (!text.isEmpty()) {
                    lines.add(line(file, number, text, torn && number == raw.size()));
                }
            } catch (CharacterCodingException malformed) {
                String where = file + ":" + number;
                lines.add(Line.unread(where, new String(raw.get(number - 1), StandardCharsets.ISO_8859_1),
                        false, List.of(where + ": not UTF-8 text. The line is left out.")));
            }
        }
        return new JournalText(lines, torn);
    }

    /** The lines without their line feeds. */
    static List<byte[]> raw(byte[] bytes) {
        List<byte[]> lines = new ArrayList<>();
        for (int start = 0; start < bytes.length;) {
            int end = start;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            lines.add(Arrays.copyOfRange(bytes, start, end));
            start = end + 1;
        }
        return lines;
    }

    /** Whether a file with these lines is a journal, or may become one. */
    boolean ofAJournal() {
        return lines.isEmpty() || lines.stream().anyMatch(Line::ofAJournal);
    }

    /** The text of a line without byte order mark and white space around it. */
    static String text(byte[] line) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line)).toString();
        return (text.startsWith(MARK) ? text.substring(1) : text).strip();
    }

    /** A line of text as it is read; what is wrong with it is among its problems. */
    static Line line(Path file, int number, String text, boolean last) {
        String where = file + ":" + number;
        Matcher form = VERSION.matcher(text);
        boolean newer = form.find() && Integer.parseInt(form.group(1)) > JournalLine.VERSION;
        Tree.Text placed = new Tree.Text(file.toString(), number, text);
        try {
            if (CHANGE.matcher(text).find()) {
                JournalChange change = bound(placed, newer, JournalChange.class);
                return new Line(where, text, Optional.empty(), Optional.empty(), Optional.of(change),
                        Optional.empty(), newer, List.of());
            }
            if (PACK.matcher(text).find()) {
                return new Line(where, text, Optional.empty(), Optional.empty(), Optional.empty(),
                        Optional.of(bound(placed, newer, JournalPack.class)), newer, List.of());
            }
            JournalLine keys = bound(placed, newer, JournalLine.class);
            return new Line(where, text, Optional.of(keys), Optional.of(sheet(placed, keys)),
                    Optional.empty(), Optional.empty(), newer, List.of());
        } catch (BadInput damaged) {
            return Line.unread(where, text, newer, newer
                    ? List.of(where + ": written by a newer Gloam and passed over. Update Gloam to use it.")
                    : last ? List.of(where + ": the last line is broken off; its entry was never "
                    + "acknowledged. Add it again.") : damaged.problems());
        }
    }

    /** The line in which a record will be read again once it is added; refused where it could not be. */
    static Line readAgain(Path file, Record record) {
        Line line = line(file, 1, Bound.line(record), false);
        if (!line.read()) {
            throw new BadInput(line.problems().stream().map(problem ->
                    "nothing was added, since the entry could not be read again: "
                            + problem.replaceFirst("^" + Pattern.quote(line.where())
                            + ":\\d+:? ", "")).toList());
        }
        return line;
    }

    private static <T extends Record> T bound(Tree.Text text, boolean newer, Class<T> type) {
        return newer ? Bound.readNewer(text, type) : Bound.read(text, type);
    }

    private static Entry sheet(Tree.Text text, JournalLine keys) {
        try {
            return keys.entry();
        } catch (BadInput refused) {
            throw new BadInput(text.at(1, 1) + ": " + refused.getMessage());
        }
    }
}
