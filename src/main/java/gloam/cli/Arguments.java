package gloam.cli;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The arguments as typed, in UTF-8.
 *
 * <p>Java decodes them in the locale's encoding and loses other characters; Linux keeps the bytes.
 */
public final class Arguments {

    private static final Path COMMAND_LINE = Path.of("/proc/self/cmdline");
    private static final String LOST = "\uFFFD";

    private Arguments() {
    }

    /**
     * The arguments of this process.
     *
     * @param given the arguments as Java decoded them
     * @throws BadInput if one is not valid UTF-8, or cannot be recovered
     */
    public static String[] typed(String... given) {
        boolean lost = Stream.of(given).anyMatch(argument -> argument.contains(LOST));
        boolean readAsUtf8 = System.getProperty("sun.jnu.encoding", "").equals("UTF-8");
        if (!lost && (readAsUtf8 || Stream.of(given).allMatch(Arguments::ascii))) {
            return given;
        }
        List<byte[]> typed = bytes();
        if (typed.size() >= given.length) {
            List<byte[]> own = typed.subList(typed.size() - given.length, typed.size());
            return own.stream().map(Arguments::text).toArray(String[]::new);
        }
        if (lost) {
            throw new BadInput("Java cannot read text other than ASCII in this locale. Set LC_ALL=C.UTF-8.");
        }
        return given;
    }

    private static boolean ascii(String text) {
        return text.chars().allMatch(letter -> letter < 0x80);
    }

    private static String text(byte... argument) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(argument)).toString();
        } catch (CharacterCodingException other) {
            throw new BadInput("\"" + new String(argument, StandardCharsets.UTF_8)
                    + "\" is not UTF-8 text. Type it on a terminal that uses UTF-8.");
        }
    }

    /** The command line, its parts ended by a zero byte each; nothing where the system does not keep it. */
    private static List<byte[]> bytes() {
        List<byte[]> parts = new ArrayList<>();
        try {
            byte[] all = Files.readAllBytes(COMMAND_LINE);
            int start = 0;
            for (int end = 0; end < all.length; end++) {
                if (all[end] == 0) {
                    parts.add(Arrays.copyOfRange(all, start, end));
                    start = end + 1;
                }
            }
        } catch (IOException notKept) {
            return List.of();
        }
        return parts;
    }
}
