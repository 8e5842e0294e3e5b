package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.Trip;
import gloam.store.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InitCommandTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {
        "--place 41.05,-2.15,1080 --zone Europe/Madrid",
        "--lat 33.45S --lon 70.55W --height 2400m --zone America/Santiago --focal-length 114mm --frame 4x5in --f-number f/8,16",
        "--place 27.72,85.32 --zone Asia/Kathmandu --film negative-slow-25 --sheets 2 --focal-length 50mm --frame 36x24",
        "--place +78.22+015.65+30/ --zone Arctic/Longyearbyen --focus 3m --spot 0.06mm --filter 1 --corner-stops 1.5",
        "--place 0.18S,78.47W,2850 --zone UTC --focal-length 16 --frame 56x56 --f-number 4 --projection equisolid",
        "--place -45.87,170.5,5 --zone Pacific/Auckland --from 2027-06-28 --to 2027-07-01 --t-stop 11/12.3"})
    void checkAndPlanAcceptWhatItWrites(String options) {
        Run init = init(options.split(" "));
        assertEquals("", init.err());
        assertEquals(0, init.exit());
        Run check = Run.of("check", "--trip", trip());
        assertEquals("", check.err());
        assertEquals(0, check.exit());
        Run plan = Run.of("plan", "--trip", trip());
        assertEquals("", plan.err());
        assertEquals(0, plan.exit(), plan.out());
    }

    @Test
    void theFileSaysWhatWasGiven() throws IOException {
        init("--place", "33.45S,70.55W,2400", "--zone", "America/Santiago", "--name", "Near \"the\" \\ pass: # ## 1",
                "--focal-length", "114mm", "--frame", "4x5in", "--f-number", "f/8,f/11", "--focus", "3m", "--sheets", "5",
                "--film", "Negative-Slow-25", "--from", "2027-02-01", "--to", "2027-02-04");
        Trip trip = TripFile.read(Path.of(trip())).trip();
        assertEquals("Near \"the\" \\ pass: # ## 1", trip.sites().get(0).name());
        assertEquals(-33.45, trip.sites().get(0).latitude().degrees(), 1e-6); // decimals written
        assertEquals(-70.55, trip.sites().get(0).longitude().degrees(), 1e-6);
        assertEquals(2400, trip.sites().get(0).heightM());
        assertEquals("America/Santiago", trip.sites().get(0).zone().getId());
        assertEquals(114, trip.camera().lens().focalLengthMm());
        assertEquals(101.6, trip.camera().frame().widthMm());
        assertEquals(List.of(8.0, Math.pow(2, 3.5)), trip.camera().lens().fNumbers()); // the marking 11, ISO 517
        assertEquals(3, trip.camera().lens().focusM());
        assertEquals("negative-slow-25", trip.film().name());
        assertEquals(5, trip.sheets());
        assertEquals(LocalDate.of(2027, 2, 1), trip.firstNight());
        assertEquals(LocalDate.of(2027, 2, 4), trip.lastNight());
        assertFalse(Files.readString(Path.of(trip())).contains("example"), "the camera is the user's own");
    }

    /** New Moon of 2027-02-06 15:56 UTC (Meeus' mean lunation, as almanacs have it), three weeks after the clock's day. */
    @Test
    void theNightsLieAboutTheNextNewMoon() {
        init("--place", "41.05,-2.15,1080", "--zone", "Europe/Madrid");
        Trip trip = TripFile.read(Path.of(trip())).trip();
        assertEquals(LocalDate.of(2027, 2, 3), trip.firstNight());
        assertEquals(LocalDate.of(2027, 2, 9), trip.lastNight());
    }

    @Test
    void nothingIsWrittenOverUnlessTold() throws IOException {
        Files.writeString(Path.of(trip()), "mine");
        Run refused = init("--place", "41,-2", "--zone", "UTC");
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains("is there already; give another name, or --overwrite"), refused.err());
        assertEquals("mine", Files.readString(Path.of(trip())));
        assertEquals(0, init("--place", "41,-2", "--zone", "UTC", "--overwrite").exit());
        assertTrue(Files.readString(Path.of(trip())).startsWith("# A trip for Gloam."));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(1, left.count(), "nothing half written is left");
        }
    }

    @Test
    void withoutATerminalNothingIsAsked() {
        Run run = init("--sheets", "3");
        assertEquals(2, run.exit());
        assertTrue(run.err().startsWith("where is not said; add --place LAT,LON, --zone"), run.err());
        assertFalse(Files.exists(Path.of(trip())));
        assertTrue(init("--place", "41,-2", "--zone", "UTC", "--film", "instant-mono").err()
                .contains("did you mean instant-mono-640?"));
        assertTrue(init("--place", "41,-2", "--zone", "UTC", "--to", "2027-03-01").err().contains("give --from DATE"));
    }

    @Test
    void aTerminalIsAskedUntilTheAnswersWillDo() {
        Deque<String> answers = new ArrayDeque<>(List.of("here", "41.05, -2.15, 1080", "Madrid", "Europe/Madrid", "120 s",
                "120 mm", "80x80 mm", "f/11, 16"));
        List<String> shown = new ArrayList<>();
        List<String> options = InitCommand.asked(question -> {
            shown.add(question);
            return answers.poll();
        }, List.of("--place LAT,LON", "--zone"), false);
        assertEquals(List.of("--place=41.05, -2.15, 1080", "--zone=Europe/Madrid", "--focal-length=120 mm",
                "--frame=80x80 mm", "--f-number=f/11, 16"), options);
        assertEquals(8, shown.size());
        assertTrue(shown.get(1).startsWith("place \"here\" is not latitude"));
        assertEquals(0, init(options.toArray(String[]::new)).exit());
        assertEquals(List.of(), InitCommand.asked(question -> null, List.of("--place LAT,LON", "--zone"), false));
    }

    private Run init(String... options) {
        List<String> words = new ArrayList<>(List.of("init", trip()));
        words.addAll(List.of(options));
        return Run.of(words);
    }

    private String trip() {
        return folder.resolve("trip.yaml").toString();
    }
}
