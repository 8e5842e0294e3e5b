package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Several openings on one sheet. */
class OpeningsTest {

    private static final String TWO = """
                    openings:
                      - point: {azimuth-deg: 230, altitude-deg: 15}
                        sky: dusk
                        exposure-min: {shortest: 2, longest: 20}
                        f-numbers: [16, 22]
                      - {pole: {}, sky: dark, exposure-min: 60, f-number: 11, gap-min: 10}
                """;

    @TempDir
    Path folder;

    private String trip(String openings, String tone) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Two on one
                sites:
                  - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-06}
                camera: {name: box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11, 16, 22]}
                film: instant-mono-640
                sheets: 2
                wishes:
                  - name: Last light and the wheel
                """ + openings + "    " + tone + "\n" + """
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
                """).toString();
    }

    private JsonNode first(String trip) throws IOException {
        return Timetables.windows(Timetables.json(trip)).stream()
                .filter(window -> window.get("wish").asString().startsWith("Last")).findFirst().orElseThrow();
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
        JsonNode window = first(trip);
        assertEquals(together(trip, window), window.get("skyToneStops").asDouble(), 0.02);
        assertTrue(toneAlone(trip, window.get("openings").get(0)) < window.get("skyToneStops").asDouble()
                - 0.1);
    }

    @Test
    void itsLimitIsKeptByAllLightTogether() throws IOException {
        for (String limit : List.of("-0.5", "-1.5")) {
            String trip = trip(TWO, "tone-at-most-stops: " + limit);
            assertTrue(together(trip, first(trip)) <= Double.parseDouble(limit) + 0.02, limit);
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
        JsonNode openings = first(trip("""
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
        JsonNode chosen = first(trip(TWO, "tone-stops: 0"));
        JsonNode dusk = chosen.get("openings").get(0);
        long minutes = Duration.between(Timetables.at(dusk, "openAt"), Timetables.at(dusk, "closeAt"))
                .toMinutes();
        JsonNode narrow = first(trip(TWO.replace("shortest: 2, longest: 20", String.format(Locale.ROOT,
                "shortest: %d, longest: %d", minutes, minutes)).replace("[16, 22]",
                "[" + dusk.get("fNumber").asInt() + "]"), "tone-stops: 0"));
        assertEquals(chosen.get("score"), narrow.get("score"));
        assertEquals(chosen.get("openings"), narrow.get("openings"));
    }

    @Test
    void textCardsAndCalendarListEach() throws Exception {
        String trip = trip(TWO, "tone-stops: 0");
        JsonNode openings = first(trip).get("openings");
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
        assertEquals(first(trip).get("sequence"), Timetables.windows(Timetables.json(trip, "--previous",
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

    private JsonNode added(String trip, String name, String... args) throws IOException {
        String journal = folder.resolve(name + ".jsonl").toString();
        Run run = Run.of(Stream.concat(Stream.of("journal", "add", "--journal", journal, "--trip", trip),
                Stream.of(args)).toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper()
                .readTree(Files.readString(Path.of(journal)).lines().reduce((one, last) -> last)
                .orElseThrow());
    }

    /** The middle of the sky's light in an opening. */
    private static double light(JsonNode line, int opening) {
        JsonNode openings = line.get("openings");
        JsonNode light = openings.get(opening).get("sky-cd-m2");
        return light.get(light.size() / 2).asDouble();
    }

    /** Each opening has the light of its own aim, through its own f-number. */
    @Test
    void suchASheetOfAPlanIsPutIntoTheJournalWithAllItsOpenings() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        JsonNode window = first(trip);
        String sheet = window.get("sheet").asString();
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet", sheet);
        JsonNode later = window.get("openings").get(1);
        JsonNode alone = added(trip, "alone", "--film", "instant-mono-640", "--f-number", "11", "--azimuth",
                later.get("azimuthDeg").asString(), "--altitude", later.get("altitudeDeg").asString(),
                "--open", later.get("openAt").asString() + "/" + later.get("closeAt").asString());
        assertEquals(2, whole.get("openings").size());
        assertEquals(light(alone, 0), light(whole, 1), 1e-3 * light(alone, 0));
        JsonNode second = whole.get("openings").get(1);
        assertEquals(11, second.get("f-number").asDouble());
        assertEquals(alone.get("azimuth-deg"), second.get("azimuth-deg"));
        assertEquals(alone.get("altitude-deg"), second.get("altitude-deg"));
        assertFalse(whole.get("openings").get(0).has("azimuth-deg"), "the sheet's own");
    }

    /** A correction computes the light of every opening at its own aim, unless it gives one aim for all. */
    @Test
    void aCorrectionComputesEachOpeningsLightAtItsOwnAim() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        String sheet = first(trip).get("sheet").asString();
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet", sheet);
        Path journal = folder.resolve("whole.jsonl");
        long before = Files.readAllLines(journal).size();
        Run again = Run.of("journal", "add", "--journal", journal.toString(), "--trip", trip, "--corrects",
                "1", "--tone", "dark");
        assertEquals(0, again.exit(), again.err());
        JsonNode judged = new ObjectMapper().readTree(Files.readAllLines(journal).get((int) before));
        assertFalse(judged.get("change").has("sky-cd-m2"), "nothing about the light changed: " + judged);
        JsonNode oneAim = added(trip, "whole", "--corrects", "1", "--azimuth", "230", "--altitude", "15");
        JsonNode times = oneAim.get("change").get("times");
        assertFalse(times.get(1).has("azimuth-deg"), "one aim for all: " + oneAim);
        assertEquals(11, times.get(1).get("f-number").asDouble(), "each at its own f-number still");
        JsonNode sky = oneAim.get("change").get("sky-cd-m2").get(1);
        assertTrue(Math.abs(sky.get(sky.size() / 2).asDouble() / light(whole, 1) - 1) > 0.01,
                "other light low in the south-west than at the pole");
    }

    /** A correction of the lens leaves the sky as it was, and each opening its f-number. */
    @Test
    void aCorrectionOfOneFNumberForAllLeavesEachAim() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet",
                first(trip).get("sheet").asString());
        JsonNode change = added(trip, "whole", "--corrects", "1", "--f-number", "8").get("change");
        assertEquals(8, change.get("lens").get("f-number").asDouble());
        assertFalse(change.get("times").get(1).has("f-number"));
        assertEquals(whole.get("openings").get(1).get("azimuth-deg"),
                change.get("times").get(1).get("azimuth-deg"));
    }

    /**
     * The page knows when the first opening was opened and the last one closed; the others are as planned.
     */
    @Test
    void suchASheetIsHandedOverByThePageWithAllItsOpenings() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        JsonNode window = first(trip);
        Path page = Files.writeString(folder.resolve("page.json"), """
                {"schema": "gloam-page/1", "identity": "a", "title": "Two on one", "skipped": [],
                 "nights": [{"night": "2027-01-05", "site": "Moor gate", "windows": [{"sheet": 1,
                 "wish": "Last light and the wheel", "film": "instant-mono-640", "camera": "box",
                 "openAt": %s, "closeAt": %s, "azimuthDeg": 230, "altitudeDeg": 15, "fNumber": %s,
                 "note": null, "openings": %s}]}]}
                """.formatted(window.get("openAt"), window.get("closeAt"), window.get("fNumber"),
                window.get("openings")));
        JsonNode line = added(trip, "page", "--from-page", page.toString());
        assertEquals(2, line.get("openings").size());
        assertEquals(Timetables.at(window.get("openings").get(1), "openAt"),
                Instant.parse(line.get("openings").get(1).get("open").asString()));
    }

    @Test
    void aWalkOfTheNightShowsAllOpeningsAndTakesThemAsPlanned() throws IOException {
        String trip = trip(TWO, "tone-stops: 0");
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        String journal = folder.resolve("walk.jsonl").toString();
        Run run = Run.answering(List.of("", "", "", "", "", "", "", "", "", "-", "-"), "journal", "add",
                "--journal", journal, "--trip", trip, "--plan", saved.toString(), "--night", "2027-01-05");
        assertTrue(run.err().matches("(?s).*Sheet 1, Last light and the wheel: open \\[\\d\\d:\\d\\d/"
                + "\\d\\d:\\d\\d \\d\\d:\\d\\d/\\d\\d:\\d\\d].*"), run.err());
        assertEquals(2, new ObjectMapper().readTree(Files.readString(Path.of(journal)).lines().findFirst()
                .orElseThrow()).get("openings").size());
    }

    @Test
    void openingsOutOfOrderAreToldByTheSitesClocks() throws IOException {
        Run run = Run.of("journal", "add", "--journal", folder.resolve("j.jsonl").toString(), "--place",
                "40.4,-1.2,1300", "--zone", "Europe/Madrid", "--film", "instant-mono-640", "--f-number", "11",
                "--azimuth", "0", "--altitude", "40", "--open", "2027-02-08T22:00/1h", "--open",
                "2027-02-08T21:00/1h");
        assertTrue(run.err().contains("the shutter opens at 2027-02-08T21:00+01:00 before it has closed"),
                run.err());
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
