package gloam.store;

import gloam.units.BadInput;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** File names as users write them. */
public final class FileName {

    private FileName() {
    }

    /**
     * The path of a name.
     *
     * @throws BadInput if no file can have that name, or Java cannot encode it in this locale
     */
    public static Path path(String name) {
        if (!writable(name)) {
            throw new BadInput("Java cannot open a file named " + Shown.quoted(name)
                    + " in this locale. Start gloam by its launcher, or set LC_ALL=C.UTF-8.");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException strange) {
            throw new BadInput(Shown.quoted(name) + " is not a file name");
        }
    }

    /** Whether Java writes the name in UTF-8, as everybody else; Windows knows no other. */
    private static boolean writable(String name) {
        return name.chars().allMatch(letter -> letter < 0x80) || File.separatorChar == '\\'
                || System.getProperty("sun.jnu.encoding", "").equals("UTF-8");
    }
}
