package gloam.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * A timetable as iCalendar (RFC 5545): an event for each window, with alarms for setting up, opening and closing.
 *
 * <p>An event's UID is made of the trip's title, the wish's name and how often the wish came before, so that importing
 * a new timetable moves the events of the old one.
 */
final class IcsRenderer implements Renderer {

    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);
    private static final int SET_UP_MIN = 20;
    private static final long SECONDS_A_MINUTE = 60;

    @Override
    public boolean suits(Report report) {
        return report instanceof PlanReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        PlanReport plan = (PlanReport) report;
        IcsText ics = new IcsText();
        ics.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", "-//Gloam//Gloam//EN");
        Map<String, Integer> served = new HashMap<>();
        for (PlanReport.NightRow night : plan.nights()) {
            for (PlanReport.WindowRow window : night.windows()) {
                event(ics, plan, night, window, served.merge(window.wish(), 1, Integer::sum));
            }
        }
        if (plan.empty()) {
            entry(ics, plan, "VJOURNAL", "no window").words("SUMMARY", plan.title() + ": no window").line("END", "VJOURNAL");
        }
        out.append(ics.line("END", "VCALENDAR").toString());
    }

    private static void event(IcsText ics, PlanReport plan, PlanReport.NightRow night, PlanReport.WindowRow window,
                              int turn) {
        String sheet = "sheet " + window.sheet() + ", " + window.wish();
        entry(ics, plan, "VEVENT", window.wish() + "\n" + turn)
                .line("DTSTART", utc(window.openAt())).line("DTEND", utc(window.closeAt()))
                .words("SUMMARY", "Sheet " + window.sheet() + ": " + window.wish() + ", "
                        + Wording.fNumber(window.fNumber()))
                .words("LOCATION", night.site())
                .words("DESCRIPTION", "Open " + Wording.minute(window.openAt()) + ", close "
                        + Wording.minute(window.closeAt()) + " (" + night.zone() + "). " + window.film() + ", "
                        + Wording.fNumber(window.fNumber()) + ", azimuth " + Wording.number(window.azimuthDeg(), 1)
                        + "°, altitude " + Wording.number(window.altitudeDeg(), 1) + "°, roll "
                        + Wording.number(window.rollDeg(), 1) + "°.\n" + window.reason())
                .line("TRANSP", "OPAQUE");
        alarm(ics, "-PT" + SET_UP_MIN + "M", "Set up " + sheet);
        alarm(ics, "PT0S", "Open " + sheet);
        ics.line("BEGIN", "VALARM").line("ACTION", "DISPLAY").line("TRIGGER;RELATED=END", "PT0S")
                .words("DESCRIPTION", "Close " + sheet).line("END", "VALARM").line("END", "VEVENT");
    }

    private static IcsText entry(IcsText ics, PlanReport plan, String component, String what) {
        UUID uid = UUID.nameUUIDFromBytes((plan.title() + "\n" + what).getBytes(StandardCharsets.UTF_8));
        return ics.line("BEGIN", component).line("UID", uid.toString()).line("DTSTAMP", utc(plan.generatedAt()))
                .line("SEQUENCE", String.valueOf(plan.generatedAt().toEpochSecond() / SECONDS_A_MINUTE));
    }

    private static void alarm(IcsText ics, String trigger, String what) {
        ics.line("BEGIN", "VALARM").line("ACTION", "DISPLAY").line("TRIGGER", trigger).words("DESCRIPTION", what)
                .line("END", "VALARM");
    }

    private static String utc(OffsetDateTime at) {
        return UTC.format(at.withOffsetSameInstant(ZoneOffset.UTC));
    }
}
