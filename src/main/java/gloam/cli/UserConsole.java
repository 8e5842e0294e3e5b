package gloam.cli;

import java.io.ByteArrayOutputStream;
import java.io.Console;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The terminal at which somebody may sit; its text is UTF-8, whatever encoding Java takes it to be in. */
final class UserConsole {

    private UserConsole() {
    }

    /**
     * Whether standard input and output are a terminal. From Java 22 on there may be a console without one.
     */
    static boolean there() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Console.class.getMethod("isTerminal").invoke(console).equals(true);
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }

    /** The answer to a question, a line of text; empty where the input has ended. */
    static Optional<String> line(String question) {
        return line(question, System.out);
    }

    /** The same of standard input that is no terminal; the question goes where no report goes. */
    static Optional<String> piped(String question) {
        return line(question + System.lineSeparator(), System.err);
    }

    private static Optional<String> line(String question, PrintStream shown) {
        String asked = question;
        while (true) {
            shown.writeBytes(asked.getBytes(StandardCharsets.UTF_8));
            shown.flush();
            Optional<byte[]> line = line();
            try {
                return line.isEmpty() ? Optional.empty()
                        : Optional.of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line.get()))
                        .toString());
            } catch (CharacterCodingException other) {
                asked = "That is not UTF-8 text." + System.lineSeparator() + question;
            }
        }
    }

    /** The bytes up to the end of a line; nothing at the end of input. */
    private static Optional<byte[]> line() {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        try {
            int next = System.in.read();
            if (next < 0) {
                return Optional.empty();
            }
            for (; next >= 0 && next != '\n'; next = System.in.read()) {
                if (next != '\r') {
                    line.write(next);
                }
            }
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
        return Optional.of(line.toByteArray());
    }
}
