package gloam.cli;

import static gloam.cli.Timetables.at;
import static gloam.cli.Timetables.demo;
import static gloam.cli.Timetables.ics;
import static gloam.cli.Timetables.json;
import static gloam.cli.Timetables.read;
import static gloam.cli.Timetables.value;
import static gloam.cli.Timetables.windows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Timetables as iCalendar, read back and judged by ical4j. */
class TimetableCalendarTest {

    private static final int MOST_OCTETS = 75; // RFC 5545, 3.1

    @ParameterizedTest
    @ValueSource(strings = {"demo-data/trip.yaml", "demo-data/trip-south.yaml", "demo-data/trip-arctic.yaml"})
    void isValidAndFolded(String trip) throws Exception {
        String ics = ics(trip);
        assertFalse(read(ics).validate().hasErrors(), () -> "not valid:\n" + ics);
        assertTrue(ics.endsWith("END:VCALENDAR\r\n"));
        for (String line : ics.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= MOST_OCTETS, line);
            assertFalse(line.contains("\n"), "a line ends by LF alone: " + line);
        }
    }

    /**
     * An event for each window with alarms for setting up, opening and closing, and one for its closing with
     * one alarm.
     */
    @Test
    void hasTwoEventsForEachWindow() throws Exception {
        List<VEvent> events = read(ics("demo-data/trip.yaml")).getComponents(Component.VEVENT);
        List<JsonNode> windows = windows(json("demo-data/trip.yaml"));
        assertEquals(2 * windows.size(), events.size());
        assertEquals(events.size(), events.stream().map(VEvent::getUid).distinct().count());
        for (JsonNode window : windows) {
            Instant open = at(window, "openAt");
            Instant close = at(window, "closeAt");
            VEvent exposure = only(events, "Sheet " + window.get("sheet") + ": ");
            assertEquals(window.get("identity").asString(), value(exposure, Property.UID));
            assertEquals(List.of(open, close), List.of(start(exposure), end(exposure)));
            assertEquals(List.of(at(window, "prepareAt"), open, close), alarms(exposure));
            VEvent closing = only(events, "Close sheet " + window.get("sheet") + ", ");
            assertEquals(close, start(closing));
            assertEquals(close.plusSeconds(60), end(closing));
            assertEquals(List.of(close), alarms(closing));
        }
    }

    /**
     * Twenty minutes before the opening, or the changeover where that is longer, but when the sheet before is
     * closed.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 6, 12, 35})
    void setUpNeverRingsWhileTheCameraIsOpen(int changeoverMin, @TempDir Path folder) throws Exception {
        String trip = demo(folder, "changeover-min: 6", "changeover-min: " + changeoverMin);
        List<JsonNode> windows = windows(json(trip));
        assertTrue(windows.size() > 3);
        Instant free = Instant.MIN;
        for (JsonNode window : windows) {
            Instant lead = at(window, "openAt").minusSeconds(60L * Math.max(20, changeoverMin));
            assertEquals(free.isAfter(lead) ? free : lead, at(window, "prepareAt"), window.toString());
            free = at(window, "closeAt");
        }
    }

    /** Name, place and zone of RFC 7986, 5.1, and RFC 5545, 3.6.5 and 3.8.1.6. */
    @Test
    void namesCalendarPlaceAndZone() throws Exception {
        Calendar calendar = read(ics("demo-data/trip.yaml"));
        assertEquals("Ten nights on the high plain", calendar.getRequiredProperty("NAME").getValue());
        for (VEvent event : calendar.<VEvent>getComponents(Component.VEVENT)) {
            boolean loma = value(event, Property.LOCATION).equals("Loma Callada");
            assertEquals(loma ? "41.18000;-1.92000" : "41.05000;-2.15000", value(event, Property.GEO));
        }
        List<VTimeZone> zones = calendar.getComponents(Component.VTIMEZONE);
        assertEquals(1, zones.size());
        assertEquals("Europe/Madrid", zones.get(0).getTimeZoneId().getValue());
    }

    /** The zone's observances give the offsets of java.time before and after each change within the trip. */
    @ParameterizedTest
    @CsvSource({"Europe/Madrid, 2027-03-27, 2027-03-28", "Australia/Lord_Howe, 2027-04-03, 2027-04-04",
        "America/New_York, 2027-11-06, 2027-11-07", "Asia/Kathmandu, 2027-03-27, 2027-03-28",
        "UTC, 2027-03-27, 2027-03-28"})
    void zonesHaveTheirChanges(String zone, String from, String to, @TempDir Path folder) throws Exception {
        String trip = demo(folder, "Europe/Madrid", zone, "2027-02-08", from, "2027-02-17", to,
                "skyline: skyline-loma.csv", "", "    sky: dark", "    sky: any");
        Calendar calendar = read(ics(trip));
        assertFalse(calendar.validate().hasErrors());
        List<VTimeZone> zones = calendar.getComponents(Component.VTIMEZONE);
        assertEquals(1, zones.size());
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        assertTrue(events.size() > 2);
        for (VEvent event : events) {
            ZoneOffset offset = ZoneId.of(zone).getRules().getOffset(start(event));
            assertEquals(offset, offset(zones.get(0), start(event)), zone + " at " + start(event));
        }
    }

    /** The offset to which the latest observance that has begun sets the clocks (RFC 5545, 3.6.5). */
    private static ZoneOffset offset(VTimeZone zone, Instant at) {
        return zone.getObservances().stream()
                .filter(observance -> !begins(observance).isAfter(at))
                .max(Comparator.comparing(TimetableCalendarTest::begins))
                .map(observance -> ZoneOffset.of(observance.getRequiredProperty("TZOFFSETTO").getValue()))
                .orElseThrow();
    }

    private static Instant begins(Component observance) {
        return LocalDateTime.parse(observance.getRequiredProperty(Property.DTSTART).getValue(),
                DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss"))
                .toInstant(ZoneOffset.of(observance.getRequiredProperty("TZOFFSETFROM").getValue()));
    }

    private static VEvent only(List<VEvent> events, String summary) {
        List<VEvent> found = events.stream()
                .filter(event -> value(event, Property.SUMMARY).startsWith(summary)).toList();
        assertEquals(1, found.size(), summary);
        return found.get(0);
    }

    private static Instant start(VEvent event) {
        return utc(value(event, Property.DTSTART));
    }

    private static Instant end(VEvent event) {
        return utc(value(event, Property.DTEND));
    }

    private static Instant utc(String value) {
        return LocalDateTime.parse(value, DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'"))
                .toInstant(ZoneOffset.UTC);
    }

    /** When an event's alarms ring, in their order. */
    private static List<Instant> alarms(VEvent event) {
        return event.getAlarms().stream().map(alarm -> {
            Property trigger = alarm.getRequiredProperty(Property.TRIGGER);
            Instant from = trigger.getParameter("RELATED").isPresent() ? end(event) : start(event);
            return from.plus(Duration.parse(trigger.getValue()));
        }).toList();
    }

    /** Commas, semicolons, backslashes, lines and letters of several octets come back as they were. */
    @Test
    void textsComeBackAsTheyWere(@TempDir Path folder) throws Exception {
        String name = "Ñandú; \\\\ comma, ☾ " + "🌒".repeat(40);
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, Files.readString(Path.of("demo-data/trip.yaml"))
                .replace("Wheel about the pole",
                "\"" + name + "\"").replace("skyline: skyline-loma.csv", ""));
        String ics = ics(trip.toString());
        String expected = name.replace("\\\\", "\\");
        assertTrue(read(ics).getComponents(Component.VEVENT).stream()
                .anyMatch(event -> event.getRequiredProperty(Property.SUMMARY).getValue().contains(expected)),
                ics);
        ics.lines().forEach(line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= MOST_OCTETS,
                line));
    }
}
