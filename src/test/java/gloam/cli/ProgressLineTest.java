package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

    private final StringWriter terminal = new StringWriter();

    /** A clock that goes on by some time whenever it is read. */
    private static Clock ticking(Duration step) {
        return new Clock() {
            private Instant now = Instant.EPOCH;

            @Override
            public Instant instant() {
                now = now.plus(step);
                return now;
            }

            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }
        };
    }

    @Test
    void writesOverItselfAndIsGoneAtTheEnd() {
        ProgressLine line = new ProgressLine("nights", new PrintWriter(terminal),
                ticking(Duration.ofSeconds(1)));
        line.reached(1, 3);
        line.reached(2, 3);
        line.reached(3, 3);
        assertEquals("\rnights: 1 of 3\rnights: 2 of 3\r" + " ".repeat(14) + "\r", terminal.toString());
    }

    @Test
    void saysNothingOfWhatIsSoonDone() {
        ProgressLine line = new ProgressLine("nights", new PrintWriter(terminal),
                ticking(Duration.ofMillis(10)));
        for (int done = 1; done <= 5; done++) {
            line.reached(done, 5);
        }
        assertEquals("", terminal.toString());
    }
}
