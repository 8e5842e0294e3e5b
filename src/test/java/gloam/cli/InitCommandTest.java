package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.FNumber;
import gloam.planner.Trip;
import gloam.store.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InitCommandTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {
        "--place 41.05,-2.15,1080 --zone Europe/Madrid",
        "--lat 33.45S --lon 70.55W --height 2400m --zone America/Santiago --focal-length 114mm --frame "
        + "4x5in --f-number f/8,16",
        "--place 27.72,85.32 --zone Asia/Kathmandu --film negative-slow-25 --sheets 2 --focal-length 50mm "
        + "--frame 36x24",
        "--place +78.22+015.65+30/ --zone Arctic/Longyearbyen --focus 3m --spot 0.06mm --filter 1 "
        + "--corner-stops 1.5",
        "--place 0.18S,78.47W,2850 --zone UTC --focal-length 16 --frame 56x56 --f-number 4 --projection "
        + "equisolid",
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
        init("--place", "33.45S,70.55W,2400", "--zone", "America/Santiago", "--name",
                "Near \"the\" \\ pass: # ## 1",
                "--focal-length", "114mm", "--frame", "4x5in", "--f-number", "f/8,f/11", "--focus", "3m",
                "--sheets", "5", "--film", "Negative-Slow-25", "--from", "2027-02-01", "--to", "2027-02-04");
        Trip trip = TripFile.read(Path.of(trip())).trip();
        assertEquals("Near \"the\" \\ pass: # ## 1", trip.sites().get(0).name());
        assertEquals(-33.45, trip.sites().get(0).latitude().degrees(), 1e-6); // decimals written
        assertEquals(-70.55, trip.sites().get(0).longitude().degrees(), 1e-6);
        assertEquals(2400, trip.sites().get(0).heightM());
        assertEquals("America/Santiago", trip.sites().get(0).zone().getId());
        assertEquals(114, trip.camera().lens().focalLengthMm());
        assertEquals(101.6, trip.camera().frame().widthMm());
        assertEquals(List.of(8.0, Math.pow(2, 3.5)), exact(trip)); // the marking 11, ISO 517
        assertEquals(3, trip.camera().lens().focusM());
        assertEquals("negative-slow-25", trip.film().name());
        assertEquals(5, trip.sheets());
        assertEquals(LocalDate.of(2027, 2, 1), trip.firstNight());
        assertEquals(LocalDate.of(2027, 2, 4), trip.lastNight());
        assertFalse(Files.readString(Path.of(trip())).contains("example"), "the camera is the user's own");
    }

    /**
     * New Moon of 2027-02-06 15:56 UTC (Meeus' mean lunation, as almanacs have it), three weeks after the
     * clock's day.
     */
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
        assertTrue(refused.err().contains("already exists; give another name, or --overwrite"),
                refused.err());
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
        assertTrue(run.err().startsWith("no location given; add --place LAT,LON, --zone"), run.err());
        assertFalse(Files.exists(Path.of(trip())));
        assertTrue(init("--place", "41,-2", "--zone", "UTC", "--film", "instant-mono").err()
                .contains("did you mean instant-mono-640?"));
        assertTrue(init("--place", "41,-2", "--zone", "UTC", "--to", "2027-03-01").err()
                .contains("no first night given; use --from DATE"));
    }

    @Test
    void aTerminalIsAskedUntilTheAnswersWillDo() {
        Run run = Run.answering(List.of("here", "41.05, -2.15, 1080", "Madrid", "Europe/Madrid", "120 s",
                "120 mm", "80x80 mm", "f/11, 16"), "init", trip());
        assertEquals(0, run.exit(), run.err());
        assertEquals(3 + 8, run.err().lines().count(), "three answers are refused and asked again: "
                + run.err());
        assertTrue(run.err().contains("\nplace \"here\" is not latitude"), run.err());
        assertTrue(run.out().startsWith("Wrote " + trip()), run.out());
        Trip trip = TripFile.read(Path.of(trip())).trip();
        assertEquals(41.05, trip.sites().get(0).latitude().degrees(), 1e-6); // decimals written
        assertEquals("Europe/Madrid", trip.sites().get(0).zone().getId());
        assertEquals(120, trip.camera().lens().focalLengthMm());
        assertEquals(List.of(Math.pow(2, 3.5), 16.0), exact(trip)); // the marking 11, ISO 517
    }

    /**
     * The file's name and every option may be given or not: what is missing is asked, what is given is not.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "init FILE|41.05,-2.15;Europe/Madrid;''|3",
        "init FILE --sheets 5 --name Meadow|41.05,-2.15;Europe/Madrid;''|3",
        "init --place 41.05,-2.15 FILE|Europe/Madrid;''|2",
        "init FILE --lat 41.05|-2.15;Europe/Madrid;''|3",
        "init FILE --zone Europe/Madrid --frame 80x80|41.05,-2.15;11|2",
        "init FILE --zone Europe/Madrid --focal-length 120|41.05,-2.15;80x80;11|3",
        "init FILE --zone Europe/Madrid --film instant-colour-125 --overwrite|41.05,-2.15;120;80x80;11|4"})
    void onATerminalOnlyWhatIsMissingIsAsked(String line, String answers, int questions) throws IOException {
        Run run = Run.answering(List.of(answers.replace("''", "").split(";", -1)),
                line.replace("FILE", trip()).split(" "));
        assertEquals(0, run.exit(), run.err());
        assertEquals(questions, run.err().lines().count(), run.err());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of("trip.yaml"), files.map(file -> file.getFileName().toString()).toList());
        }
        Trip trip = TripFile.read(Path.of(trip())).trip();
        assertEquals(41.05, trip.sites().get(0).latitude().degrees(), 1e-6); // decimals written
        assertEquals(-2.15, trip.sites().get(0).longitude().degrees(), 1e-6);
    }

    @Test
    void noAnswerIsLost() throws IOException {
        List<String> answers = List.of("41.05,-2.15", "Europe/Madrid", "", "3");
        Run mended = Run.answering(answers, "init", trip(), "--sheets", "0");
        assertEquals(0, mended.exit(), mended.err());
        assertTrue(mended.err().endsWith("sheets 0 is out of range; give 1 … 500 (--sheets)\n--sheets: \n"),
                mended.err());
        assertEquals(3, TripFile.read(Path.of(trip())).trip().sheets());
        Files.delete(Path.of(trip()));
        Run ended = Run.answering(List.of("41.05, -2.15"), "init", trip());
        assertEquals(2, ended.exit());
        assertTrue(ended.err().contains("the input ended before the last question; nothing was written\n"
                + "your answers as options: --place='41.05, -2.15'\n"), ended.err());
        assertFalse(Files.exists(Path.of(trip())));
        Run nowhere = Run.answering(answers, "init", folder.resolve("none/trip.yaml").toString());
        assertTrue(nowhere.err().startsWith("file \"" + folder + "/none/trip.yaml\" cannot be written"),
                "refused before anything is asked: " + nowhere.err());
    }

    private Run init(String... options) {
        List<String> words = new ArrayList<>(List.of("init", trip()));
        words.addAll(List.of(options));
        return Run.of(words);
    }

    private String trip() {
        return folder.resolve("trip.yaml").toString();
    }

    private static List<Double> exact(Trip trip) {
        return trip.camera().lens().fNumbers().stream().map(FNumber::exact).toList();
    }
}
