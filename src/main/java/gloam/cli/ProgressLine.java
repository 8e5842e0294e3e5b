package gloam.cli;

import gloam.planner.Progress;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** A line that shows the progress of a long computation; it overwrites itself and disappears at the end. */
final class ProgressLine implements Progress {

    private static final Duration EVERY = Duration.ofMillis(300);

    private final String what;
    private final PrintWriter out;
    private final Clock clock;
    private Instant told;
    private int tell = 0;
    private int width = 0;

    /** A line on a terminal; nothing is written before the computation has taken a while. */
    ProgressLine(String what, PrintWriter terminal, Clock clock) {
        this.what = what;
        this.out = terminal;
        this.clock = clock;
        this.told = clock.instant();
    }

    @Override
    public synchronized void reached(int done, int all) {
        if (done == all) {
            write("");
        } else if (done > tell && !clock.instant().isBefore(told.plus(EVERY))) {
            told = clock.instant();
            tell = done;
            write(what + ": " + done + " of " + all);
        }
    }

    private void write(String text) {
        if (!text.isEmpty() || width > 0) {
            out.print("\r" + text + " ".repeat(Math.max(0, width - text.length()))
                    + (text.isEmpty() ? "\r" : ""));
            out.flush();
        }
        width = text.length();
    }
}
