package gloam.cli;

import gloam.store.Input;
import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/** Writes a file completely or not at all. */
final class OutputFile {

    private static final FileAttribute<?>[] NONE = {};

    private OutputFile() {
    }

    /**
     * Puts bytes into a file; an existing file stays as it is until the new content is complete.
     *
     * @throws BadInput when the file cannot be written
     */
    static void write(Path file, byte[] content) {
        write(file, content, true);
    }

    /** The same, an existing file being left as it is unless it may be written over. */
    static void write(Path file, byte[] content, boolean overwrite) {
        checkPlace(file);
        try {
            if (!overwrite) {
                replace(file.toAbsolutePath(), content);
            } else if (Files.exists(file) && !Files.isRegularFile(file)) {
                Files.write(file, content, StandardOpenOption.WRITE);
            } else {
                replace(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath(), content,
                        StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (FileAlreadyExistsException there) {
            throw new BadInput("file \"" + file + "\" already exists; give another name");
        } catch (IOException failed) {
            throw refused(file, reason(failed));
        }
    }

    /**
     * Looks whether a file can be where it is to be.
     *
     * @throws BadInput when its folder is not there or it is a folder itself
     */
    static void checkPlace(Path file) {
        if (Files.isDirectory(file)) {
            throw refused(file, "it is a folder");
        }
        if (!Files.isDirectory(file.toAbsolutePath().getParent())) {
            throw refused(file, "its folder does not exist");
        }
    }

    /**
     * Makes sure that a file is not one of those that are read.
     *
     * @throws BadInput when it is, by whatever name
     */
    static void refuseOver(Path file, List<Input> inputs) {
        if (inputs.stream().anyMatch(input -> input.reads(file))) {
            throw refused(file, "it is read by this command");
        }
    }

    private static BadInput refused(Path file, String reason) {
        return new BadInput("file \"" + file + "\" cannot be written: " + reason + ". Choose another place");
    }

    private static void replace(Path file, byte[] content, CopyOption... how) throws IOException {
        boolean old = Files.exists(file);
        Path part = removedOnExit(Files.createTempFile(file.getParent(), ".gloam", ".part", old ? NONE
                : usual(file)));
        try {
            Files.write(part, content, StandardOpenOption.WRITE, StandardOpenOption.DSYNC);
            PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
            if (old && view != null) {
                keep(Files.readAttributes(file, PosixFileAttributes.class), view);
            }
            Files.move(part, file, how);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** The rights of a new file, less what the user's mask takes. */
    private static FileAttribute<?>[] usual(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-rw-rw-"))}
                : NONE;
    }

    /** Keeps a file's rights and, where the system lets it, its group and owner. */
    private static void keep(PosixFileAttributes old, PosixFileAttributeView view) throws IOException {
        if (!old.group().equals(view.readAttributes().group())) {
            wherePossible(() -> view.setGroup(old.group()));
        }
        if (!old.owner().equals(view.getOwner())) {
            wherePossible(() -> view.setOwner(old.owner()));
        }
        view.setPermissions(old.permissions());
    }

    /** A step that the system may refuse. */
    private interface Step {

        void take() throws IOException;
    }

    private static void wherePossible(Step step) {
        try {
            step.take();
        } catch (IOException refused) {
            return;
        }
    }

    /** An interrupted run leaves no part behind. */
    private static Path removedOnExit(Path part) {
        part.toFile().deleteOnExit();
        return part;
    }

    private static String reason(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "no file can be made there";
        }
        return failed instanceof AccessDeniedException ? "no permission" : failed.getMessage();
    }
}
