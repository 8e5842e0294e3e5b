package gloam.cli;

import static gloam.cli.Timetables.demo;
import static gloam.cli.Timetables.ics;
import static gloam.cli.Timetables.saved;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.property.Trigger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A calendar and what takes its place when the trip is planned again, twice: ical4j and biweekly, two
 * independent libraries, find the same in it.
 */
class CalendarReadersTest {

    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'");

    private static final String NIGHTS = "to: 2027-02-17";
    private static final String FEWER = "to: 2027-02-12";

    /** An event as any reader has it. */
    private record Read(String uid, int sequence, Instant from, Instant to, String summary, String place,
                        boolean cancelled, List<Instant> alarms) {
    }

    /** A wish is dropped and another moved, then both are as they were. */
    @Test
    void theSameIsReadOverTwoChanges(@TempDir Path folder) throws Exception {
        String trip = demo(Files.createDirectory(folder.resolve("trip")), NIGHTS, FEWER);
        String changed = demo(folder, NIGHTS, FEWER, "shortest: 180", "shortest: 240",
                "  - name: Venus into the dawn", "  - name: Venus at dawn");
        Path first = saved(folder.resolve("first.json"), trip);
        Path second = saved(folder.resolve("second.json"), changed, "--previous", first.toString());
        Map<String, Read> before = read(ics(trip));
        Map<String, Read> between = read(ics(changed, "--previous", first.toString()));
        Map<String, Read> after = read(ics(trip, "--previous", second.toString()));
        List<Read> dropped = between.values().stream().filter(Read::cancelled).toList();
        assertEquals(2, dropped.size());
        for (Read event : dropped) {
            assertTrue(event.sequence > before.get(event.uid).sequence, event::toString);
            assertEquals(before.get(event.uid).from, event.from);
            assertEquals(List.of(), event.alarms);
            assertTrue(after.get(event.uid).sequence > event.sequence, event::toString);
            assertTrue(!after.get(event.uid).cancelled, event::toString);
        }
        assertTrue(before.values().stream().anyMatch(event -> !between.get(event.uid).cancelled
                && !between.get(event.uid).to.equals(event.to)
                && between.get(event.uid).sequence > event.sequence));
        assertEquals(before.keySet(), after.entrySet().stream().filter(event -> !event.getValue().cancelled)
                .map(Map.Entry::getKey).collect(Collectors.toSet()));
    }

    /** What both readers find. */
    private static Map<String, Read> read(String ics) throws Exception {
        Map<String, Read> one = byUid(Timetables.read(ics).<net.fortuna.ical4j.model.component.VEvent>
                getComponents(Component.VEVENT).stream().map(CalendarReadersTest::ofIcal4j).toList());
        List<List<biweekly.io.ParseWarning>> warnings = new ArrayList<>();
        ICalendar calendar = Biweekly.parse(ics).warnings(warnings).first();
        assertEquals(List.of(List.of()), warnings);
        assertEquals(one, byUid(calendar.getEvents().stream().map(CalendarReadersTest::ofBiweekly).toList()));
        return one;
    }

    private static Map<String, Read> byUid(List<Read> events) {
        return events.stream().collect(Collectors.toMap(Read::uid, Function.identity()));
    }

    private static Read ofIcal4j(net.fortuna.ical4j.model.component.VEvent event) {
        Instant from = utc(Timetables.value(event, Property.DTSTART));
        Instant to = utc(Timetables.value(event, Property.DTEND));
        return new Read(Timetables.value(event, Property.UID),
                Integer.parseInt(Timetables.value(event, Property.SEQUENCE)), from, to,
                Timetables.value(event, Property.SUMMARY), event.getProperty(Property.LOCATION)
                .map(Property::getValue).orElse(""),
                event.getProperty(Property.STATUS).filter(status -> status.getValue().equals("CANCELLED"))
                .isPresent(), event.getAlarms().stream().map(alarm -> {
                    Property trigger = alarm.getRequiredProperty(Property.TRIGGER);
                    return (trigger.getParameter("RELATED").isPresent() ? to : from)
                            .plus(Duration.parse(trigger.getValue()));
                }).toList());
    }

    private static Instant utc(String value) {
        return LocalDateTime.parse(value, UTC).toInstant(ZoneOffset.UTC);
    }

    private static Read ofBiweekly(VEvent event) {
        Instant from = event.getDateStart().getValue().toInstant();
        Instant to = event.getDateEnd().getValue().toInstant();
        return new Read(event.getUid().getValue(), event.getSequence().getValue(), from, to,
                event.getSummary().getValue(),
                event.getLocation() == null ? "" : event.getLocation().getValue(),
                event.getStatus() != null && event.getStatus().isCancelled(),
                event.getAlarms().stream().map(VAlarm::getTrigger).map(trigger -> rings(trigger, from, to))
                .toList());
    }

    private static Instant rings(Trigger trigger, Instant from, Instant to) {
        return (trigger.getRelated() == biweekly.parameter.Related.END ? to : from)
                .plusMillis(trigger.getDuration().toMillis());
    }
}
