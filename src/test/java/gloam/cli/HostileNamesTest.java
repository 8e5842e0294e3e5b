package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.ObjectMapper;

/** Names made to break out of the text they stand in stay names in every form a report can have. */
class HostileNamesTest {

    private static final String NAME =
            "\"><script>alert(1)</script>&amp;' ]]> \r\nBEGIN:VALARM\nACTION:X; a, b\\n \u001b[2J\u009b31m"
            + "\u202Eright\u2067 \u2028 \uD83D=cmd|' /C calc'!A0";
    private static final String TRIP = """
            {"title": %1$s, "sites": [{"name": %1$s, "latitude-deg": 41, "longitude-deg": -2, "height-m": 300, "zone": "UTC"}],
             "nights": {"from": "2027-02-08", "to": "2027-02-08"}, "sheets": 1, "film": "instant-mono-640",
             "camera": {"name": %1$s, "focal-length-mm": 120, "frame-mm": {"width": 80, "height": 80}, "f-numbers": [11]},
             "wishes": [{"name": %1$s, "point": {"azimuth-deg": 0, "altitude-deg": 41}, "exposure-min": {"shortest": 20, "longest": 30}}]}
            """;

    /** The page's own: what follows the clock, and the timetable that it reads. */
    private static final int SCRIPTS = 2;

    @TempDir
    static Path folder;

    @BeforeAll
    static void writeTrip() throws IOException {
        Files.writeString(folder.resolve("trip.json"), TRIP.formatted(new ObjectMapper()
                .writer().with(JsonWriteFeature.ESCAPE_NON_ASCII).writeValueAsString(NAME)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "ics", "svg", "html"})
    void noPlanCarriesThemOn(String format) throws Exception {
        Run run = Run.of("plan", "--trip", folder + "/trip.json", "--format", format);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("alert(1)"), "the name is there");
        assertHarmless(run.out());
        switch (format) {
            case "json" -> assertEquals(NAME.replace("\uD83D", "?"),
                    new ObjectMapper().readTree(run.out().replace("\uD83D", "?")).at("/nights/0/site")
                    .asString());
            case "svg" -> DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(
                    new ByteArrayInputStream(run.out().getBytes(StandardCharsets.UTF_8)));
            case "ics" -> assertEquals(4, run.out().lines().filter("BEGIN:VALARM"::equals).count(),
                    run.out());
            default -> assertTrue(run.out().contains("right"));
        }
        if (format.equals("svg") || format.equals("html")) {
            assertEquals(format.equals("html") ? SCRIPTS : 0, run.out().split("<script", -1).length - 1,
                    run.out());
        }
    }

    @Test
    void noOtherCommandCarriesThemOn() {
        for (List<String> args : List.of(List.of("check", "--trip", folder + "/trip.json"),
                List.of("nights", "--trip", folder + "/trip.json"),
                List.of("expose", "--film", NAME, "--sky-mag-arcsec2", "21"), List.of(NAME),
                List.of("plan", "--" + NAME), List.of("plan", "--lat", NAME), List.of("plan", "--trip", NAME),
                List.of("sky", "--site", NAME, "--trip", folder + "/trip.json", "--night", "2027-02-08"))) {
            Run run = Run.of(args);
            assertHarmless(run.out());
            assertHarmless(run.err());
            assertTrue(run.exit() == 0 || run.err().lines().count() == 2, run.err());
        }
    }

    /**
     * OWASP, CSV injection: a text that a spreadsheet would take for a formula stands behind an apostrophe.
     */
    @ParameterizedTest
    @ValueSource(strings = {"=cmd|' /C calc'!A0", "+1", "-1+1", "@SUM(1)", " =1", "\uFF1D1", "=1\n=2", NAME})
    void noFormulaReachesASpreadsheet(String note) throws IOException {
        String journal = folder + "/notes.jsonl";
        Run added = Run.of("journal", "add", "--journal", journal, "--sky-mag-arcsec2", "21", "--iso", "100",
                "--f-number", "11", "--open", "2027-02-08T21:00Z/2027-02-08T22:00Z", "--note", note);
        assertEquals(0, added.exit(), added.err());
        Run run = Run.of("journal", "export", "--journal", journal, "--format", "csv");
        assertEquals(0, run.exit(), run.err());
        assertHarmless(run.out());
        assertEquals(2, run.out().lines().count(), run.out());
        assertFalse(run.out().lines().skip(1).anyMatch(line -> line.matches(".*,\"?\\s*[=+@\uFF1D].*")),
                run.out());
        assertHarmless(Run.of("journal", "list", "--journal", journal).out());
        Files.delete(Path.of(journal));
    }

    /** A file's own folder is all that it can name; only the command line reaches further. */
    @Test
    void noFileReachesOutOfItsFolder() throws IOException {
        Path film = Path.of("src/main/resources/gloam/films/instant-mono-640.json").toAbsolutePath();
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Files.copy(film, folder.resolve("outer.json"));
        Files.createSymbolicLink(inner.resolve("link.json"), folder.resolve("outer.json"));
        Files.createSymbolicLink(inner.resolve("up"), folder);
        for (String name : List.of("../outer.json", film.toString(), "link.json", "up/outer.json",
                "./../outer.json")) {
            Path trip = Files.writeString(inner.resolve("trip.json"), TRIP.formatted("\"t\"")
                    .replace("instant-mono-640", name));
            Run run = Run.of("check", "--trip", trip.toString());
            assertEquals(2, run.exit(), name);
            assertTrue(run.err().contains("trip.json:2:") && run.err().contains("lies outside the folder"),
                    run.err());
        }
        assertEquals(0, Run.of("expose", "--sky-mag-arcsec2", "21", "--film", inner + "/../outer.json")
                .exit());
    }

    private static void assertHarmless(String text) {
        text.codePoints().filter(point -> Character.isISOControl(point) && point != '\n' && point != '\r'
                || point >= 0x2028 && point <= 0x202E || point >= 0x2066 && point <= 0x2069).findFirst()
                .ifPresent(point -> assertEquals("harmless", "U+" + Integer.toHexString(point) + " in "
                + text));
    }
}
