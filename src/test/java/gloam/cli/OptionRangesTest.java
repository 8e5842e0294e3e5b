package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the options of a sheet allow, the journal takes; what they do not is refused by their names. */
class OptionRangesTest {

    private static final String SHEET = "--place 41,-2,1000 --zone UTC --film instant-mono-640 "
            + "--open 2027-02-08T21:00/1h --azimuth 0 --tone dark ";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"--altitude 0 --extinction 1 --f-number 8",
            "--altitude 0 --extinction 2 --f-number 8",
        "--altitude -90 --extinction 2 --f-number 512 --filter 20 --focal-length 2000 --focus 2.2 "
        + "--transmittance 0.2 --dark-sky 22.5", "--altitude 0 --f-number 8 --focal-length 2000 --focus 2.2",
        "--altitude 41 --f-number 512 --filter 20 --focal-length 5 --focus 0.1 --sky-mag-arcsec2 23",
        "--altitude 41 --f-number 0.7 --transmittance 1 --sky-mag-arcsec2 0"})
    void edgesOfWhatIsAllowedAreKept(String edge) {
        Run added = add(edge);
        assertEquals(0, added.exit(), added.err());
        Run listed = Run.of("journal", "list", "--journal", journal().toString());
        assertEquals(0, listed.exit(), listed.err());
        assertEquals("", listed.err());
        assertTrue(listed.out().contains("instant-mono-640"));
    }

    /** The nearest focus draws things ten times life size: 1.1 focal lengths. */
    @ParameterizedTest
    @CsvSource({"0.15, 150", "0.1512, 150", "0.1649, 150", "0.15015, 150"})
    void aFocusThatIsTooNearIsRefusedByItsName(String focusM, String focalLengthMm) {
        Run refused = add("--altitude 41 --f-number 8 --focal-length " + focalLengthMm + " --focus "
                + focusM);
        assertEquals(2, refused.exit());
        assertEquals("focus distance " + focusM + " m is out of range; give 0.165 m and more (--focus)",
                refused.err().split("\n")[0]);
        assertFalse(Files.exists(journal()));
    }

    private Run add(String options) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", journal().toString()));
        args.addAll(List.of((SHEET + options).split(" +")));
        return Run.of(args);
    }

    private Path journal() {
        return folder.resolve("journal.jsonl");
    }
}
