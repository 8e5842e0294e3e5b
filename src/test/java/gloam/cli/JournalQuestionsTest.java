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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** A sheet told to a terminal, question by question. */
class JournalQuestionsTest {

    /** Film to temperature, then an opening: a sheet under a measured sky. */
    private static final List<String> EXPOSURE = List.of("instant-mono-640", "pack 1", "8", "", "", "21.4",
            "", "2027-01-10T20:00Z/2h", "");

    @TempDir
    private Path folder;

    @Test
    void wrongAnswersAreAskedAgain() throws IOException {
        Run run = asked(List.of("none.yaml", "", "", "instant-mono-64", "instant-mono-640", "pack 1",
                "f/eight", "8", "400", "",
                "", "21.4", "", "2027-01-10T20:00Z", "2027-01-10T20:00Z/2h", "2027-01-10T21:00Z/2h", "",
                "dark", "", "cloud, dew", "two % words", "perhaps", "yes"));
        assertEquals(0, run.exit(), run.err());
        for (String refusal : List.of("no file none.yaml", "Did you mean instant-mono-640?", "expected",
                "azimuth 400 deg",
                "expected an opening", "before it has closed", "expected yes or no, found \"perhaps\"")) {
            assertTrue(run.err().contains(refusal), refusal + ": " + run.err());
        }
        JsonNode sheet = sheet();
        assertEquals("instant-mono-640", sheet.get("film").asString());
        assertEquals("pack 1", sheet.get("batch").asString());
        assertEquals(8, sheet.get("fNumber").asDouble());
        assertEquals(7200, sheet.get("openS").asDouble());
        assertEquals("dark", sheet.get("tone").asString());
        assertEquals("[\"cloud\",\"dew\"]", sheet.get("spoiledBy").toString());
        assertEquals("two % words", sheet.get("note").asString());
        assertTrue(sheet.get("kept").asBoolean());
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "Yes, true", "Y, true", "YES, true", "no, false", "N, false", "No, false"})
    void keptIsYesOrNoInAnyCase(String answer, boolean kept) throws IOException {
        assertEquals(0, asked(told(List.of("", "", "", "", answer))).exit());
        assertEquals(kept, sheet().get("kept").asBoolean());
        assertTrue(sheet().hasNonNull("kept"));
    }

    @Test
    void whatWasGivenIsNotAsked() throws IOException {
        Run run = asked(told(List.of("dark", "4.5", "", "")), "--kept");
        assertEquals(0, run.exit(), run.err());
        assertFalse(run.err().contains("Kept"), run.err());
        assertEquals("dark", sheet().get("tone").asString());
        assertTrue(sheet().get("kept").asBoolean());
        Run withTrip = asked(List.of("", "nowhere", "Loma Callada", "", "", "8", "180", "40", "", "",
                "2027-02-08T21:00/1h",
                "", "", "", "", ""), "--trip", "demo-data/trip.yaml", "--tone-stops", "-1");
        assertEquals(0, withTrip.exit(), withTrip.err());
        assertFalse(withTrip.err().contains("Trip file"), withTrip.err());
        assertTrue(withTrip.err().contains("site \"nowhere\" is not in the trip"), withTrip.err());
        assertTrue(withTrip.out().contains("Loma Callada"), withTrip.out());
    }

    /** No f-number, and no aim for a sky to be computed: both can only be seen at the end. */
    @Test
    void whatDoesNotGoTogetherIsAskedAgain() throws IOException {
        Run run = asked(List.of("", "", "instant-mono-640", "", "", "", "", "", "", "2027-01-10T20:00Z/2h",
                "", "middle", "", "", "kept in mind", "", // first round
                "", "41,-2,1000", "Europe/Madrid", // no place
                "8", // no f-number
                "180", "45", "")); // no aim
        assertEquals(0, run.exit(), run.err());
        for (String refusal : List.of("no location given", "no f-number given", "without an aim")) {
            assertTrue(run.err().contains(refusal), refusal + ": " + run.err());
        }
        assertEquals("kept in mind", sheet().get("note").asString());
        assertEquals(180, sheet().get("azimuthDeg").asDouble());
        assertEquals("computed", sheet().get("light").asString());
    }

    @Test
    void whatWasGivenWronglyIsAskedToo() throws IOException {
        Run run = asked(told(List.of("", "", "", "", "", "2")), "--focal-length", "150", "--focus",
                "0.15015");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.err().contains("(--focus)\n--focus: \n"), run.err());
        assertTrue(Files.readString(Path.of(file())).contains("\"focus-m\":2,"));
    }

    @Test
    void whenTheInputEndsTheAnswersAreShown() {
        Run run = asked(told(List.of("dark", "", "dew", "it's late", "NO")).subList(0, 15), "--journal",
                folder.resolve("none/journal.jsonl").toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("your answers as options: --film='instant-mono-640' --batch='pack 1' "
                + "--f-number='8' "
                + "--sky-mag-arcsec2='21.4' --open='2027-01-10T20:00Z/2h' --tone='dark' --spoiled-by='dew' "
                + "--note='it'\\''s late'"), run.err());
        assertFalse(Files.exists(Path.of(file())));
    }

    @Test
    void datesBeyondTheDataLeadBackToTheOpening() throws IOException {
        Run run = asked(List.of("", "instant-mono-640", "", "8", "180", "45", "", "", "2091-01-10T20:00Z/2h",
                "", "", "", "", "",
                "", "2027-01-10T20:00Z/2h", ""), "--place", "41,-2,1000", "--zone", "UTC");
        assertEquals(0, run.exit(), run.err());
        assertEquals("2027-01-10T20:00:00.0Z", sheet().get("openAt").asString());
    }

    /** Neither trip nor plan, the exposure, and how it came out. */
    private static List<String> told(List<String> outcome) {
        return Stream.of(List.of("", ""), EXPOSURE, outcome).flatMap(List::stream).toList();
    }

    private Run asked(List<String> answers, String... given) {
        List<String> args = new ArrayList<>(List.of("journal", "add"));
        Collections.addAll(args, given);
        if (!args.contains("--journal")) {
            args.addAll(List.of("--journal", file()));
        }
        return Run.answering(answers, args.toArray(String[]::new));
    }

    private JsonNode sheet() throws IOException {
        return Run.json("journal list --journal " + file())
                .at("/sheets/0");
    }

    private String file() {
        return folder.resolve("journal.jsonl").toString();
    }
}
