package gloam.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Standard output that remembers failed writes, which a {@link PrintWriter} hides. */
public final class StandardOutput extends OutputStream {

    private final OutputStream stream;
    private Optional<IOException> failure = Optional.empty();

    /** Writes to a stream. */
    public StandardOutput(OutputStream stream) {
        super();
        this.stream = stream;
    }

    /** A writer of text in UTF-8, whatever the system's encoding. */
    public PrintWriter writer() {
        return new PrintWriter(new OutputStreamWriter(this, StandardCharsets.UTF_8));
    }

    @Override
    public void write(int one) {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        if (failure.isEmpty()) {
            try {
                stream.write(bytes, from, length);
            } catch (IOException failed) {
                failure = Optional.of(failed);
            }
        }
    }

    /**
     * The exit code of a run: that of {@link App#BAD_INPUT}, with a message, if its report could not be
     * written, unless the run ended in a bug. A reader that stops early, such as {@code head}, is no failure.
     */
    public int exit(int run, PrintWriter err) {
        if (failure.isEmpty() || closedPipe(failure.get())) {
            return run;
        }
        err.println("standard output cannot be written: " + failure.get().getMessage()
                + ". Send it elsewhere, or use --out FILE.");
        return run == App.BUG ? run : App.BAD_INPUT;
    }

    private static boolean closedPipe(IOException failed) {
        return String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
    }
}
