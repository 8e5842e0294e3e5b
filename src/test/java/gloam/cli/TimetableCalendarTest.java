package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Timetables as iCalendar, read back and judged by ical4j. */
class TimetableCalendarTest {

    private static final int MOST_OCTETS = 75; // RFC 5545, 3.1

    private static String ics(String trip, String... more) {
        List<String> args = new java.util.ArrayList<>(List.of("plan", "--trip", trip, "--format", "ics"));
        args.addAll(List.of(more));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    private static Calendar read(String ics) throws Exception {
        return new CalendarBuilder().build(new StringReader(ics));
    }

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

    @Test
    void hasAnEventWithThreeAlarmsForEachWindow() throws Exception {
        List<VEvent> events = read(ics("demo-data/trip.yaml")).getComponents(Component.VEVENT);
        long windows = Run.of("plan", "--trip", "demo-data/trip.yaml", "--format", "json").out().lines()
                .filter(line -> line.contains("\"sheet\"")).count();
        assertEquals(windows, events.size());
        assertEquals(events.size(), events.stream().map(VEvent::getUid).distinct().count());
        events.forEach(event -> assertEquals(3, event.getAlarms().size()));
    }

    /** A new timetable moves the events of the old one: what is planned again keeps its UID. */
    @Test
    void keepsTheUidsOfAChangedTimetable() throws Exception {
        List<String> before = uids(ics("demo-data/trip.yaml"));
        List<String> after = uids(ics("demo-data/trip.yaml", "--from-now", "2027-02-08T19:40"));
        assertTrue(before.containsAll(after) && !after.isEmpty(), before + " then " + after);
    }

    private static List<String> uids(String ics) throws Exception {
        return read(ics).getComponents(Component.VEVENT).stream()
                .map(event -> event.getRequiredProperty(Property.UID).getValue()).toList();
    }

    /** Commas, semicolons, backslashes, lines and letters of several octets come back as they were. */
    @Test
    void textsComeBackAsTheyWere(@TempDir Path folder) throws Exception {
        String name = "Ñandú; \\\\ comma, ☾ " + "🌒".repeat(40);
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, Files.readString(Path.of("demo-data/trip.yaml")).replace("Wheel about the pole",
                "\"" + name + "\"").replace("skyline: skyline-loma.csv", ""));
        String ics = ics(trip.toString());
        String expected = name.replace("\\\\", "\\");
        assertTrue(read(ics).getComponents(Component.VEVENT).stream()
                .anyMatch(event -> event.getRequiredProperty(Property.SUMMARY).getValue().contains(expected)), ics);
        ics.lines().forEach(line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= MOST_OCTETS, line));
    }
}
