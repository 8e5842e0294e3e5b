package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** How exactly the times of a timetable are to be kept, and when to close what was opened late. */
class KeptTimesTest {

    /** Text tells tones to a tenth of a stop. */
    private static final double TOLD_STOPS = 0.05;
    /** Within its slack a tone stays within half a stop. */
    private static final double SLACK_STOPS = 0.5;

    @TempDir
    private Path folder;
    private String trip;

    @BeforeEach
    void tripOfDuskAndDark() throws IOException {
        trip = Files.writeString(folder.resolve("trip.yaml"), """
                title: "Behind the shed"
                sites:
                  - name: "Shed"
                    latitude-deg: 52.06
                    longitude-deg: 4.45
                    height-m: 2
                    zone: Europe/Amsterdam
                nights: {from: 2027-03-05, to: 2027-03-05}
                camera:
                  name: "Old box"
                  focal-length-mm: 106
                  frame-mm: {width: 79, height: 79}
                  f-numbers: [12, 16, 22]
                  changeover-min: 5
                film: instant-mono-640
                sheets: 2
                wishes:
                  - name: Last light
                    point: {azimuth-deg: 270, altitude-deg: 15}
                    sky: dusk
                    tone-stops: 0
                    exposure-min: {shortest: 20, longest: 90}
                  - name: Wheel
                    pole: {roll-deg: 0}
                    sky: dark
                    tone-at-most-stops: -1
                    exposure-min: {shortest: 60, longest: 240}
                """).toString();
    }

    private double toneStops(JsonNode window, String openAt, String closeAt) {
        OffsetDateTime open = OffsetDateTime.parse(openAt);
        Run run = Run.of("expose", "--trip", trip, "--azimuth", window.get("azimuthDeg").asString(),
                "--altitude", window.get("altitudeDeg").asString(), "--f-number",
                window.get("fNumber").asString(), "--from", open.toLocalDateTime().toString(), "--lasts",
                Duration.between(open, OffsetDateTime.parse(closeAt)).toMinutes() + "m");
        assertEquals(0, run.exit(), run.err());
        Matcher tone = Pattern.compile("([−+]?\\d+\\.\\d) ±").matcher(run.out());
        assertTrue(tone.find(), run.out());
        return Double.parseDouble(tone.group(1).replace('−', '-'));
    }

    @Test
    void theTonesOfSlackAndLateOpeningsAreThoseThatExposeShows() throws Exception {
        List<JsonNode> windows = Timetables.windows(Timetables.json(trip));
        assertEquals(2, windows.size());
        for (JsonNode window : windows) {
            double planned = window.get("skyToneStops").asDouble();
            JsonNode slack = window.get("slack");
            String openAt = window.get("openAt").asString();
            String closeAt = window.get("closeAt").asString();
            for (String open : List.of("openEarliestAt", "openLatestAt")) {
                assertEquals(planned, toneStops(window, slack.get(open).asString(), closeAt),
                        SLACK_STOPS + 2 * TOLD_STOPS);
            }
            for (String close : List.of("closeEarliestAt", "closeLatestAt")) {
                assertEquals(planned, toneStops(window, openAt, slack.get(close).asString()),
                        SLACK_STOPS + 2 * TOLD_STOPS);
            }
            for (JsonNode late : slack.get("openedLate")) {
                assertEquals(Timetables.at(window, "openAt").plusSeconds(60 * late.get("lateMin").asLong()),
                        Timetables.at(late, "openAt"));
                if (!late.get("closeAt").isNull()) {
                    assertEquals(late.get("skyToneStops").asDouble(), toneStops(window,
                            late.get("openAt").asString(), late.get("closeAt").asString()), 2 * TOLD_STOPS);
                }
            }
        }
    }

    /** Opened late, a dusk sheet is lost or stays open longer. */
    @Test
    void duskOpensToTheMinuteAndTheDarkByTheFive() throws Exception {
        List<JsonNode> windows = Timetables.windows(Timetables.json(trip));
        JsonNode dusk = windows.get(0).get("slack");
        assertTrue(dusk.get("openToTheMinute").asBoolean());
        assertTrue(dusk.get("twoMinEarlyStops").asDouble() > 0.15);
        JsonNode late = dusk.get("openedLate").get(0);
        assertTrue(late.get("closeAt").isNull() || Duration.between(
                Timetables.at(windows.get(0), "closeAt"), Timetables.at(late, "closeAt"))
                .compareTo(Duration.ZERO) > 0, dusk::toString);
        JsonNode dark = windows.get(1).get("slack");
        assertFalse(dark.get("openToTheMinute").asBoolean());
        for (String at : List.of("openAt", "closeAt")) {
            assertEquals(0, Timetables.at(windows.get(1), at).getEpochSecond() % 300,
                    windows.get(1)::toString);
        }
        assertEquals(List.of(5, 10, 20, 40),
                dark.get("openedLate").valueStream().map(row -> row.get("lateMin").asInt()).toList());
    }

    @Test
    void textPageAndCalendarSayThem() throws Exception {
        String text = Timetables.plan("text", trip).replaceAll("\\s+", " ");
        assertTrue(text.contains("opens to the minute: two minutes early is +"), text);
        assertTrue(text.contains("may open "), text);
        assertTrue(text.contains("opened late: 5 min, close "), text);
        String page = Timetables.plan("html", trip);
        assertTrue(page.contains(">late by</th>"), page);
        String calendar = Timetables.ics(trip).replace("\r\n ", "");
        assertTrue(calendar.contains("Opened late: 5 min"), calendar);
        assertTrue(calendar.contains("Opens to the minute: two minutes early is +"), calendar);
    }
}
