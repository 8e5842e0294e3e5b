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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Later words on a sheet: what is given takes the place of what was said, the rest stays. */
class JournalCorrectionTest extends JournalOfOneSheet {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "--film digital-640|/film|digital-640|film: instant-mono-640 → digital-640",
        "--batch B|/batch|B|batch: A → B",
        "--temperature 5|/temperatureC|5|temperature: 9 °C → 5 °C",
        "--f-number 8|/fNumber|8|f-number: f/11 → f/8",
        "--azimuth 90|/azimuthDeg|90|azimuth: 180° → 90°",
        "--altitude 30|/altitudeDeg|30|altitude: 45° → 30°",
        "--open 2027-01-10T21:00Z/3h|/openS|10800|open: 2027-01-10 20:00:00 for 2 h → 2027-01-10 21:00:00 "
        + "for 3 h",
        "--place 41,-2,1000 --zone Europe/Madrid|/site|41.0000° N 2.0000° W|site: nothing → 41.0000° N "
        + "2.0000° W",
        "--trip demo-data/trip.yaml --site \"Loma_Callada\"|/site|Loma Callada|site: nothing → Loma Callada",
        "--tone dark|/tone|dark|tone: nothing → dark",
        "--tone-stops -1|/toneStops|-1|tone: nothing → −1.0 stops",
        "--faintest 4.5|/faintestMag|4.5|faintest star: nothing → 4.5 mag",
        "--no-kept|/kept|false|kept: nothing → no",
        "--note hm|/note|hm|note: nothing → hm"})
    void whatIsGivenIsTakenAndTheRestStays(String options, String field, String value, String told)
    throws IOException {
        JsonNode before = sheet();
        Run run = correct(options.replace("\"", "").split(" "));
        assertTrue(ok(run).contains("\n  " + told + "\n"), run.out());
        JsonNode now = sheet();
        assertEquals(value, now.at(field).asString());
        List<String> mayChange = List.of(field.substring(1), "openAt", "closeAt", "openS", "filmLx",
                "generatedAt");
        before.propertyNames().forEach(name -> assertTrue(mayChange.contains(name)
                || before.get(name).equals(now.get(name)), name + " changed: " + now));
        assertTrue(correct(options.replace("\"", "").split(" ")).out().startsWith("Nothing added: "),
                "said again");
        assertEquals(2, lines().size());
    }

    /**
     * E = q L/N²: two stops of aperture are a factor of 4 by the exact f-numbers 8 and 16, one stop of a
     * filter 2.
     */
    @Test
    void theLightOnTheFilmFollowsTheLens() throws IOException {
        ok(correct("--f-number", "16"));
        double lx = sheet().get("filmLx").asDouble();
        ok(correct("--f-number", "8"));
        assertEquals(4, sheet().get("filmLx").asDouble() / lx, 0.02);
                // lights are kept in four digits, shown in fewer
        ok(correct("--f-number", "16", "--filter", "1"));
        assertEquals(0.5, sheet().get("filmLx").asDouble() / lx, 0.01);
    }

    @Test
    void aCorrectedSheetIsAsIfItHadBeenSaidSoAtOnce() throws IOException {
        ok(correct("--f-number", "8", "--focal-length", "200", "--film", "digital-640", "--batch", "B",
                "--filter", "2",
                "--altitude", "20", "--sky-mag-arcsec2", "20.5", "--transmittance", "0.8", "--spot", "50",
                "--projection", "equisolid", "--focus", "5", "--open", "2027-01-11T20:00Z/1h", "--open",
                "2027-01-11T22:00Z/1h"));
        String[] atOnce = {"--film", "digital-640", "--sky-mag-arcsec2", "20.5", "--f-number", "8",
                "--focal-length", "200",
                "--azimuth", "180", "--altitude", "20", "--batch", "B", "--temperature", "9", "--filter", "2",
                "--transmittance", "0.8", "--spot", "50", "--projection", "equisolid", "--focus", "5",
                "--open", "2027-01-11T20:00Z/1h", "--open", "2027-01-11T22:00Z/1h"};
        assertTrue(ok(add(atOnce)).startsWith("Nothing added: entry 1 of "));
        assertEquals(1, sheets().size(), "both say the same");
        assertSaidAtOnce(sheet(), atOnce);
    }

    @Test
    void computedLightIsComputedAnewOrTheCorrectionIsRefused() throws IOException {
        ok(add(COMPUTED));
        for (String[] change : new String[][] {{"--open", "2027-01-10T18:00Z/1h"}, {"--altitude", "20"}}) {
            assertRefused("the light has to be computed anew", correctSecond(change));
        }
        assertRefused("the light was computed for that site", correctSecond("--clear", "site"));
        ok(correctSecond("--open", "2027-01-10T18:00Z/1h", "--altitude", "20", "--place", "41,-2,1000",
                "--zone", "UTC"));
        String[] atOnce = COMPUTED.clone();
        atOnce[11] = "20";
        atOnce[13] = "2027-01-10T18:00Z/1h";
        assertSaidAtOnce(sheets().get(1), atOnce);
    }

    /** A sheet is, light and all, what another journal has where it was said so at once. */
    private void assertSaidAtOnce(JsonNode corrected, String[] atOnce) throws IOException {
        Path other = folder.resolve("other.jsonl");
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", other.toString()));
        args.addAll(List.of(atOnce));
        ok(Run.of(args));
        JsonNode said = new ObjectMapper().readTree(ok(Run.of("journal", "list", "--journal",
                other.toString(), "--format", "json"))).at("/sheets/0");
        for (String field : said.propertyNames()) {
            if (!List.of("id", "identity").contains(field)) {
                assertEquals(said.get(field), corrected.get(field), field);
            }
        }
    }

    @Test
    void whatTheJournalDoesNotKeepIsRefused() throws IOException {
        for (String option : List.of("--frame 80x80", "--corner-stops 1", "--reciprocity none",
                "--film digital-640 --iso 200",
                "--site X", "--tone-spread 0.3", "--f-number 8,11", "--focus 0.12005",
                "--clear tone --tone dark", "--clear nothing", "--trip demo-data/trip.yaml --site nowhere")) {
            Run run = correct(option.split(" "));
            assertEquals(2, run.exit(), option + run.out());
            assertEquals(2, run.err().lines().count(), "one line and where help is: " + run.err());
        }
        assertEquals(1, lines().size());
    }

    @Test
    void thePlansSheetTakesThePlaceOfAWrongOne() throws IOException {
        Path plan = folder.resolve("plan.json");
        ok(Run.of("plan", "--trip", "demo-data/trip.yaml", "--out", plan.toString()));
        JsonNode window = new ObjectMapper().readTree(plan.toFile()).at("/nights/3/windows/2");
        ok(add(COMPUTED));
        ok(correctSecond("--trip", "demo-data/trip.yaml", "--plan", plan.toString(), "--sheet",
                window.get("sheet").asString()));
        JsonNode sheet = sheets().get(1);
        for (String field : List.of("film", "openAt", "closeAt", "fNumber", "azimuthDeg", "altitudeDeg")) {
            assertEquals(window.get(field), sheet.get(field), field);
        }
    }

    @Test
    void whatChangedIsInTheJsonToo() throws IOException {
        JsonNode changes = new ObjectMapper()
                .readTree(ok(correct("--f-number", "8", "--kept", "--clear", "batch",
                "--format", "json"))).get("changes");
        assertEquals("[{\"what\":\"batch\",\"before\":\"A\",\"now\":null},{\"what\":\"f-number\",\"before\":\"f/11\",\"now\":\"f/8\"},",
                changes.toString().substring(0, changes.toString().indexOf("{\"what\":\"light on")));
        assertTrue(changes.toString().endsWith("{\"what\":\"kept\",\"before\":null,\"now\":\"yes\"}]"),
                changes.toString());
    }

    /**
     * Kept to the millimetre, a focus of 150.15 mm would be one at the focal length, and the line could not
     * be read.
     */
    @Test
    void whatCouldNotBeReadAgainIsNeverWritten() throws IOException {
        List<String> before = lines();
        assertRefused("(--focus)",
                add(with("--focal-length", "150", "--focus", "0.15015", "--place", "41,-2,1000", "--zone",
                "UTC", "--azimuth", "0", "--altitude", "41")));
                // at the pole, where no star's image is too fast
        assertRefused("(--batch)", add(with("--batch", "x".repeat(600))));
        String[] openings = new String[202];
        for (int i = 0; i < openings.length; i += 2) {
            openings[i] = "--open";
            openings[i + 1] = String.format("2027-01-%02dT%02d:%02dZ/1m", 11 + i / 60, 20, i % 60);
        }
        assertRefused("(--open)", add(with(openings)));
        assertEquals(before, lines());
        Path none = folder.resolve("new.jsonl");
        assertEquals(2, Run.of("journal", "add", "--journal", none.toString(), "--film", "x".repeat(600)
                + ".yaml",
                "--sky-mag-arcsec2", "21", "--f-number", "8", "--open", "2027-01-10T20:00Z/2h").exit());
        assertFalse(Files.exists(none));
    }

    @Test
    void keptTakesNoOtherWord() throws IOException {
        for (String word : List.of("--kept=maybe", "--kept=Y", "--kept=false")) {
            assertEquals(2, correct(word).exit(), word);
        }
        assertEquals(1, lines().size());
    }

    private static String[] with(String... more) {
        List<String> all = new ArrayList<>(List.of("--film", "instant-mono-640", "--sky-mag-arcsec2", "21.4",
                "--f-number", "8", "--open", "2027-01-10T20:00Z/2h"));
        all.addAll(Arrays.asList(more));
        return all.toArray(String[]::new);
    }
}
