package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the page of a timetable hands over goes into the journal. */
class JournalFromPageTest {

    private static final String SHEET = """
            {"sheet": 1, "wish": "Faint stars of the Hunter", "film": "instant-mono-640",
             "openAt": "2027-02-08T21:03:10+01:00", "closeAt": "2027-02-08T22:05:00+01:00",
             "azimuthDeg": 177.2, "altitudeDeg": 47.6, "fNumber": 11, "skyToneStops": -3.5,
             "note": "gusts"}""";
    private static final String PAGE = """
            {"schema": "gloam-page/1", "identity": "5cbb57bc-45f9-334c-88a7-11bd94f2c374",
             "title": "Ten nights", "nights": [{"night": "2027-02-08", "site": "Loma Callada", "windows": [
            %s]}],
             "skipped": [{"sheet": 2, "wish": "The Lion rises with Mars", "why": "clouded out"}]}
            """.formatted(SHEET);

    @TempDir
    private Path folder;

    private Run add(String page, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal",
                folder.resolve("journal.jsonl").toString(), "--trip", "demo-data/trip.yaml", "--from-page",
                Files.writeString(folder.resolve("page.json"), page).toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void sheetsGoInWithTheirRealTimesAndTheOthersAreNamed() throws Exception {
        Run run = add(PAGE);
        assertEquals(0, run.exit(), run.err());
        JsonNode entry = new ObjectMapper().readTree(folder.resolve("journal.jsonl").toFile());
        assertEquals("2027-02-08T20:03:10Z", entry.get("openings").get(0).get("open").asString());
        assertEquals("2027-02-08T21:05:00Z", entry.get("openings").get(0).get("close").asString());
        assertEquals("gusts", entry.get("note").asString());
        assertEquals(-3.5, entry.get("planned-tone-stops").asDouble());
        assertEquals("Faint stars of the Hunter", entry.get("wish").asString());
        assertTrue(run.out().contains("sheet 2, The Lion rises with Mars: clouded out, not in the journal"),
                run.out());
    }

    @Test
    void aSecondTimeAddsNothingAlsoAfterACorrection() throws Exception {
        add(PAGE);
        Run corrected = Run.of("journal", "add", "--journal", folder.resolve("journal.jsonl").toString(),
                "--corrects", "1", "--tone", "dark");
        assertEquals(0, corrected.exit(), corrected.err());
        String before = Files.readString(folder.resolve("journal.jsonl"));
        Run again = add(PAGE);
        assertEquals(0, again.exit(), again.err());
        assertTrue(again.out().contains("Added 0 sheets"), again.out());
        assertEquals(before, Files.readString(folder.resolve("journal.jsonl")));
    }

    /** A camera exposes one sheet at a time: what was open for a wish at that time is that sheet. */
    @Test
    void aSheetHandedOverAgainWithAnotherNoteOrTimeStaysOneSheet() throws Exception {
        add(PAGE);
        String before = Files.readString(folder.resolve("journal.jsonl"));
        Run again = add(PAGE.replace("gusts", "gusts, dew at the end").replace("T22:05:00", "T22:06:30"));
        assertEquals(0, again.exit(), again.err());
        assertEquals(before, Files.readString(folder.resolve("journal.jsonl")));
        String words = again.out().replaceAll("\\s+", " ");
        assertTrue(words.contains("Added 0 sheets"), words);
        assertTrue(words.contains("stays as the journal has it; the page says otherwise: open: 2027-02-08 "
                + "21:03:10 for 1 h 1 min 50 s → 2027-02-08 21:03:10 for 1 h 3 min 20 s; "
                + "note: gusts → gusts, dew at the end"), words);
        assertTrue(words.contains("gloam journal add --corrects 1"), words);
        Run next = add(PAGE.replace("T21:03:10", "T23:03:10").replace("T22:05:00", "T23:50:00"));
        assertTrue(next.out().contains("Added 1 sheet "), next.out());
    }

    @Test
    void whatIsWrongIsNamedWithItsPlaceAndNothingIsAdded() throws Exception {
        refused(PAGE.replace("gloam-page/1", "gloam/2"), "page.json:1:",
                "is not what a timetable’s page hands over");
        refused(PAGE.replace("T22:05:00+01:00", "T20:05:00+01:00"), "page.json:3:",
                "does not close after it opens");
        refused(PAGE.replace("\"fNumber\": 11", "\"fNumber\": -1"), "page.json:3:",
                "f-number -1 is out of range");
        Run run = add(PAGE, "--sheet", "1");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("leave out --plan, --sheet, --open"), run.err());
        run = add(PAGE, "--tone", "dark");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("--from-page adds several sheets"), run.err());
        assertFalse(Files.exists(folder.resolve("journal.jsonl")));
    }

    private void refused(String page, String place, String words) throws IOException {
        Run run = add(page);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(place) && run.err().contains(words), run.err());
    }
}
