package gloam.store;

import gloam.units.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What tells a file from all others, whatever its name (FIPS 180-4). */
public final class FileDigest {

    private FileDigest() {
    }

    /** SHA-256 of a file, as 64 hexadecimal digits in small letters. */
    public static String sha256(Input input) {
        try (InputStream in = new DigestInputStream(Files.newInputStream(input.file()), digest())) {
            in.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(((DigestInputStream) in).getMessageDigest().digest());
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + input.shown() + ": " + unreadable.getMessage());
        }
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException(never);
        }
    }
}
