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
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The journal on disk: one line of JSON an entry, only ever added to.
 *
 * <p>Whoever adds holds the file alone meanwhile. An entry is on disk before {@link #add} returns; where it cannot be
 * written whole, the file stays as it was. To add again what was added before adds nothing, so that a process that died
 * before it could tell may simply be run again. A copy of the file is a backup.
 */
public final class JournalFile {

    private static final String ENDING = ".jsonl";
    private static final long MOST_BYTES = 1L << 26;

    private JournalFile() {
    }

    /**
     * What adding came to.
     *
     * @param entry   the entry as it stands in the journal
     * @param already whether it was there before
     */
    public record Added(Entry entry, boolean already) {
    }

    /** Reads a journal; damaged lines are told and the others read. */
    public static Journal read(Path file) {
        checkName(file);
        if (!Files.exists(file)) {
            throw new BadInput("no file " + file + ". Check the name and the folder you are in.");
        }
        checkPlain(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            channel.lock(0, Long.MAX_VALUE, true);
            JournalText text = JournalText.of(file, bytes(file, channel));
            return Journal.of(text.entries(), text.damages());
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + file + ": " + reason(unreadable));
        }
    }

    /** Adds an entry under a name of its own, whatever name it has; makes the file where there is none. */
    public static Added add(Path file, Entry entry) {
        checkName(file);
        checkPlain(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE,
                StandardOpenOption.CREATE)) {
            channel.lock();
            return add(file, channel, entry);
        } catch (IOException failed) {
            throw new BadInput("nothing was added: " + file + " cannot be written: " + reason(failed)
                    + ". The journal is as it was.");
        }
    }

    private static Added add(Path file, FileChannel channel, Entry entry) throws IOException {
        JournalLines lines = JournalLines.of(bytes(file, channel));
        entry.corrects().filter(id -> !lines.has(id)).ifPresent(id -> {
            throw new BadInput("the journal has no entry " + Shown.quoted(id) + " to correct");
        });
        String line = JournalLine.of(entry.named(lines.freeId()));
        Optional<String> same = lines.same(line);
        append(channel, (lines.torn() ? "\n" : "") + (same.isPresent() ? "" : line + "\n"));
        if (lines.lines().isEmpty()) {
            forceFolder(file);
        }
        Entry asWritten = JournalText.entry(file, 1, ByteBuffer.wrap(line.getBytes(StandardCharsets.UTF_8))).orElseThrow();
        return new Added(same.map(asWritten::named).orElse(asWritten), same.isPresent());
    }

    /** Puts bytes at the end and on disk, or leaves the file as it was. */
    private static void append(FileChannel channel, String text) throws IOException {
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
    }

    /** Puts the name of a new file on disk too, where the system lets a folder be opened. */
    private static void forceFolder(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
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
    private static void checkName(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new BadInput("journal \"" + file + "\": the name of a journal ends in " + ENDING);
        }
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
