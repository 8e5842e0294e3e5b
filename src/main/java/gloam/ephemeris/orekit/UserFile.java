package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A file of the sky's data that the user gives.
 *
 * @param what   what it is to be
 * @param path   where it is
 * @param remedy what to give instead where it is something else
 */
record UserFile(String what, Path path, String remedy) {

    /** The whole of DE440 in one file has 98 MB. */
    private static final long MOST_BYTES = 1L << 28;

    /** Its bytes; an {@link IOException} says in its message why they cannot be had. */
    byte[] bytes() throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new IOException("it is not a plain file");
        }
        if (Files.size(path) > MOST_BYTES) {
            throw new IOException("it is larger than " + (MOST_BYTES >> 20) + " MiB");
        }
        return Files.readAllBytes(path);
    }

    /** The line for the user when it cannot be read. */
    BadInput unreadable(Exception why) {
        return unreadable(why instanceof NoSuchFileException ? "there is no such file" : why.getMessage());
    }

    /** The same with the reason in words. */
    BadInput unreadable(String reason) {
        return new BadInput(what + " \"" + path + "\" cannot be read: " + reason + ". " + remedy);
    }
}
