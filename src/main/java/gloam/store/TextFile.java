package gloam.store;

import gloam.units.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Reads a file as text: UTF-8 of moderate size, a byte order mark taken off, no control characters. */
final class TextFile {

    /** Largest file read: a hundred times a long trip. */
    static final int MOST_BYTES = 1 << 20;
    private static final int MOST_TOLD = 10;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextFile() {
    }

    /** The file's text; {@link BadInput} naming it where it cannot be read. */
    static String read(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadInput("cannot read " + file + ": it is a folder. Name a file in it.");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new BadInput("cannot read " + file + ": it is not a plain file. Name a file on disk.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return text(file.toString(), in);
        } catch (NoSuchFileException missing) {
            throw new BadInput("no file " + file + ". Check the name and the folder you are in.");
        } catch (IOException unreadable) {
            String reason = unreadable instanceof FileSystemException system && system.getReason() != null
                    ? system.getReason() : "no permission";
            throw new BadInput("cannot read " + file + ": " + reason + ". Check its name and permissions.");
        }
    }

    /** The text of a stream; the name is for messages. */
    static String text(String name, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new BadInput("cannot read " + name + ": it is larger than " + MOST_BYTES / 1024
                    + " KiB. Is it the right file?");
        }
        return withoutControls(name, decoded(name, bytes));
    }

    private static String decoded(String name, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        boolean malformed = decoder.decode(ByteBuffer.wrap(bytes), text, true).isError();
        text.flip();
        boolean marked = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK;
        String decoded = text.subSequence(marked ? 1 : 0, text.length()).toString();
        if (malformed) {
            throw new BadInput(spot(name, decoded, decoded.length())
                    + ": not UTF-8 text. Save the file in UTF-8.");
        }
        return decoded;
    }

    private static String withoutControls(String name, String text) {
        List<String> problems = IntStream.range(0, text.length()).filter(i -> control(text.charAt(i)))
                .limit(MOST_TOLD)
                .mapToObj(i -> spot(name, text, i) + String.format(Locale.ROOT,
                        ": control character U+%04X. Take it out.", (int) text.charAt(i))).toList();
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return text;
    }

    private static boolean control(char c) {
        return Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r';
    }

    private static String spot(String name, String text, int at) {
        String before = text.substring(0, at).replace("\r\n", "\n").replace('\r', '\n');
        long line = 1 + before.chars().filter(c -> c == '\n').count();
        return name + ":" + line + ":" + (before.length() - before.lastIndexOf('\n'));
    }
}
