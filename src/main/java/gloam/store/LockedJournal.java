package gloam.store;

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
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A journal's file while it is locked, and what may be a journal's file at all. */
final class LockedJournal {

    private static final String ENDING = ".jsonl";
    private static final long MOST_BYTES = 1L << 26;
    private static final int MOST_REPLACEMENTS = 100;

    private final Path file;
    private final FileChannel channel;
    private boolean appended;

    private LockedJournal(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Something done with the journal while it is held. */
    interface Work<T> {
        T on(LockedJournal journal) throws IOException;
    }

    /** The bytes of a journal that nobody is adding to. */
    static byte[] read(Path file) {
        checkName(file);
        if (!Files.exists(file)) {
            throw missing(file);
        }
        checkPlain(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            channel.lock(0, Long.MAX_VALUE, true);
            return new LockedJournal(file, channel).bytes();
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + file + ": " + reason(unreadable));
        }
    }

    /** Does something with the locked journal; once more if another file took its name meanwhile. */
    static <T> T held(Path file, boolean mayBeNew, Work<T> work) {
        checkName(file);
        boolean before = false;
        try {
            for (int attempt = 0; attempt < MOST_REPLACEMENTS; attempt++) {
                checkThere(file, mayBeNew);
                Optional<Object> key = key(file);
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ,
                        StandardOpenOption.WRITE)) {
                    channel.lock();
                    LockedJournal journal = new LockedJournal(file, channel);
                    journal.appended = before;
                    if (key.isPresent() && key.equals(key(file))) {
                        T done = work.on(journal);
                        if (key.equals(key(file))) {
                            return done;
                        }
                        before = journal.appended;
                    }
                }
            }
            throw new IOException("other files take its name again and again");
        } catch (IOException failed) {
            throw new BadInput("nothing was added: " + file + " cannot be written: " + reason(failed)
                    + ". The journal is as it was.");
        }
    }

    /** Whether a line was added, to this file or to one before that had its name. */
    boolean appended() {
        return appended;
    }

    /** All that is in the file. */
    byte[] bytes() throws IOException {
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

    /** Puts a line at the end and on disk, or leaves the file as it was. */
    void append(boolean torn, String line) throws IOException {
        appended = true;
        write((torn ? "\n" : "") + line + "\n");
    }

    /** Puts what is there on disk, with the line end that the last line may lack. */
    void force(boolean torn) throws IOException {
        write(torn ? "\n" : "");
    }

    private void write(String text) throws IOException {
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
        if (end == 0) {
            forceFolder(file);
        }
    }

    /** Makes a new journal where one may be new. */
    private static void checkThere(Path file, boolean mayBeNew) throws IOException {
        if (Files.isSymbolicLink(file)) {
            throw new BadInput("nothing was added: " + file + " is a link. Name the file itself, "
                    + Files.readSymbolicLink(file) + ".");
        }
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

    /** Puts the name of a new file on disk too, where the system lets a folder be opened. */
    private static void forceFolder(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(),
                StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
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
