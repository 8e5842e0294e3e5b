package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.support.FinalsColumns;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The user's own data of the sky, from the options on. */
class SkyDataOptionsTest {

    private static final String AT =
            "sky --lat 41.05 --lon -2.15 --height 1080 --zone UTC --at 2027-02-08T22:30";

    @TempDir
    private Path folder;

    @Test
    void readsThePlanetsOfAFile() throws IOException {
        assertEquals(run(AT).out(), run(AT, "--ephemeris", jarsOwn().toString()).out());
    }

    @Test
    void turnsTheEarthAsMeasured() throws IOException {
        Run measured = run(AT, "--earth-orientation", finals().toString(), "--ephemeris",
                jarsOwn().toString());
        assertEquals(App.DONE, measured.exit(), measured.err());
        assertNotEquals(run(AT).out(), measured.out());
    }

    @Test
    void namesTheDatesCovered() throws IOException {
        Run outside = run(AT.replace("--at 2027-02-08T22:30", "--night 2027-03-08"), "--earth-orientation",
                finals().toString());
        assertEquals(App.NO_DATA, outside.exit());
        assertTrue(outside.err().contains("2027-03-08") && outside.err().contains("2027-02-01 … 2027-02-27"),
                outside.err());
    }

    @Test
    void refusesWhatIsNoSuchFileByEveryCommand() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.txt"), "no table of any kind");
        for (String option : List.of("--ephemeris", "--earth-orientation")) {
            assertRefused("cannot be read", option, AT, text);
            assertRefused("there is no such file", option, "check --trip demo-data/trip.yaml",
                    Path.of("none"));
        }
    }

    private static void assertRefused(String why, String option, String command, Path file) {
        Run refused = run(command, option, file.toString());
        assertEquals(App.BAD_INPUT, refused.exit());
        assertEquals("", refused.out());
        assertTrue(refused.err().contains(file.toString()) && refused.err().contains(why)
                && refused.err().contains("(" + option + ")"), refused.err());
    }

    private static Run run(String command, String... more) {
        List<String> args = new ArrayList<>(List.of(command.split(" ")));
        args.addAll(Arrays.asList(more));
        return Run.real(args);
    }

    private Path finals() throws IOException {
        return Files.writeString(folder.resolve("finals2000A.all"), FinalsColumns.february2027());
    }

    private Path jarsOwn() throws IOException {
        try (InputStream in = OrekitEphemeris.class.getResourceAsStream("/gloam/ephemeris/unxp2027.405")) {
            return Files.write(folder.resolve("unxp2027.405"), in.readAllBytes());
        }
    }
}
