package gloam.cli;

import static gloam.cli.MoorTrip.FITTED;
import static gloam.cli.MoorTrip.ok;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The journal that a trip names. */
class TripJournalTest {

    private static final List<String> FRAME = List.of("--azimuth", "0", "--altitude", "54", "--from",
            "2027-01-06T21:00", "--lasts", "1h");

    @TempDir
    Path folder;

    private MoorTrip trip;

    /** One judged sheet of the trip, which served its first wish. */
    @BeforeEach
    void oneSheet() throws IOException {
        trip = new MoorTrip(folder);
        trip.add("2027-01-06T20:00/1h", "--wish", "Wheel", "--tone", "dark");
    }

    @Test
    void planTakesOffWhatItHasSeenAsWithTheOption() throws IOException {
        Run key = ok("plan", trip.file("journal: journal.jsonl"), List.of("--format", "json"));
        Run option = ok("plan", trip.file(), List.of("--format", "json", "--journal", trip.journal()));
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
        Run run = ok("plan", trip.file("journal: journal.jsonl"),
                List.of("--journal", trip.journal("other.jsonl")));
        assertFalse(run.err().contains("spent"), run.err());
        assertFalse(run.out().contains("fitted"), run.out());
    }

    @Test
    void exposeProofAndTrailUseTheFilmFittedToIt() throws IOException {
        String named = trip.file("journal: journal.jsonl");
        for (String command : List.of("proof", "trail")) {
            assertTrue(ok(command, named, FRAME).out().contains(FITTED), command);
        }
        assertTrue(ok("expose", named, List.of("--sky-mag-arcsec2", "21.4")).out().contains(FITTED));
    }

    @Test
    void beforeTheFirstSheetTheFilmIsAsPublished() throws IOException {
        Run run = ok("plan", trip.file("journal: later.jsonl"), List.of());
        assertTrue(run.err().contains("note: the trip's journal " + trip.journal("later.jsonl")
                + " is not there yet; the film is taken as published\n"), run.err());
        assertEquals(ok("plan", trip.file(), List.of()).out(), run.out());
    }

    /** Two packs far apart: each command uses the speed that the fit of the pack named shows. */
    @ParameterizedTest
    @CsvSource({"fast", "slow"})
    void aPackOfTheFilmIsUsedWhereItIsNamed(String pack) throws IOException {
        for (int night = 7; night < 10; night++) {
            trip.add("2027-01-0" + night + "T20:00/1h", "--batch", "fast", "--tone", "light");
            trip.add("2027-01-0" + night + "T22:00/1h", "--batch", "slow", "--tone", "very-dark");
        }
        Run fit = Run.of("journal", "fit", "--journal", trip.journal(), "--batch", pack, "--format", "json");
        double slowerStops = new ObjectMapper().readTree(fit.out()).at("/speedOffsetStops/mean").asDouble();
        assertTrue(slowerStops > 0 == pack.equals("slow"), slowerStops + " of " + pack);
        String named = trip.file("journal: journal.jsonl\nbatch: " + pack);
        String note = "note: instant-mono-640, pack " + pack + " (fitted to 7 sheets, 3 of that pack): ";
        for (String command : List.of("proof", "trail")) {
            assertTrue(ok(command, named, FRAME).err().contains(note), command);
        }
        Run key = ok("expose", named, List.of("--sky-mag-arcsec2", "21.4", "--format", "json"));
        Run option = ok("expose", trip.file(), List.of("--sky-mag-arcsec2", "21.4", "--format", "json",
                "--journal", trip.journal(), "--batch", pack));
        assertEquals(option.out(), key.out());
        assertEquals(option.err(), key.err());
        JsonNode next = new ObjectMapper().readTree(Run.of("journal", "next", "--journal", trip.journal(),
                "--trip", named, "--sky-mag-arcsec2", "21.4", "--format", "json").out());
        assertEquals(pack, next.get("batch").asString());
        assertEquals(new ObjectMapper().readTree(key.out()).at("/exposures/0/correctedS"),
                next.at("/choices/0/exposureS"));
        JsonNode plan = new ObjectMapper().readTree(ok("plan", named, List.of("--spent", "0", "--from-now",
                "2027-01-10T18:00", "--format", "json")).out());
        assertEquals(slowerStops, plan.at("/fittedFilms/0/speedOffsetStops").asDouble(), 1e-3);
    }

    @Test
    void aPackThatTheJournalDoesNotHaveIsSaidToBe() throws IOException {
        Run run = ok("trail", trip.file("journal: journal.jsonl\nbatch: A"), List.of("--azimuth", "0",
                "--altitude", "54", "--from", "2027-01-06T21:00", "--lasts", "1h", "--batch", "B"));
        assertTrue(run.err().contains("instant-mono-640, pack B (fitted to 1 sheet, none of that pack): "),
                run.err());
    }

    @Test
    void sheetsAddedWithATripAreOfItsPack() throws IOException {
        String named = trip.file("batch: A");
        trip.addWith(named, "2027-01-07T20:00/1h");
        trip.addWith(named, "2027-01-07T22:00/1h", "--batch", "B");
        trip.addWith(named, "2027-01-08T22:00/1h", "--film", "instant-colour-125");
        Run.of("journal", "add", "--journal", trip.journal(), "--trip", named, "--corrects", "1", "--kept");
        JsonNode sheets = new ObjectMapper().readTree(Run.of("journal", "list", "--journal", trip.journal(),
                "--format", "json").out()).get("sheets");
        assertEquals(List.of("", "A", "B", ""), StreamSupport.stream(sheets.spliterator(), false)
                .map(sheet -> sheet.get("batch").asString("")).toList());
    }

    @Test
    void aPackIsOneOfAFilmInAJournal() throws IOException {
        Run nowhere = Run.of("trail", "--trip", trip.file(), "--batch", "A", "--azimuth", "0", "--altitude",
                "54", "--from", "2027-01-06T21:00", "--lasts", "1h");
        assertEquals(2, nowhere.exit());
        assertTrue(nowhere.err().startsWith("--batch names a pack in a journal; add --journal FILE"));
        Run two = Run.of("expose", "--journal", trip.journal(), "--batch", "A", "--film", "instant-mono-640",
                "--film", "instant-colour-125", "--sky-mag-arcsec2", "21.4", "--f-number", "8");
        assertEquals(2, two.exit());
        assertTrue(two.err().startsWith("--batch names a pack of one film, and 2 are named"), two.err());
        Run dull = Run.of("check", "--trip", trip.file("batch: " + "x".repeat(401)));
        assertTrue(dull.err().contains(":13:8 batch: length of the batch's name 401 "), dull.err());
    }

    @Test
    void checkNamesIt() throws IOException {
        String named = trip.file("journal: journal.jsonl");
        assertTrue(ok("check", named, List.of()).out().contains("  journal   " + trip.journal()),
                ok("check", named, List.of()).out());
        assertEquals(trip.journal(), new ObjectMapper().readTree(ok("check", named,
                List.of("--format", "json")).out()).get("journal").asString());
        String ofAPack = trip.file("batch: pack 7");
        assertTrue(ok("check", ofAPack, List.of()).out().contains("  batch     pack 7"));
        assertEquals("pack 7", new ObjectMapper().readTree(ok("check", ofAPack, List.of("--format", "json"))
                .out()).get("batch").asString());
        assertTrue(new ObjectMapper().readTree(ok("check", trip.file(), List.of("--format", "json")).out())
                .get("journal").isNull());
    }

    /** The journal that a trip names is the one to add to, whether there is one yet or not. */
    @ParameterizedTest
    @CsvSource({"journal.jsonl, 2", "new.jsonl, 1"})
    void theTripsOwnJournalIsAddedTo(String name, int sheets) throws IOException {
        String named = trip.file("journal: " + name);
        Run added = Run.of("journal", "add", "--journal", trip.journal(name), "--trip", named, "--f-number",
                "8", "--azimuth", "0", "--altitude", "54", "--open", "2027-01-07T20:00/1h");
        assertEquals(0, added.exit(), added.err());
        Run noted = Run.of("journal", "pack", "--journal", trip.journal(name), "--trip", named, "--batch",
                "A", "--sheets", "8");
        assertEquals(0, noted.exit(), noted.err());
        assertEquals(sheets, new ObjectMapper().readTree(Run.of("journal", "list", "--journal",
                trip.journal(name), "--format", "json").out()).get("sheets").size());
    }

    /** A report is never written over the journal, by whatever name. */
    @ParameterizedTest
    @CsvSource({"key", "option"})
    void itIsNeverWrittenOver(String named) throws IOException {
        Path sheets = folder.resolve("journal.jsonl");
        String before = Files.readString(sheets);
        Path link = Files.createLink(folder.resolve("plan.json"), sheets);
        List<String> args = new ArrayList<>(List.of("plan", "--out", link.toString(), "--trip"));
        args.addAll(named.equals("key") ? List.of(trip.file("journal: journal.jsonl"))
                : List.of(trip.file(), "--journal", sheets.toString()));
        Run run = Run.of(args);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("file \"" + link + "\" cannot be written: it is read by this command. "
                + "Choose another place (--out)"), run.err());
        assertEquals(before, Files.readString(sheets));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "journal: notes.txt|:13:10 journal: journal \"FOLDER/notes.txt\": the name of a journal ends in "
            + ".jsonl",
        "journal: ../journal.jsonl|:13:10 journal: the file \"../journal.jsonl\" lies outside the folder of "
            + "the file that names it. Put it beside that file.",
        "journal: [a.jsonl]|:13:10 journal: expected text, found a list",
        "journal: folder.jsonl|:13:10 journal: cannot read FOLDER/folder.jsonl: it is not a plain file. "
            + "Name a file on disk."})
    void errorsSayWhereItIsNamed(String line, String error) throws IOException {
        Files.createDirectories(folder.resolve("folder.jsonl"));
        Run run = Run.of("plan", "--trip", trip.file(line));
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(error.replace("FOLDER", folder.toString())), run.err());
    }

    /** What the journal leaves no sheets of is said at the place that names it. */
    @Test
    void aTripThatIsUsedUpSaysSoThere() throws IOException {
        String named = trip.file("journal: journal.jsonl");
        Files.writeString(Path.of(named), Files.readString(Path.of(named)).replace("sheets: 4", "sheets: 1"));
        Run run = Run.of("plan", "--trip", named);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("1 sheets spent leave none of the 1 carried") && run.err()
                .contains("(" + named + ":13:10 journal)"), run.err());
    }
}
