package gloam.store;

import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.units.BadInput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * The journal on disk: one line of JSON for each entry; lines are only ever added.
 *
 * <p>The file is locked while an entry is added. The entry is on disk, in the file that then has the
 * journal's name, before {@link #add} returns; if it cannot be written completely or read again, the file
 * stays unchanged. Adding an entry that the journal already has changes nothing, so a command that was
 * interrupted can simply be repeated. A copy of the file is a backup.
 */
public final class JournalFile {

    private static final String ENDING = ".jsonl";
    private static final long MOST_BYTES = 1L << 26;
    private static final int MOST_REPLACEMENTS = 100;

    private JournalFile() {
    }

    /**
     * The result of adding an entry.
     *
     * @param entry   the entry in the journal
     * @param already whether the journal had it already
     * @param before  the last entry about that sheet before; empty for a new sheet
     */
    public record Added(Entry entry, boolean already, Optional<Entry> before) {
    }

    /** Something done with the journal while it is held; nothing where the file is no longer the journal. */
    private interface Work {
        Added on(FileChannel channel) throws IOException;
    }

    /** Reads a journal; damaged lines are reported and the others used. */
    public static Journal read(Path file) {
        checkName(file);
        if (!Files.exists(file)) {
            throw missing(file);
        }
        checkPlain(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            channel.lock(0, Long.MAX_VALUE, true);
            return journal(file, bytes(file, channel));
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + file + ": " + reason(unreadable));
        }
    }

    /** Adds an entry under a new name; creates the file if there is none. */
    public static Added add(Path file, Entry entry) {
        return entry.corrects().map(id -> correct(file, id, before -> entry)).orElseGet(() -> {
            checkName(file);
            written(file, entry.named("1"));
            return held(file, true, channel -> addSheet(file, channel, entry));
        });
    }

    /** Adds a correction to the sheet of an entry, made from the last entry about it. */
    public static Added correct(Path file, String id, UnaryOperator<Entry> change) {
        checkName(file);
        return held(file, false, channel -> correct(file, channel, id, change));
    }

    private static Added addSheet(Path file, FileChannel channel, Entry sheet) throws IOException {
        byte[] bytes = bytes(file, channel);
        JournalLines lines = JournalLines.of(bytes);
        Entry entry = written(file, sheet.named(lines.freeId()));
        List<String> alike = lines.same(JournalLine.of(entry));
        Optional<Entry> there = alike.isEmpty() ? Optional.empty() : journal(file, bytes).sheets().stream()
                .map(Entry::id).filter(alike::contains).findFirst().map(entry::named);
        append(file, channel, lines, there.isPresent() ? Optional.empty() : Optional.of(entry));
        return new Added(there.orElse(entry), there.isPresent(), Optional.empty());
    }

    private static Added correct(Path file, FileChannel channel, String id, UnaryOperator<Entry> change)
            throws IOException {
        byte[] bytes = bytes(file, channel);
        JournalLines lines = JournalLines.of(bytes);
        Entry before = journal(file, bytes).lastWord(id).orElseThrow(() ->
                new BadInput("the journal has no entry " + Shown.quoted(id) + " to correct"));
        Entry entry = written(file, change.apply(before).named(lines.freeId()));
        boolean already = says(entry).equals(says(before));
        append(file, channel, lines, already ? Optional.empty() : Optional.of(entry));
        return new Added(already ? before : entry, already, Optional.of(before));
    }

    private static Journal journal(Path file, byte[] bytes) {
        JournalText text = JournalText.of(file, bytes);
        return Journal.of(text.entries(), text.damages());
    }

    /** What an entry says, whatever its name and whenever it was written. */
    private static String says(Entry entry) {
        return JournalLine.of(new Entry("", Instant.EPOCH, Optional.empty(), entry.withdrawn(),
                entry.exposed(), entry.outcome(), entry.note(), entry.wish()));
    }

    /** The entry as it will be read again; refused where it could not be. */
    private static Entry written(Path file, Entry entry) {
        byte[] line = JournalLine.of(entry).getBytes(StandardCharsets.UTF_8);
        try {
            return JournalText.entry(file, 1, ByteBuffer.wrap(line)).orElseThrow();
        } catch (BadInput unreadable) {
            throw new BadInput(unreadable.problems().stream().map(problem ->
                    "nothing was added, since the entry could not be read again: "
                            + problem.replaceFirst("^" + Pattern.quote(file + ":1:") + "\\d+:? ", ""))
                            .toList());
        }
    }

    /** Does something with the locked journal; once more if another file took its name meanwhile. */
    private static Added held(Path file, boolean mayBeNew, Work work) {
        boolean written = false;
        try {
            for (int attempt = 0; attempt < MOST_REPLACEMENTS; attempt++) {
                checkThere(file, mayBeNew);
                Optional<Object> key = key(file);
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ,
                        StandardOpenOption.WRITE)) {
                    channel.lock();
                    if (key.isPresent() && key.equals(key(file))) {
                        Added added = work.on(channel);
                        if (key.equals(key(file))) {
                            return new Added(added.entry, added.already && !written, added.before);
                        }
                        written |= !added.already;
                    }
                }
            }
            throw new IOException("other files take its name again and again");
        } catch (IOException failed) {
            throw new BadInput("nothing was added: " + file + " cannot be written: " + reason(failed)
                    + ". The journal is as it was.");
        }
    }

    /** Makes a new journal where one may be new. */
    private static void checkThere(Path file, boolean mayBeNew) throws IOException {
        if (mayBeNew && !Files.exists(file)) {
            FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE).close();
        } else if (!Files.exists(file)) {
            throw missing(file);
        }
        checkPlain(file);
    }

    /** What distinguishes the file of that name from another that replaces it; empty if there is none. */
    private static Optional<Object> key(Path file) throws IOException {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(Objects.requireNonNullElse(attributes.fileKey(), attributes.creationTime()));
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        }
    }

    /** Puts an entry, if any, at the end and on disk, or leaves the file as it was. */
    private static void append(Path file, FileChannel channel, JournalLines lines, Optional<Entry> entry)
            throws IOException {
        String text = (lines.torn() ? "\n" : "") + entry.map(JournalLine::of).map(line -> line + "\n")
                .orElse("");
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        long end = channel.size();
        try {
            for (long at = end; bytes.hasRemaining();) {
                at += channel.write(bytes, at);
            }
            channel.force(true);
        } catch (IOException failed) {
            channel.truncate(end);
            throw failed;
        }
        if (lines.lines().isEmpty()) {
            forceFolder(file);
        }
    }

    /** Puts the name of a new file on disk too, where the system lets a folder be opened. */
    private static void forceFolder(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(),
                StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    private static byte[] bytes(Path file, FileChannel channel) throws IOException {
        if (channel.size() > MOST_BYTES) {
            throw new BadInput("cannot read " + file + ": it is larger than " + MOST_BYTES / (1 << 20)
                    + " MiB. Is it the right file?");
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        int read = 0;
        while (bytes.hasRemaining() && read >= 0) {
            read = channel.read(bytes, bytes.position());
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    /** A wrong name must not let entries be added to a trip file. */
    static void checkName(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new BadInput("journal \"" + file + "\": the name of a journal ends in " + ENDING);
        }
    }

    private static BadInput missing(Path file) {
        return new BadInput("no file " + file + ". Check the name and the folder you are in.");
    }

    /** A pipe would be waited for without end. */
    private static void checkPlain(Path file) {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new BadInput("cannot read " + file + ": it is not a plain file. Name a file on disk.");
        }
    }

    private static String reason(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "its folder does not exist";
        }
        return failed instanceof AccessDeniedException ? "no permission" : failed.getMessage();
    }
}
