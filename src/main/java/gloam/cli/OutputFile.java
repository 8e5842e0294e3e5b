package gloam.cli;

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

/** Writes a file whole or not at all. */
final class OutputFile {

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
            throw new BadInput("file \"" + file + "\" is there already; give another name");
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

    private static BadInput refused(Path file, String reason) {
        return new BadInput("file \"" + file + "\" cannot be written: " + reason + ". Choose another place");
    }

    private static void replace(Path file, byte[] content, CopyOption... how) throws IOException {
        Path beside = removedOnExit(file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part"));
        try {
            Files.write(beside, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE,
                    StandardOpenOption.DSYNC);
            Files.move(beside, file, how);
        } finally {
            Files.deleteIfExists(beside);
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
