package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class JournalCommandTest {

    private static final String DEMO = "demo-data/journal.jsonl";
    private static final List<String> SHEET = List.of("--film", "instant-mono-640", "--sky-mag-arcsec2",
            "21.4", "--f-number", "8", "--open", "2027-01-10T20:00Z/2h");

    @TempDir
    private Path folder;

    @Test
    void aSheetIsAddedJudgedLaterAndWithdrawn() throws IOException {
        assertTrue(ok(add(SHEET, "--batch", "P7", "--note", "=cmd|x")).startsWith("Added as entry 1 of "));
        assertTrue(ok(add(List.of(), "--corrects", "1", "--tone", "dark", "--kept", "--faintest", "4.5"))
                .contains(
                "Corrected entry 1 of " + file() + "."));
        JsonNode sheet = json("list").at("/sheets/0");
        assertEquals("1", sheet.get("id").asString());
        assertEquals("dark", sheet.get("tone").asString());
        assertEquals("P7", sheet.get("batch").asString());
        assertTrue(sheet.get("kept").asBoolean());
        assertEquals(7200, sheet.get("openS").asDouble());
        assertTrue(ok(Run.of("journal", "export", "--journal", file())).contains(",\"'=cmd|x\""));
        ok(add(List.of(), "--corrects", "1", "--withdraw"));
        assertEquals(0, json("list").get("sheets").size());
        assertEquals(3, Files.readAllLines(Path.of(file())).size());
    }

    @Test
    void addingTwiceAddsOnce() throws IOException {
        ok(add(SHEET));
        assertTrue(ok(add(SHEET)).startsWith("Nothing added: entry 1 of "));
        assertEquals(1, Files.readAllLines(Path.of(file())).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"altitude-deg\":41", "latitude-deg\":41.05", "azimuth-deg\":0",
            "focal-length-mm\":120",
        "f-number\":5.6", "star-loss-mag\":0.487", "temperature-c\":9"})
    void aLineWithANumberBeyondAllBoundsIsToldAndPassedOver(String figure) throws IOException {
        String line = Files.readAllLines(Path.of(DEMO)).get(0);
        assertTrue(line.contains(figure), figure);
        Files.writeString(Path.of(file()), line.replace(figure, figure.replaceFirst(":.*", ":1e999")) + "\n");
        Run run = Run.of("journal", "stats", "--journal", file());
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.err().contains(file() + ":1:"), run.err());
    }

    @Test
    void aSheetOfASavedPlanBringsItsFigures() throws IOException {
        Path plan = folder.resolve("plan.json");
        ok(Run.of("plan", "--trip", "demo-data/trip.yaml", "--out", plan.toString()));
        JsonNode window = new ObjectMapper().readTree(plan.toFile()).at("/nights/3/windows/2");
        ok(add(List.of("--trip", "demo-data/trip.yaml", "--plan", plan.toString(), "--sheet",
                window.get("sheet").asString()), "--tone", "very-dark"));
        JsonNode sheet = json("list").at("/sheets/0");
        for (String field : List.of("film", "openAt", "closeAt", "fNumber", "azimuthDeg", "altitudeDeg")) {
            assertEquals(window.get(field), sheet.get(field), field);
        }
        assertEquals("computed", sheet.get("light").asString());
    }

    @Test
    void severalOpeningsAreOneSheet() throws IOException {
        ok(add(SHEET, "--open", "2027-01-10T22:10Z/2027-01-10T22:40Z"));
        JsonNode sheet = json("list").at("/sheets/0");
        assertEquals(2, sheet.get("openings").asInt());
        assertEquals(9000, sheet.get("openS").asDouble());
    }

    @Test
    void whatIsMissingOrWrongIsToldInALine() {
        assertRefused("no exposure given", add(List.of()));
        assertRefused("expected an opening", add(SHEET, "--open", "2027-01-10T23:00Z"));
        assertRefused("before it has closed", add(SHEET, "--open", "2027-01-10T21:00Z/2h"));
        assertRefused("did you mean dark?", add(SHEET, "--tone", "drak"));
        assertRefused("did you mean cloud?", add(SHEET, "--spoiled-by", "clouds"));
        assertRefused("not both", add(SHEET, "--tone", "dark", "--tone-stops", "-1"));
        assertRefused("magnitude 40 mag is out of range; give -14 … 20 mag (--faintest)",
                add(SHEET, "--faintest", "40"));
        assertRefused("temperature 99 °C is out of range; give -60 … 60 °C (--temperature)",
                add(SHEET, "--temperature", "99"));
        assertRefused("--plan FILE and --sheet N go together", add(List.of("--plan", "x.json")));
        assertFalse(Files.exists(Path.of(file())));
        assertRefused("the name of a journal ends in .jsonl (--journal)",
                Run.of("journal", "list", "--journal", "demo-data/trip.yaml"));
    }

    @Test
    void theFitKeepsItsContract() throws IOException {
        JsonNode fit = new ObjectMapper().readTree(ok(Run.of("journal", "fit", "--journal", DEMO, "--film",
                "instant-mono-640", "--format", "json")));
        assertEquals("instant-mono-640", fit.get("film").asString());
        for (String number : List.of("speedOffsetStops", "exponent")) {
            assertTrue(fit.get(number).get("mean").isNumber() && fit.get(number).get("sd").asDouble() > 0,
                    number);
        }
        assertEquals(fit.get("used").asInt(), fit.get("sheets").size());
        fit.get("leftOut").forEach(sheet -> assertTrue(sheet.has("id") && sheet.has("reason")));
        assertEquals(3, fit.get("situations").size());
        // the demo journal was made up for a film 0.3 stops slow with an exponent of 1.27
        assertEquals(0.3, fit.get("speedOffsetStops").get("mean").asDouble(),
                2 * fit.get("speedOffsetStops").get("sd").asDouble());
        assertEquals(1.27, fit.get("exponent").get("mean").asDouble(), 2 * fit.get("exponent").get("sd")
                .asDouble());
        // and its entry 9 got a wrong tone
        assertEquals("9", fit.at("/contradicted/0/id").asString());
    }

    @Test
    void planAndExposeReckonWithTheFittedFilmAndSaySo() {
        List<String> expose = List.of("expose", "--sky-mag-arcsec2", "21.4", "--film", "instant-mono-640",
                "--f-number", "8");
        Run published = Run.of(expose);
        Run fitted = Run.of(Stream.concat(expose.stream(), Stream.of("--journal", DEMO)).toList());
        assertTrue(fitted.err().matches("(?s)note: instant-mono-640 \\(fitted to 9 sheets\\): 0\\.\\d\\d ± "
                + "0\\.\\d\\d stops slower "
                + "than rated, exponent 1\\.\\d\\d ± 0\\.\\d\\d\n.*"), fitted.err());
        assertTrue(fitted.out().contains("instant-mono-640 (fitted to 9 sheets)"));
        assertFalse(published.out().contains("fitted"));
        Run plan = Run.of("plan", "--trip", "demo-data/trip.yaml", "--journal", DEMO);
        assertTrue(plan.out().contains("instant-mono-640 (fitted to 9 sheets)"), plan.out());
        assertTrue(plan.err().contains("no judged sheet of instant-colour-125, which is taken as published"),
                plan.err());
    }

    /** A film keeps its name when it is fitted: the fit stands beside it. */
    @Test
    void aFittedFilmIsAFilmAndItsFit() {
        List<String> plan = List.of("plan", "--trip", "demo-data/trip.yaml", "--format", "json");
        assertEquals(Set.of(9), sheetsBehindTheMonoFilm(Stream.concat(plan.stream(),
                Stream.of("--journal", DEMO)).toList()));
        assertEquals(Set.of(0), sheetsBehindTheMonoFilm(plan));
    }

    private static Set<Integer> sheetsBehindTheMonoFilm(List<String> plan) {
        return new ObjectMapper().readTree(ok(Run.of(plan))).get("nights").valueStream()
                .flatMap(night -> night.get("windows").valueStream())
                .filter(window -> window.get("film").asString().equals("instant-mono-640"))
                .map(window -> window.get("fittedToSheets").intValue()).collect(Collectors.toSet());
    }

    @Test
    void proofAndTrailReckonWithTheFittedFilmToo() {
        List<String> frame = List.of("--trip", "demo-data/trip.yaml", "--azimuth", "0", "--altitude", "41",
                "--from", "2027-02-08T21:00", "--lasts", "2h", "--journal", DEMO);
        for (String command : List.of("trail", "proof")) {
            Run run = Run.of(Stream.concat(Stream.of(command), frame.stream()).toList());
            assertEquals(0, run.exit(), run.err());
            assertTrue(run.err().contains("instant-mono-640 (fitted to 9 sheets)"), run.err());
            assertTrue(run.out().contains("instant-mono-640 (fitted to 9 sheets)"), run.out());
        }
    }

    @Test
    void damagedLinesAreToldAndTheRestIsListed() throws IOException {
        ok(add(SHEET));
        Files.writeString(Path.of(file()), Files.readString(Path.of(file())) + "scribble\n");
        Run run = Run.of("journal", "list", "--journal", file());
        assertEquals(0, run.exit());
        assertTrue(run.err().startsWith("note: " + file() + ":2:"), run.err());
        assertTrue(run.out().contains("instant-mono-640"));
    }

    @Test
    void drawingsTellInWordsWhatTheyShow() {
        String fit = ok(Run.of("journal", "fit", "--journal", DEMO, "--film", "instant-mono-640", "--format",
                "svg"));
        assertTrue(fit.contains("<title>Film instant-mono-640, fitted to 9 sheets</title>"));
        assertTrue(fit.contains("<desc>Corrected over metered time."));
        assertTrue(fit.contains(">9?</text>"));
        String guide = ok(Run.of("journal", "guide", "--format", "svg"));
        assertEquals(6, guide.split("stops from the mid-tone", -1).length - 1);
    }

    private String file() {
        return folder.resolve("journal.jsonl").toString();
    }

    private Run add(List<String> sheet, String... more) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", file()));
        args.addAll(sheet);
        args.addAll(Arrays.asList(more));
        return Run.of(args);
    }

    private JsonNode json(String command) {
        return Run.json("journal " + command + " --journal " + file());
    }

    private static String ok(Run run) {
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    private static void assertRefused(String part, Run run) {
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().lines().findFirst().orElse("").contains(part), run.err());
    }
}
