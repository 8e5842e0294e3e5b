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
            throw new BadInput("file \"" + file + "\" cannot be written: " + reason(failed)
                    + ". Choose another place (--out)");
        }
    }

    private static void replace(Path file, byte[] content, CopyOption... how) throws IOException {
        Path beside = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.write(beside, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE,
                    StandardOpenOption.DSYNC);
            Files.move(beside, file, how);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static String reason(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "its folder does not exist";
        }
        return failed instanceof AccessDeniedException ? "no permission" : failed.getMessage();
    }
}
