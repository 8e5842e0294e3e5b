package gloam.store;

import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Pack;
import gloam.units.BadInput;
import gloam.units.Range;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The journal on disk: one line of JSON for each sheet, correction and pack; lines are only ever added.
 *
 * <p>Lines have random names, so that copies of a journal that were added to in two places may be joined. The
 * file is locked while an entry is added. The entry is on disk, in the file that then has the journal's name,
 * before {@link #add} returns; if it cannot be written completely or read again, the file stays unchanged.
 * Adding what the journal already says changes nothing, so a command that was interrupted can simply be
 * repeated. A copy of the file is a backup.
 */
public final class JournalFile {

    private static final Range PICTURE = new Range("length of the path of a picture", 1, 500, "characters");
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Duration LATER = Duration.ofMillis(1);

    private JournalFile() {
    }

    /**
     * The result of adding an entry.
     *
     * @param entry   the entry in the journal
     * @param already whether the journal had it already
     * @param before  what was said of that sheet before; empty for a new sheet
     */
    public record Added(Entry entry, boolean already, Optional<Entry> before) {
    }

    /** Reads a journal; damaged lines are reported and the others used. */
    public static Journal read(Path file) {
        return JournalSheets.of(text(file, LockedJournal.read(file))).journal();
    }

    /** Adds a sheet under a new name; creates the file if there is none. */
    public static Added add(Path file, Entry sheet) {
        LockedJournal.checkName(file);
        Entry kept = JournalSheets.readAgain(file, sheet.identified(name()));
        return LockedJournal.held(file, true, journal -> addSheet(file, journal, kept));
    }

    /** Corrects the sheet of a name, changing what was last said of it. */
    public static Added correct(Path file, String name, UnaryOperator<Entry> change) {
        return LockedJournal.held(file, false, journal -> {
            JournalText text = text(file, journal.bytes());
            Entry before = JournalSheets.of(text).journal().lastWord(name).orElseThrow(() ->
                    new BadInput("the journal has no entry " + Shown.quoted(name) + " to correct"));
            return changed(file, journal, text, before, change.apply(before));
        });
    }

    /** Notes a pack, unless the journal says so already; creates the file if there is none. */
    public static boolean note(Path file, Pack pack, Instant now) {
        LockedJournal.checkName(file);
        return LockedJournal.held(file, true, journal -> {
            JournalText text = text(file, journal.bytes());
            Optional<JournalPack> before = JournalPack.lastWords(text).stream()
                    .filter(word -> word.pack().pack().same(pack)).findFirst();
            if (before.filter(word -> word.pack().pack().equals(pack)).isPresent()) {
                journal.force(text.torn());
                return journal.appended();
            }
            JournalPack word = JournalPack.of(pack, name(),
                    before.map(last -> after(last.written(), now)).orElse(now));
            JournalText.readAgain(file, word);
            journal.append(text.torn(), Bound.line(word));
            return true;
        });
    }

    /**
     * The path by which a journal keeps a photo: from the journal's folder, so that both may be moved.
     *
     * @throws BadInput if there is no such file, or its path is too long
     */
    public static String picture(Path journal, Path picture) {
        if (!Files.isRegularFile(picture)) {
            throw new BadInput("no file " + picture + ". Check the name and the folder you are in.");
        }
        Path folder = journal.toAbsolutePath().normalize().getParent();
        Path there = picture.toAbsolutePath().normalize();
        String kept = (folder.getRoot().equals(there.getRoot()) ? folder.relativize(there) : there).toString()
                .replace(File.separatorChar, '/');
        PICTURE.check(kept.length());
        return kept;
    }

    private static Added addSheet(Path file, LockedJournal journal, Entry sheet) throws IOException {
        JournalText text = text(file, journal.bytes());
        JournalSheets sheets = JournalSheets.of(text);
        Optional<Entry> there = sheets.alike(sheet);
        if (there.filter(entry -> !entry.withdrawn()).isPresent()) {
            journal.force(text.torn());
            return new Added(there.get(), !journal.appended(), Optional.empty());
        }
        Entry named = sheet.writtenAt(there.map(gone -> after(gone.writtenAt(), sheet.writtenAt()))
                .orElse(sheet.writtenAt()));
        journal.append(text.torn(), Bound.line(JournalLine.of(named)));
        return new Added(named.named(there.map(Entry::id).orElse(sheets.nextNumber())), false,
                Optional.empty());
    }

    /** When a later word was written, after the one before even if the clock went back. */
    private static Instant after(Instant before, Instant now) {
        Instant later = before.plus(LATER);
        return now.isBefore(later) ? later : now;
    }

    private static Added changed(Path file, LockedJournal journal, JournalText text, Entry before,
            Entry after) throws IOException {
        Entry now = JournalSheets.readAgain(file, after.identified(before.identity())
                .writtenAt(after(before.writtenAt(), after.writtenAt()))).named(before.id());
        JournalChange change = JournalChange.between(before, now, name());
        if (change.nothing()) {
            journal.force(text.torn());
            return new Added(before, !journal.appended(), Optional.of(before));
        }
        journal.append(text.torn(), Bound.line(change));
        return new Added(now, false, Optional.of(before));
    }

    private static JournalText text(Path file, byte[] bytes) {
        JournalText text = JournalText.of(file, bytes);
        if (!text.ofAJournal()) {
            throw new BadInput(file + " is no journal: none of its lines is an entry. Name another file.");
        }
        return text;
    }

    private static String name() {
        return HexFormat.of().toHexDigits(RANDOM.nextLong());
    }
}
