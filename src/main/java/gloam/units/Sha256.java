package gloam.units;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {

    private static final int BUFFER = 1 << 16;

    private Sha256() {
    }

    /** The 32 bytes of a digest. */
    public static byte[] of(byte[] bytes) {
        return digest().digest(bytes);
    }

    /** The 32 bytes of the digest of all that is left to read. */
    public static byte[] of(InputStream in) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[BUFFER];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            digest.update(buffer, 0, read);
        }
        return digest.digest();
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException cannotHappen) {
            throw new IllegalStateException(cannotHappen);
        }
    }
}
