package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file of the user's that cannot be read, as one line for them. */
final class Unreadable {

    private Unreadable() {
    }

    /** What the file was to be, which file, why it cannot be read and what to give. */
    static BadInput of(String what, Path file, Exception why, String remedy) {
        String firstLine = String.valueOf(why.getMessage()).lines().findFirst().orElse("").replaceAll(":$", "");
        String reason = why instanceof NoSuchFileException ? "there is no such file" : firstLine;
        return new BadInput(what + " \"" + file + "\" cannot be read: " + reason + ". " + remedy);
    }
}
