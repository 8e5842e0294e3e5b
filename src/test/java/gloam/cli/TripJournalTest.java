package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The journal that a trip names. */
class TripJournalTest {

    private static final String FITTED = "instant-mono-640 (fitted to 1 sheet)";
    private static final List<String> FRAME = List.of("--azimuth", "0", "--altitude", "54", "--from",
            "2027-01-06T21:00", "--lasts", "1h");

    @TempDir
    Path folder;

    /** One judged sheet of the trip, which served its first wish. */
    @BeforeEach
    void oneSheet() throws IOException {
        assertEquals(0, Run.of("journal", "add", "--journal", journal("journal.jsonl"), "--trip", trip(""),
                "--f-number", "8", "--azimuth", "0", "--altitude", "54", "--open", "2027-01-06T20:00/1h",
                "--wish", "Wheel", "--tone", "dark").exit());
    }

    private String journal(String name) {
        return folder.resolve(name).toString();
    }

    /** A trip with a line more; the file is another for each line. */
    private String trip(String line) throws IOException {
        String name = "trip" + Integer.toHexString(line.hashCode()) + ".yaml";
        return Files.writeString(folder.resolve(name), """
                title: A week on the moor
                sites:
                  - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-11}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11]}
                film: instant-mono-640
                sheets: 4
                wishes:
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
                  - {name: South, point: {azimuth-deg: 180, altitude-deg: 40}, tone-at-most-stops: -1,
                     exposure-min: {shortest: 60, longest: 90}}
                """ + line + "\n").toString();
    }

    private static Run ok(String command, String trip, List<String> more) {
        List<String> args = new ArrayList<>(List.of(command, "--trip", trip));
        args.addAll(more);
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run;
    }

    @Test
    void planTakesOffWhatItHasSeenAsWithTheOption() throws IOException {
        Run key = ok("plan", trip("journal: journal.jsonl"), List.of("--format", "json"));
        Run option = ok("plan", trip(""), List.of("--format", "json", "--journal", journal("journal.jsonl")));
        assertEquals(option.out(), key.out());
        assertEquals(option.err(), key.err());
        JsonNode window = Timetables.windows(key.out()).get(0);
        assertEquals("South", window.get("wish").asString());
        assertEquals(2, window.get("sheet").asInt(), "the first is spent");
        assertEquals(1, window.get("fittedToSheets").asInt());
    }

    @Test
    void theOptionOutranksTheKey() throws IOException {
        Files.writeString(folder.resolve("other.jsonl"), "");
        Run run = ok("plan", trip("journal: journal.jsonl"), List.of("--journal", journal("other.jsonl")));
        assertFalse(run.err().contains("spent"), run.err());
        assertFalse(run.out().contains("fitted"), run.out());
    }

    @Test
    void exposeProofAndTrailUseTheFilmFittedToIt() throws IOException {
        String trip = trip("journal: journal.jsonl");
        for (String command : List.of("proof", "trail")) {
            assertTrue(ok(command, trip, FRAME).out().contains(FITTED), command);
        }
        assertTrue(ok("expose", trip, List.of("--sky-mag-arcsec2", "21.4")).out().contains(FITTED));
    }

    @Test
    void beforeTheFirstSheetTheFilmIsAsPublished() throws IOException {
        Run run = ok("plan", trip("journal: later.jsonl"), List.of());
        assertTrue(run.err().contains("note: the trip's journal " + journal("later.jsonl")
                + " is not there yet; the film is taken as published\n"), run.err());
        assertEquals(ok("plan", trip(""), List.of()).out(), run.out());
    }

    @Test
    void checkNamesIt() throws IOException {
        String trip = trip("journal: journal.jsonl");
        assertTrue(ok("check", trip, List.of()).out().contains("  journal   " + journal("journal.jsonl")),
                ok("check", trip, List.of()).out());
        assertEquals(journal("journal.jsonl"), new ObjectMapper().readTree(ok("check", trip,
                List.of("--format", "json")).out()).get("journal").asString());
        assertTrue(new ObjectMapper().readTree(ok("check", trip(""), List.of("--format", "json")).out())
                .get("journal").isNull());
    }

    /** A report is never written over the journal, by whatever name. */
    @ParameterizedTest
    @CsvSource({"key", "option"})
    void itIsNeverWrittenOver(String named) throws IOException {
        Path sheets = folder.resolve("journal.jsonl");
        String before = Files.readString(sheets);
        Path link = Files.createLink(folder.resolve("plan.json"), sheets);
        List<String> args = new ArrayList<>(List.of("plan", "--out", link.toString(), "--trip"));
        args.addAll(named.equals("key") ? List.of(trip("journal: journal.jsonl"))
                : List.of(trip(""), "--journal", sheets.toString()));
        Run run = Run.of(args);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("file \"" + link + "\" cannot be written: it is read by this command. "
                + "Choose another place (--out)"), run.err());
        assertEquals(before, Files.readString(sheets));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "journal: notes.txt|:12:10 journal: journal \"FOLDER/notes.txt\": the name of a journal ends in "
            + ".jsonl",
        "journal: ../journal.jsonl|:12:10 journal: the file \"../journal.jsonl\" lies outside the folder of "
            + "the file that names it. Put it beside that file.",
        "journal: [a.jsonl]|:12:10 journal: expected text, found a list",
        "journal: folder.jsonl|:12:10 journal: cannot read FOLDER/folder.jsonl: it is not a plain file. "
            + "Name a file on disk."})
    void errorsSayWhereItIsNamed(String line, String error) throws IOException {
        Files.createDirectories(folder.resolve("folder.jsonl"));
        Run run = Run.of("plan", "--trip", trip(line));
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(error.replace("FOLDER", folder.toString())), run.err());
    }

    /** What the journal leaves no sheets of is said at the place that names it. */
    @Test
    void aTripThatIsUsedUpSaysSoThere() throws IOException {
        String trip = trip("journal: journal.jsonl");
        Files.writeString(Path.of(trip), Files.readString(Path.of(trip)).replace("sheets: 4", "sheets: 1"));
        Run run = Run.of("plan", "--trip", trip);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("1 sheets spent leave none of the 1 carried") && run.err()
                .contains("(" + trip + ":12:10 journal)"), run.err());
    }
}
