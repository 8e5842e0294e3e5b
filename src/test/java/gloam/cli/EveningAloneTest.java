package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** One evening planned alone, what is left of it when the sky clears late, and second choices. */
class EveningAloneTest {

    @TempDir
    Path folder;

    /** Nights about that of the session's clock, 2027-01-15; the Moon sets about midnight. */
    private String trip() throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: A week on the moor
                sites:
                  - {name: Moor gate, latitude-deg: 54.5, longitude-deg: -2.3, height-m: 420, zone: Europe/London}
                nights: {from: 2027-01-13, to: 2027-01-17}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 4
                wishes:
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}, worth: 2}
                  - {name: Dusk, point: {azimuth-deg: 240, altitude-deg: 12}, sky: dusk, tone-stops: 0,
                     exposure-min: {shortest: 5, longest: 60}}
                """).toString();
    }

    private static JsonNode plan(String trip, String... more) throws IOException {
        return new ObjectMapper().readTree(Timetables.json(trip, more));
    }

    @Test
    void aNightIsPlannedAlone() throws IOException {
        JsonNode plan = plan(trip(), "--night", "2027-01-14");
        assertEquals(1, plan.get("nights").size());
        assertEquals("2027-01-14", plan.get("nights").get(0).get("night").asString());
        assertEquals(plan(trip()).get("identity"), plan.get("identity"), "to calendars it is the same trip");
        assertEquals(2, plan.get("sheetsUsed").asInt());
        assertEquals(1, plan(trip(), "--night", "2027-01-14", "--done", "Dusk").get("sheetsUsed").asInt());
    }

    @Test
    void tonightIsThatOfTheClockAndOpensNothingBeforeIt() throws IOException {
        JsonNode plan = plan(trip(), "--tonight");
        assertEquals("2027-01-14", plan.get("nights").get(0).get("night").asString(),
                "at 10 in the morning the night of the day before is not over");
        assertEquals(0, plan.get("sheetsUsed").asInt());
    }

    /** After an hour nothing opens before it, and the earlier it clears the more is left. */
    @Test
    void whatIsLeftOpensAfterTheSkyClears() throws IOException {
        JsonNode plan = plan(trip(), "--night", "2027-01-14");
        JsonNode left = plan.get("ifClears");
        assertTrue(left.size() >= 2, left.toString());
        int before = 2;
        for (JsonNode later : left) {
            Instant clear = Timetables.at(later, "clearAt");
            later.get("windows").forEach(window ->
                    assertTrue(!Timetables.at(window, "openAt").isBefore(clear), later.toString()));
            assertTrue(later.get("windows").size() <= before, left.toString());
            before = later.get("windows").size();
        }
        assertEquals(0, before, "in the morning nothing is left");
        assertEquals("Wheel", left.get(left.size() - 2).get("windows").get(0).get("wish")
                .asString(), "dusk is over then");
        String text = Run.of("plan", "--trip", trip(), "--night", "2027-01-14").out();
        assertTrue(text.contains("If it clears only later\n  - by "), text);
        assertTrue(text.contains(": nothing is left\n"), text);
        assertEquals(0, plan(trip()).get("ifClears").size(), "of several nights it is not said");
    }

    /** What is promised for another night is the best that a plan of that night alone has for the wish. */
    @Test
    void aSecondChoiceIsAWindowOnAnotherNight() throws IOException {
        JsonNode plan = plan(trip());
        assertEquals(2, plan.get("cloudedOut").size());
        for (JsonNode second : plan.get("cloudedOut")) {
            JsonNode first = Timetables.windows(plan.toString()).stream()
                    .filter(window -> window.get("wish").equals(second.get("wish"))).findFirst()
                    .orElseThrow();
            assertTrue(!first.get("openAt").asString().startsWith(second.get("night").asString()));
            JsonNode there = Timetables.windows(Timetables.json(trip(), "--night",
                    second.get("night").asString(), "--done",
                    second.get("wish").asString().equals("Wheel") ? "Dusk" : "Wheel")).stream()
                    .filter(window -> window.get("wish").equals(second.get("wish"))).findFirst()
                    .orElseThrow();
            assertEquals(there.get("openAt"), second.get("openAt"));
        }
        String text = Run.of("plan", "--trip", trip()).out().replaceAll("\\s+", " ");
        assertTrue(text.matches(".*; if clouded out: \\w{3} 2027-01-1\\d \\d\\d:\\d\\d at Moor gate.*"),
                text);
        assertTrue(Run.of("plan", "--trip", trip(), "--format", "html").out().contains("if clouded out: "));
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() throws IOException {
        assertRefused("2027-02-14 is none of the nights 2027-01-13 … 2027-01-17", "--night", "2027-02-14");
        assertRefused("--tonight begins now; leave out --night", "--tonight", "--night", "2027-01-14");
        Path former = Timetables.saved(folder.resolve("first.json"), trip());
        assertRefused("leave it out with --night", "--night", "2027-01-14", "--previous", former.toString());
    }

    private void assertRefused(String problem, String... more) throws IOException {
        String[] args = new String[more.length + 3];
        System.arraycopy(new String[] {"plan", "--trip", trip()}, 0, args, 0, 3);
        System.arraycopy(more, 0, args, 3, more.length);
        Run run = Run.of(args);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(problem), run.err());
    }
}
