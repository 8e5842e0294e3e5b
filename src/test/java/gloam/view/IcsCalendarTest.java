package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Timetable;
import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.planner.FormerPlan;
import gloam.planner.Progress;
import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.planner.Wish;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Interval;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A timetable as a calendar, line by line, against its answer (RFC 5545). */
class IcsCalendarTest {

    private static final Instant NOW = Instant.parse("2027-01-01T10:00:00Z");
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);
    private static final FormerPlan.Cancelled GONE = new FormerPlan.Cancelled(
            new FormerPlan.Event(new UUID(1, 2), 7), "dusk; west, low", "Shore",
            Interval.lasting(Instant.parse("2027-02-14T20:00:00Z"), Duration.ofHours(1)));

    private static Timetable timetable(SkyKind sky) {
        Wish.Tone any = new Wish.Tone.Free();
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 2,
                List.of(Trips.pointed("stars", Direction.ofDegrees(0, 44), sky, any),
                Trips.pointed("more stars", Direction.ofDegrees(0, 44), sky, any)));
        FormerPlan former = new FormerPlan(trip.identity(), List.of(), List.of(GONE));
        return Timetable.of(new AnalyticEphemeris(), StarCatalogue.builtIn(), trip, Optional.of(former), NOW,
                Progress.NONE);
    }

    private static List<String> lines(Timetable timetable) {
        String text = IcsCalendar.of(PlanReport.of(timetable, NOW));
        assertTrue(text.endsWith("\r\n"));
        return Arrays.asList(text.replace("\r\n ", "").split("\r\n"));
    }

    /** The lines of each component of that name. */
    private static List<List<String>> components(List<String> lines, String name) {
        List<List<String>> all = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).equals("BEGIN:" + name)) {
                int end = i + lines.subList(i, lines.size()).indexOf("END:" + name);
                all.add(lines.subList(i, end));
            }
        }
        return all;
    }

    private static String utc(Instant at) {
        return UTC.format(at.plusMillis(50).atZone(ZoneId.of("UTC")));
    }

    @Test
    void everyWindowIsAnEventAndAClosing() {
        Timetable timetable = timetable(SkyKind.DARK);
        List<List<String>> events = components(lines(timetable), "VEVENT");
        List<Timetable.Announced> windows = timetable.nights().get(0).windows();
        assertEquals(2, windows.size());
        assertEquals(2 * windows.size() + 2, events.size());
        for (int i = 0; i < windows.size(); i++) {
            Timetable.Announced window = windows.get(i);
            Interval open = window.window().open();
            List<String> event = events.get(2 * i);
            assertTrue(event.containsAll(List.of("UID:" + window.event().identity(),
                    "DTSTAMP:20270101T100000Z",
                    "SEQUENCE:" + window.event().sequence(), "DTSTART:" + utc(open.start()),
                    "DTEND:" + utc(open.endExclusive()), "GEO:44.20000;9.70000")), event::toString);
            long leadMin = Duration.between(window.prepareAt(), open.start()).toMinutes();
            assertTrue(event.contains("TRIGGER:-PT" + leadMin + "M"), event::toString);
            assertTrue(event.contains("TRIGGER;RELATED=END:PT0S"));
            assertEquals(3, event.stream().filter(line -> line.equals("BEGIN:VALARM")).count());
            List<String> closing = events.get(2 * i + 1);
            assertTrue(closing.containsAll(List.of("DTSTART:" + utc(open.endExclusive()),
                    "DTEND:" + utc(open.endExclusive().plusSeconds(60)), "TRIGGER:PT0S")), closing::toString);
        }
    }

    @Test
    void whatIsTakenBackIsCancelled() {
        List<List<String>> events = components(lines(timetable(SkyKind.DARK)), "VEVENT");
        List<String> gone = events.get(events.size() - 2);
        assertTrue(gone.containsAll(List.of("UID:" + new UUID(1, 2), "SEQUENCE:7", "STATUS:CANCELLED",
                "DTSTART:20270214T200000Z", "DTEND:20270214T210000Z")), gone::toString);
        assertTrue(gone.stream().anyMatch(line -> line.endsWith("dusk\\; west\\, low")), gone::toString);
        assertTrue(events.get(events.size() - 1).contains("DTSTART:20270214T210000Z"));
    }

    /** Its zone as its clocks keep it that night: winter time since the last Sunday of October. */
    @Test
    void theZoneIsThatOfTheNight() {
        List<List<String>> zones = components(lines(timetable(SkyKind.DARK)), "VTIMEZONE");
        assertEquals(List.of(List.of("BEGIN:VTIMEZONE", "TZID:Europe/Rome", "BEGIN:STANDARD",
                "DTSTART:20261025T030000",
                "TZOFFSETFROM:+0200", "TZOFFSETTO:+0100", "END:STANDARD")), zones);
    }

    /** Over the change to summer time on 14 March 2027; a zone that never changed has been so for long. */
    @Test
    void changesOfAZoneAreTold() {
        IcsText ics = new IcsText();
        Instant from = Instant.parse("2027-03-06T00:00:00Z");
        IcsZone.write(ics, ZoneId.of("America/St_Johns"),
                Interval.lasting(from, Duration.ofDays(30)));
        String text = ics.toString();
        assertTrue(text.contains("BEGIN:DAYLIGHT\r\nDTSTART:20270314T020000\r\n"
                + "TZOFFSETFROM:-0330\r\nTZOFFSETTO:-0230\r\n"), text);
        assertTrue(text.contains("BEGIN:STANDARD\r\nDTSTART:20261101T020000\r\n"
                + "TZOFFSETFROM:-0230\r\nTZOFFSETTO:-0330\r\n"), text);
        IcsText steady = new IcsText();
        IcsZone.write(steady, ZoneId.of("Etc/GMT-5"), Interval.lasting(from, Duration.ofDays(1)));
        assertTrue(steady.toString()
                .contains("DTSTART:19700101T000000\r\nTZOFFSETFROM:+0500\r\nTZOFFSETTO:+0500"),
                steady::toString);
    }

    /** 75 octets at most without the line's end; a fold is a blank that counts. No letter is cut. */
    @Test
    void linesAreFoldedByOctets() {
        for (String letter : List.of("a", "é", "星", "🌒")) {
            String text = new IcsText().line("SUMMARY", letter.repeat(200)).toString();
            assertEquals("SUMMARY:" + letter.repeat(200) + "\r\n", text.replace("\r\n ", ""));
            List<String> lines = Arrays.asList(text.split("\r\n"));
            int octets = letter.getBytes(StandardCharsets.UTF_8).length;
            lines.forEach(line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line));
            lines.subList(0, lines.size() - 1).forEach(line ->
                    assertTrue(line.getBytes(StandardCharsets.UTF_8).length > 75 - octets,
                            "as full as can be: " + line));
        }
    }

    @Test
    void textsAreEscaped() {
        assertEquals("NAME:a\\\\b\\;c\\,d\\ne f\r\n", new IcsText().words("NAME", "a\\b;c,d\r\ne\u0007f")
                .toString());
    }
}
