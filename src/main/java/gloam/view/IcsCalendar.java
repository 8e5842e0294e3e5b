package gloam.view;

import gloam.answer.Timetable;
import gloam.units.Interval;
import gloam.view.PlanReport.CancelledRow;
import gloam.view.PlanReport.PlannedNightRow;
import gloam.view.PlanReport.WindowRow;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The calendar of a timetable (RFC 5545, with the name that RFC 7986 gives it): an event for each window with
 * alarms for setting up, opening and closing; a short one for its closing, since not every calendar rings an
 * alarm that hangs on an event's end; and as cancelled what an earlier timetable announced and this one takes
 * back.
 *
 * <p>UID and SEQUENCE of an event are the window's identity and sequence, so that a new timetable moves the
 * events of the old one. Times are in UTC, the zone of the site stands beside them.
 */
final class IcsCalendar {

    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);
    private static final Duration CLOSING = Duration.ofMinutes(1);

    private final PlanReport plan;
    private final IcsText ics = new IcsText();

    private IcsCalendar(PlanReport plan) {
        this.plan = plan;
    }

    /** The calendar as text. */
    static String of(PlanReport plan) {
        return new IcsCalendar(plan).written();
    }

    private String written() {
        ics.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", "-//Gloam//Gloam//EN")
                .line("UID", plan.identity()).words("NAME", plan.title()).words("X-WR-CALNAME", plan.title());
        zones();
        plan.nights().forEach(night -> night.windows().forEach(window -> {
            exposure(night, window);
            closing(night, window);
        }));
        plan.cancelled().forEach(this::cancelled);
        if (plan.empty() && plan.cancelled().isEmpty()) {
            begin("VJOURNAL", Timetable.within(UUID.fromString(plan.identity()), "no window").toString(), 0)
                    .words("SUMMARY", plan.title() + ": no window").line("END", "VJOURNAL");
        }
        return ics.line("END", "VCALENDAR").toString();
    }

    private void zones() {
        List<PlannedNightRow> nights = plan.nights().stream().filter(night -> !night.windows().isEmpty())
                .toList();
        nights.stream().map(PlannedNightRow::zone).distinct().forEach(zone -> {
            List<WindowRow> windows = nights.stream().filter(night -> night.zone().equals(zone))
                    .flatMap(night -> night.windows().stream()).toList();
            Instant first = windows.stream().map(window -> window.prepareAt().toInstant())
                    .min(Instant::compareTo).orElseThrow();
            Instant last = windows.stream().map(window -> window.closeAt().toInstant())
                    .max(Instant::compareTo).orElseThrow();
            IcsZone.write(ics, ZoneId.of(zone), new Interval(first, last.plus(CLOSING)));
        });
    }

    private void exposure(PlannedNightRow night, WindowRow window) {
        String sheet = sheet(window);
        place(event(window.identity(), window.sequence(), window.openAt(), window.closeAt()), night)
                .words("SUMMARY", "Sheet " + window.sheet() + ": " + window.wish() + ", "
                        + Wording.fNumber(window.fNumber()))
                .words("DESCRIPTION", "Open " + night.times().exposure(window.openAt().toInstant(),
                        window.closeAt().toInstant()) + " (" + night.zone() + "). "
                        + plan.camera(window.camera()).map(name -> name + ", ").orElse("")
                        + FilmWords.name(window.film(), window.fittedToSheets()) + ", "
                        + Wording.fNumber(window.fNumber()) + ", azimuth "
                        + Wording.number(window.azimuthDeg(), 1)
                        + "°, altitude " + Wording.number(window.altitudeDeg(), 1) + "°, roll "
                        + Wording.number(window.rollDeg(), 1) + "°.\n" + window.reason()
                        + ".\n" + SheetOpeningRow.times(window, night.times()).stream().map(Wording::title)
                        .collect(Collectors.joining(".\n")) + ".");
        long leadMin = Duration.between(window.prepareAt(), window.openAt()).toMinutes();
        alarm("TRIGGER", "-PT" + leadMin + "M", "Set up " + sheet);
        alarm("TRIGGER", "PT0S", "Open " + sheet);
        for (int number = 1; number < window.openings().size(); number++) {
            OffsetDateTime closeAt = window.openings().get(number - 1).closeAt();
            alarm("TRIGGER", after(window, closeAt), "Close " + sheet + ", until the next opening");
            alarm("TRIGGER", after(window, window.openings().get(number).openAt()), "Open " + sheet
                    + ", again");
        }
        alarm("TRIGGER;RELATED=END", "PT0S", "Close " + sheet);
        ics.line("END", "VEVENT");
    }

    private static String after(WindowRow window, OffsetDateTime at) {
        return "PT" + Duration.between(window.openAt(), at).toMinutes() + "M";
    }

    private void closing(PlannedNightRow night, WindowRow window) {
        OffsetDateTime closeAt = window.closeAt();
        place(event(closing(window.identity()), window.sequence(), closeAt, closeAt.plus(CLOSING)), night)
                .words("SUMMARY", "Close " + sheet(window));
        alarm("TRIGGER", "PT0S", "Close " + sheet(window));
        ics.line("END", "VEVENT");
    }

    private void cancelled(CancelledRow row) {
        event(row.identity(), row.sequence(), row.openAt(), row.closeAt()).line("STATUS", "CANCELLED")
                .words("LOCATION", row.site()).words("SUMMARY", "Cancelled: " + row.wish())
                .line("END", "VEVENT");
        event(closing(row.identity()), row.sequence(), row.closeAt(), row.closeAt().plus(CLOSING))
                .line("STATUS", "CANCELLED").words("SUMMARY", "Cancelled: close " + row.wish())
                .line("END", "VEVENT");
    }

    private String sheet(WindowRow window) {
        return "sheet " + window.sheet() + ", " + window.wish()
                + plan.camera(window.camera()).map(name -> ", " + name).orElse("");
    }

    private static String closing(String window) {
        return Timetable.within(UUID.fromString(window), "close").toString();
    }

    private IcsText event(String identity, int sequence, OffsetDateTime from, OffsetDateTime to) {
        return begin("VEVENT", identity, sequence).line("DTSTART", utc(from)).line("DTEND", utc(to));
    }

    private IcsText begin(String component, String identity, int sequence) {
        return ics.line("BEGIN", component).line("UID", identity).line("DTSTAMP", utc(plan.generatedAt()))
                .line("SEQUENCE", String.valueOf(sequence));
    }

    private static IcsText place(IcsText event, PlannedNightRow night) {
        return event.words("LOCATION", night.site()).line("GEO",
                String.format(Locale.ROOT, "%.5f;%.5f", night.latitudeDeg(), night.longitudeDeg()));
    }

    private void alarm(String trigger, String when, String what) {
        ics.line("BEGIN", "VALARM").line("ACTION", "DISPLAY").line(trigger, when).words("DESCRIPTION", what)
                .line("END", "VALARM");
    }

    private static String utc(OffsetDateTime at) {
        return UTC.format(at.withOffsetSameInstant(ZoneOffset.UTC));
    }
}
