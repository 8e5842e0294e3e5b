package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A planned night said to the journal sheet by sheet. */
class NightWalkTest {

    /** Four sheets of one night; the last is after midnight. */
    private static final String PLAN = """
            {"nights": [
              {"site": "Loma Callada", "windows": [%s]},
              {"site": "Charca Quieta", "windows": [%s, %s, %s, %s]}]}
            """.formatted(
            window(1, "Early", "2027-01-05T20:00:00+01:00", "2027-01-05T22:00:00+01:00", -2),
            window(2, "Wheel", "2027-01-09T20:00:00+01:00", "2027-01-09T22:00:00+01:00", -1.25),
            window(3, "Pond", "2027-01-09T22:10:00+01:00", "2027-01-09T22:50:00+01:00", -1),
            window(4, "Ridge", "2027-01-09T23:00:00+01:00", "2027-01-10T01:00:00+01:00", 0),
            window(5, "South", "2027-01-10T01:10:00+01:00", "2027-01-10T03:00:00+01:00", 0.5));

    @TempDir
    private Path folder;

    private static String window(int sheet, String wish, String open, String close, double toneStops) {
        return """
                {"sheet": %d, "wish": "%s", "film": "instant-mono-640", "openAt": "%s", "closeAt": "%s",
                 "azimuthDeg": 180, "altitudeDeg": 41.5, "fNumber": 8, "skyToneStops": %s}"""
                .formatted(sheet, wish, open, close, toneStops);
    }

    @BeforeEach
    void aPlan() throws IOException {
        Files.writeString(folder.resolve("plan.json"), PLAN);
    }

    /**
     * Four sheets as planned, each with its tone, the pack and the temperature said once: 41 keys, where
     * asking for each sheet anew took 578.
     */
    @Test
    void aNightOfFourSheetsTakesFewKeys() throws IOException {
        List<String> answers = List.of("", "", "d", "y", "", "", "B", "4", "",
                "", "", "v", "y", ".", "", "", "m", "n", "dew", ".", "", "", "l", "y", ".");
        Run run = walked(answers);
        assertEquals(0, run.exit(), run.err());
        assertEquals(41, answers.stream().mapToInt(answer -> answer.length() + 1).sum());
        JsonNode sheets = sheets();
        assertEquals(List.of("Wheel dark true", "Pond very-dark true", "Ridge middle false",
                "South light true"), said(sheets));
        for (JsonNode sheet : sheets) {
            assertEquals("B", sheet.get("batch").asString());
            assertEquals(4, sheet.get("temperatureC").asDouble());
            assertEquals("Charca Quieta", sheet.get("site").asString());
            assertEquals(8, sheet.get("fNumber").asDouble());
        }
        assertEquals("2027-01-09T22:10:00.0+01:00", sheets.get(1).get("openAt").asString());
        assertEquals(-1.25, sheets.get(0).get("plannedToneStops").asDouble());
        assertEquals("[\"dew\"]", sheets.get(2).get("spoiledBy").toString());
    }

    @Test
    void aWrongAnswerIsAskedAgainAndLosesNothing() throws IOException {
        Run run = walked(List.of("yesterday", "20:05/1h30m", "21:00/1h", "22:00/22:20", "", "f/eight", "11",
                "drak", "dark", "perhaps", "yes", "mist", "cloud", "deep", "4.5", "A", "cold", "-3", "clouds",
                "-", "23:05/0:50", "", "."));
        assertEquals(0, run.exit(), run.err());
        for (String part : List.of("expected an opening", "before it has closed", "found \"drak\"",
                "expected yes or no", "Another opening [none]",
                "sheet 5 is not in the journal, since the input ended")) {
            assertTrue(run.err().contains(part), part + ": " + run.err());
        }
        JsonNode sheets = sheets();
        assertEquals(List.of("Wheel dark true", "Ridge null null"), said(sheets));
        assertEquals(90 * 60 + 20 * 60, sheets.get(0).get("openS").asDouble());
        assertEquals(11, sheets.get(0).get("fNumber").asDouble());
        assertEquals(-3, sheets.get(1).get("temperatureC").asDouble(), "as for the sheet before");
        assertEquals("2027-01-09T23:05:00.0+01:00", sheets.get(1).get("openAt").asString());
        assertEquals("2027-01-10T00:50:00.0+01:00", sheets.get(1).get("closeAt").asString());
        assertTrue(run.out().contains("sheet 3, Pond: not exposed"), run.out());
    }

    /** Within a sheet: those before are in, its own answers are shown, the rest comes later. */
    @Test
    void whenTheInputEndsWholeSheetsAreKept() throws IOException {
        Run run = walked(List.of("", ".", "22:15/30m", "", "5.6", "dark"));
        assertEquals(0, run.exit(), run.err());
        assertEquals(List.of("Wheel null null"), said(sheets()));
        assertTrue(run.err().contains("--open='2027-01-09T22:15/30m' --f-number='5.6' --tone='dark'"),
                run.err());
        Run rest = walked(List.of(".", ".", "."));
        assertEquals(0, rest.exit(), rest.err());
        assertTrue(rest.err().contains("sheet 2, Wheel, is in the journal as entry 1"), rest.err());
        assertEquals(List.of("Wheel null null", "Pond null null", "Ridge null null", "South null null"),
                said(sheets()));
        Run nothing = walked(List.of());
        assertEquals(0, nothing.exit(), nothing.err());
        assertEquals(4, sheets().size());
        Run atOnce = walked(List.of(), "--night", "2027-01-05");
        assertEquals(2, atOnce.exit(), atOnce.out());
        assertEquals(1, atOnce.err().lines().filter(line -> line.contains(
                "sheet 1 is not in the journal, since the input ended")).count(), atOnce.err());
    }

    @Test
    void theNightMayBeNamedAndWhatIsGivenIsNotAsked() throws IOException {
        Run run = walked(List.of("", "", "", "", "", "one"), "--night", "2027-01-05", "--batch", "C",
                "--temperature", "2", "--kept");
        assertEquals(0, run.exit(), run.err());
        assertFalse(run.err().contains("Pack"), run.err());
        assertEquals("C", sheets().get(0).get("batch").asString());
        assertTrue(sheets().get(0).get("kept").asBoolean());
        assertEquals("one", sheets().get(0).get("note").asString());
        Run wrong = walked(List.of(), "--night", "2027-01-07");
        assertEquals(2, wrong.exit());
        assertTrue(wrong.err().contains("it does on 2027-01-05, 2027-01-09"), wrong.err());
    }

    private Run walked(List<String> answers, String... more) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", file(), "--trip",
                "demo-data/trip.yaml", "--plan", folder.resolve("plan.json").toString()));
        Collections.addAll(args, more);
        return Run.answering(answers, args.toArray(String[]::new));
    }

    private static List<String> said(JsonNode sheets) {
        List<String> said = new ArrayList<>();
        sheets.forEach(sheet -> said.add(sheet.get("wish").asString() + " "
                + sheet.get("tone").asString("null") + " "
                + (sheet.get("kept").isNull() ? "null" : sheet.get("kept").asBoolean())));
        return said;
    }

    private JsonNode sheets() throws IOException {
        return Run.json("journal list --journal " + file()).get("sheets");
    }

    private String file() {
        return folder.resolve("journal.jsonl").toString();
    }
}
