package gloam.store;

import gloam.units.BadInput;
import gloam.units.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.HexFormat;

/** What names a file's content, whatever its own name. */
public final class FileDigest {

    private FileDigest() {
    }

    /**
     * SHA-256 of a file, as 64 hexadecimal digits in small letters.
     *
     * @throws BadInput if it cannot be read
     */
    public static String sha256(Input input) {
        try (InputStream in = Files.newInputStream(input.file())) {
            return HexFormat.of().formatHex(Sha256.of(in));
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + input.shown() + ": " + unreadable.getMessage()
                    + ". Check its name and permissions.");
        }
    }
}
