package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No command opens the shutter by day, and openings of several nights are told apart. */
class DaylightTest {

    private static final String CAMERA =
            "--place 41,-2,1000 --zone UTC --focal-length 120 --film instant-mono-640 --f-number 8 ";
    private static final List<String> COMMANDS =
            List.of("trail --frame 80x80 ", "proof --frame 80x80 --size 16 ", "expose ");

    /** Sunrise at 41° N 2° W on 2027-02-09 is at 07:10 UTC, to the minute: the project's own events. */
    @ParameterizedTest
    @CsvSource({"2027-02-08T12:00, 20m, 2027-02-08T12:00", "2027-02-09T06:00, 3h, 2027-02-09T07:10",
        "2027-02-09T07:30, 1s, 2027-02-09T07:30"})
    void theSameIsRefusedForTheSameReason(String from, String lasts, String day) {
        for (String command : COMMANDS) {
            Run run = run(command + CAMERA + "--azimuth 180 --altitude 45 --from " + from + " --lasts "
                    + lasts);
            assertEquals(2, run.exit(), command);
            assertEquals("the Sun is up while the shutter is open, from " + day
                    + " on; open it after sunset and close it before sunrise", run.err().split("\n")[0]);
        }
    }

    @Test
    void theSameIsAllowed() {
        for (String command : COMMANDS) {
            Run run = run(command + CAMERA
                    + "--azimuth 180 --altitude 45 --from 2027-02-09T06:00 --lasts 1h");
            assertEquals(0, run.exit(), run.err());
        }
    }

    /** At 78° N the Sun stays down in December, so that the shutter may stay open over noon. */
    @Test
    void polarNightHasNoNoon() {
        for (String command : COMMANDS) {
            Run run = run(command + CAMERA.replace("41,-2,1000", "78.2,15.6,10")
                    + "--azimuth 180 --altitude 45 --from 2027-12-19T20:00 --lasts 17h");
            assertEquals(0, run.exit(), run.err());
        }
    }

    @Test
    void openingsOfTwoDatesAreDated() {
        String two = run("trail --frame 80x80 " + CAMERA + "--azimuth 0 --altitude 41 "
                + "--open 2027-02-08T21:00/1h --open 2027-02-09T21:00/1h").out();
        assertTrue(two.contains("Mon 2027-02-08 21:00:00 to 22:00:00, Tue 2027-02-09 21:00:00 to 22:00:00 "
                + "(2 h)"), two);
        String one = run("trail --frame 80x80 " + CAMERA + "--azimuth 0 --altitude 41 "
                + "--open 2027-02-08T23:30/10m --open 2027-02-09T01:00/10m").out();
        assertTrue(one.contains("\nMon 2027-02-08 23:30:00 to 23:40:00, Tue 2027-02-09 01:00:00 to 01:10:00 "
                + "(20 min)"), one);
    }

    @Test
    void anEarlierOpeningOfAnotherNightIsRefused() {
        Run run = run("expose " + CAMERA + "--from 2027-02-08T22:00 --open 2027-02-07T22:00/1h");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(
                "the opening at 2027-02-07T22:00 is in another night than the night of 2027-02-08"),
                run.err());
    }

    @ParameterizedTest
    @CsvSource({"--done nobody, (--done)", "--spent 500, (--spent)", "--spent 30, (--spent)"})
    void whatIsGoneIsBlamedOnItsOption(String options, String blamed) {
        Run run = run("plan --trip demo-data/trip.yaml --from-now 2027-02-08T19:40 " + options);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().split("\n")[0].endsWith(blamed), run.err());
    }

    private static Run run(String command) {
        return Run.of(new ArrayList<>(List.of(command.strip().split(" +"))));
    }
}
