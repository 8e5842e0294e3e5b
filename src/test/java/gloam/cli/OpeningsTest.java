package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Several openings on one sheet. */
class OpeningsTest {

    private static final String TWO = TwoOpenings.TEXT;

    @TempDir
    Path folder;

    private String trip(String openings, String tone) throws IOException {
        return TwoOpenings.trip(folder, openings, tone);
    }

    /** The tone of an opening alone, as expose has it. */
    private static double toneAlone(String trip, JsonNode opening) throws IOException {
        Duration lasts = Duration.between(Timetables.at(opening, "openAt"),
                Timetables.at(opening, "closeAt"));
        Run run = Run.of("expose", "--trip", trip, "--format", "json", "--azimuth",
                opening.get("azimuthDeg").asString(), "--altitude", opening.get("altitudeDeg").asString(),
                "--f-number", opening.get("fNumber").asString(), "--from", opening.get("openAt").asString(),
                "--lasts", lasts.toMinutes() + "m");
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out()).get("exposures").get(0)
                .get("skyToneStops").asDouble();
    }

    private static double together(String trip, JsonNode window) throws IOException {
        double progress = 0;
        for (JsonNode opening : window.get("openings")) {
            progress += Math.pow(2, toneAlone(trip, opening));
        }
        return Math.log(progress) / Math.log(2);
    }

    /** The film forgets nothing between openings: what each does to it adds up. */
    @Test
    void theToneIsThatOfAllLightTogether() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        JsonNode window = TwoOpenings.first(trip);
        assertEquals(together(trip, window), window.get("skyToneStops").asDouble(), 0.02);
        assertTrue(toneAlone(trip, window.get("openings").get(0)) < window.get("skyToneStops").asDouble()
                - 0.1);
    }

    @Test
    void itsLimitIsKeptByAllLightTogether() throws IOException {
        for (String limit : List.of("-0.5", "-1.5")) {
            String trip = trip(TWO, "tone-at-most-stops: " + limit);
            assertTrue(together(trip, TwoOpenings.first(trip)) <= Double.parseDouble(limit) + 0.02, limit);
        }
    }

    @Test
    void theyFollowEachOtherAndTheNextSheetAfterAll() throws IOException {
        List<JsonNode> windows = Timetables.windows(Timetables.json(trip(TWO, "tone-stops: 0")));
        JsonNode sheet = windows.get(0);
        JsonNode dusk = sheet.get("openings").get(0);
        JsonNode wheel = sheet.get("openings").get(1);
        assertEquals(2, sheet.get("openings").size());
        assertEquals(sheet.get("openAt"), dusk.get("openAt"));
        assertEquals(sheet.get("closeAt"), wheel.get("closeAt"));
        assertEquals(Duration.ofMinutes(60), Duration.between(Timetables.at(wheel, "openAt"),
                Timetables.at(wheel, "closeAt")));
        assertTrue(Duration.between(Timetables.at(dusk, "closeAt"), Timetables.at(wheel, "openAt"))
                .toMinutes() >= 10);
        assertEquals(54.5, wheel.get("altitudeDeg").asDouble(), 0.1);
        assertEquals(11, wheel.get("fNumber").asDouble());
        assertTrue(dusk.get("fNumber").asDouble() >= 16);
        assertFalse(Timetables.at(windows.get(1), "openAt")
                .isBefore(Timetables.at(sheet, "closeAt").plusSeconds(300)), "the changeover");
        assertEquals(1, windows.get(1).get("openings").size());
    }

    /** It opens again as soon as its gap is over where its sky is good at once. */
    @Test
    void theGapIsTheLeastTimeBetween() throws IOException {
        JsonNode openings = TwoOpenings.first(trip("""
                    openings:
                      - {pole: {}, sky: dark, exposure-min: {shortest: 60, longest: 60}, f-numbers: [22]}
                      - {pole: {roll-deg: 90}, sky: dark, exposure-min: 5, gap-min: 17}
                      - {point: {azimuth-deg: 180, altitude-deg: 40}, exposure-min: 6}
                """, "tone-at-most-stops: 0")).get("openings");
        assertEquals(17, Duration.between(Timetables.at(openings.get(0), "closeAt"),
                Timetables.at(openings.get(1), "openAt")).toMinutes());
        assertEquals(openings.get(1).get("closeAt"), openings.get(2).get("openAt"));
        assertEquals(90, openings.get(1).get("rollDeg").asDouble());
        assertEquals(openings.get(0).get("fNumber"), openings.get(2).get("fNumber"), "that of the first");
    }

    /** Narrowed to the exposure chosen the sheet is worth the same. */
    @Test
    void narrowingToWhatWasChosenChangesNothing() throws IOException {
        JsonNode chosen = TwoOpenings.first(trip(TWO, "tone-stops: 0"));
        JsonNode dusk = chosen.get("openings").get(0);
        long minutes = Duration.between(Timetables.at(dusk, "openAt"), Timetables.at(dusk, "closeAt"))
                .toMinutes();
        JsonNode narrow = TwoOpenings.first(trip(TWO.replace("shortest: 2, longest: 20",
                String.format(Locale.ROOT, "shortest: %d, longest: %d", minutes, minutes)).replace("[16, 22]",
                "[" + dusk.get("fNumber").asInt() + "]"), "tone-stops: 0"));
        assertEquals(chosen.get("score"), narrow.get("score"));
        assertEquals(chosen.get("openings"), narrow.get("openings"));
    }

    @Test
    void textCardsAndCalendarListEach() throws Exception {
        String trip = trip(TWO, "tone-stops: 0");
        JsonNode openings = TwoOpenings.first(trip).get("openings");
        String opens = openings.get(1).get("openAt").asString().substring(11, 16);
        Run text = Run.of("plan", "--trip", trip);
        assertTrue(text.out().contains("2 openings on this sheet, keep all times"), text.out());
        assertTrue(text.out().matches("(?s).*\n +" + opens
                + "–\\d\\d:\\d\\d at f/11, N 0.0°, 54.5° high, roll 0.0°.*"), text.out());
        assertTrue(Run.of("plan", "--trip", trip, "--format", "html").out()
                .contains("<li>" + opens + "–"), "the card");
        VEvent event = (VEvent) Timetables.read(Timetables.ics(trip)).getComponents("VEVENT").get(0);
        assertTrue(Timetables.value(event, "DESCRIPTION").contains(opens + "–"));
        long afterMin = Duration.between(Timetables.at(openings.get(0), "openAt"),
                Timetables.at(openings.get(1), "openAt")).toMinutes();
        assertTrue(event.getAlarms().stream().anyMatch(alarm -> alarm.toString()
                .contains("TRIGGER:PT" + afterMin + "M")), event.toString());
    }

    @Test
    void anUnchangedPlanKeepsItsSequence() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        assertEquals(TwoOpenings.first(trip).get("sequence"),
                Timetables.windows(Timetables.json(trip, "--previous",
                saved.toString())).get(0).get("sequence"));
    }

    @Test
    void aLaterOpeningThatNeverCanBeIsTheReason() throws IOException {
        Run run = Run.of("plan", "--trip", trip(TWO.replace("sky: dark", "sky: moonlit"), "tone-stops: 0"));
        assertTrue(run.out().contains("Last light and the wheel: Tue 2027-01-05: opening 2: "), run.out());
        Run late = Run.of("plan", "--trip",
                trip(TWO.replace("gap-min: 10", "gap-min: 900"), "tone-stops: 0"));
        assertTrue(late.out().contains(": opening 2: no start leaves time for it"),
                late.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sky: dusk}|sky: dusk, gap-min: 5}|wishes[0].openings[0].gap-min: unknown key",
        "sky: dusk}|sky: dusk, f-number: 8}|wishes[0].openings[0].f-number: unknown key. Did you mean",
        "exposure-min: 60}|exposure-min: {shortest: 60}}|wishes[0].openings[1].exposure-min: expected "
        + "minutes", "exposure-min: 60}|exposure-min: 0}|wishes[0].openings[1].exposure-min: exposure 0 min",
        "exposure-min: 60}|f-number: 11}|wishes[0].openings[1].exposure-min: is missing",
        "exposure-min: 60}|exposure-min: 60, f-number: 9}|wishes[0].openings[1].f-number: the lens has no "
        + "f/9", "exposure-min: 60}|exposure-min: 60, gap-min: -1}|wishes[0].openings[1].gap-min: gap -1 min",
        "tone-stops: 0|sky: dark|wishes[0].sky: stands beside openings",
        "tone-stops: 0|f-numbers: [8]|wishes[0].f-numbers: stands beside openings"})
    void errorsSayWhere(String what, String instead, String error) throws IOException {
        String openings = """
                    openings:
                      - {point: {azimuth-deg: 230, altitude-deg: 15}, sky: dusk}
                      - {pole: {}, exposure-min: 60}
                """;
        String tone = "tone-stops: 0";
        Run run = Run.of("check", "--trip",
                trip(openings.replace(what, instead), tone.replace(what, instead)));
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(error), run.err());
    }

    @Test
    void oneOpeningIsNoList() throws IOException {
        Run run = Run.of("check", "--trip", trip("    openings: [{pole: {}}]\n", "tone-stops: 0"));
        assertTrue(run.err().contains("wishes[0].openings: number of openings"), run.err());
    }
}
