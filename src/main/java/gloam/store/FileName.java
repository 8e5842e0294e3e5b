package gloam.store;

import gloam.units.BadInput;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Names of files as users write them. */
public final class FileName {

    private FileName() {
    }

    /**
     * The path that a name means.
     *
     * @throws BadInput when no file can have that name, or Java cannot write it in this locale
     */
    public static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException strange) {
            throw new BadInput(writable(name) ? Shown.quoted(name) + " is no file name" : "Java cannot open a file named "
                    + Shown.quoted(name) + " in this locale. Start gloam by its launcher, or set LC_ALL=C.UTF-8.");
        }
    }

    /** Whether the encoding that Java takes for that of file names has every character. */
    private static boolean writable(String name) {
        return Charset.forName(System.getProperty("sun.jnu.encoding")).newEncoder().canEncode(name)
                || !StandardCharsets.UTF_8.newEncoder().canEncode(name);
    }
}
