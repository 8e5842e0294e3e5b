package gloam.store;

import gloam.journal.Journal;
import gloam.units.BadInput;
import java.nio.charset.Charset;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** New journals made of others, which stay as they are. */
public final class JournalCopies {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int SHOWN = 60;

    private JournalCopies() {
    }

    /**
     * A new journal, not yet written.
     *
     * @param content its text
     * @param journal the same as read
     * @param done    what was done to make it, a line each
     */
    public record Copy(String content, Journal journal, List<String> done) {

        /** Copies the list. */
        public Copy {
            done = List.copyOf(done);
        }
    }

    /** Refuses a name that no journal can have with {@link BadInput}. */
    public static void checkName(Path file) {
        LockedJournal.checkName(file);
    }

    /**
     * All that is in several journals, each line once: those of the first as they stand, with their short
     * names, then what only others have. Of those, lines of the first form are written in the second, so that
     * their numbers no longer clash.
     */
    public static Copy join(List<Path> files) {
        List<String> lines = new ArrayList<>();
        Set<String> names = new HashSet<>();
        List<String> done = new ArrayList<>();
        for (Path file : files) {
            FirstForm firstForm = new FirstForm();
            List<JournalText.Line> read = text(file).lines();
            int before = lines.size();
            for (JournalText.Line line : read) {
                String second = line.first() ? second(firstForm, line) : line.text();
                boolean known = !names.add(name(JournalText.line(file, 1, second, false)));
                if (done.isEmpty() && (line.first() || !known)) {
                    lines.add(line.text());
                } else if (!known) {
                    lines.add(second);
                }
            }
            done.add(file + ": lines " + read.size() + ", of which not in the journals before "
                    + (lines.size() - before));
        }
        return copy(files.get(0), lines, done);
    }

    /** A journal without what keeps lines of it from being read; empty of things done where all is well. */
    public static Copy repair(Path file) {
        List<String> done = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        int number = 0;
        int ends = 0;
        byte[] bytes = LockedJournal.read(file);
        checked(file, JournalText.of(file, bytes));
        for (byte[] raw : JournalText.raw(bytes)) {
            number++;
            String where = "line " + number + ": ";
            String text;
            try {
                text = JournalText.text(raw);
                if (new String(raw, StandardCharsets.UTF_8).startsWith("\uFEFF")) {
                    done.add(where + "byte order mark taken out");
                }
            } catch (CharacterCodingException other) {
                text = new String(raw, WINDOWS).strip();
                done.add(where + "was not UTF-8; read as Windows-1252");
            }
            ends += raw.length > 0 && raw[raw.length - 1] == '\r' ? 1 : 0;
            keep(file, number, text, lines, done);
        }
        if (ends > 0) {
            done.add("line ends of Windows made plain: " + ends);
        }
        if (bytes.length > 0 && bytes[bytes.length - 1] != '\n') {
            done.add("line " + number + ": line end put where it was missing");
        }
        return copy(file, lines, done);
    }

    /** Keeps a line that can be read, else those of its parts that can. */
    private static void keep(Path file, int number, String text, List<String> lines, List<String> done) {
        String where = "line " + number + ": ";
        if (text.isEmpty()) {
            return;
        }
        JournalText.Line line = JournalText.line(file, number, text, false);
        if (line.read() || line.newer()) {
            if (!line.first() && lines.contains(text)) {
                done.add(where + "the same as a line before; kept once");
            } else {
                lines.add(text);
            }
            return;
        }
        for (String part : text.split("(?=" + Pattern.quote(JournalText.BEGINNING) + ")")) {
            JournalText.Line piece = JournalText.line(file, number, part.strip(), false);
            if (piece.read()) {
                lines.add(part.strip());
                done.add(where + "an entry parted from what stood before or after it");
            } else {
                done.add(where + "left out, " + piece.problems().get(0)
                        .replaceFirst("^.*?:\\d+:(\\d+)?:? ?", "")
                        .replaceFirst(" The line is left out\\.$", "") + " It began "
                        + Shown.quoted(part.substring(0, Math.min(SHOWN, part.length()))));
            }
        }
    }

    private static String second(FirstForm firstForm, JournalText.Line line) {
        try {
            FirstForm.Read read = firstForm.read(line);
            return read.change().map(Bound::line)
                    .orElseGet(() -> Bound.line(JournalLine.of(read.sheet())));
        } catch (BadInput misfit) {
            return line.text();
        }
    }

    private static String name(JournalText.Line line) {
        return line.change().map(JournalChange::id).or(() -> line.pack().map(JournalPack::id))
                .or(() -> line.keys().map(JournalLine::id))
                .orElse(line.text());
    }

    private static Copy copy(Path file, Iterable<String> lines, List<String> done) {
        StringBuilder content = new StringBuilder();
        lines.forEach(line -> content.append(line).append('\n'));
        byte[] bytes = content.toString().getBytes(StandardCharsets.UTF_8);
        return new Copy(content.toString(), JournalSheets.of(JournalText.of(file, bytes)).journal(), done);
    }

    private static JournalText text(Path file) {
        return checked(file, JournalText.of(file, LockedJournal.read(file)));
    }

    private static JournalText checked(Path file, JournalText text) {
        if (!text.ofAJournal()) {
            throw new BadInput(file + " is no journal: none of its lines is an entry. Name another file.");
        }
        return text;
    }
}
