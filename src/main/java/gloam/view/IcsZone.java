package gloam.view;

import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Locale;

/**
 * A time zone as iCalendar has it: what its clocks were set to last before a span and at each change in it.
 */
final class IcsZone {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss",
            Locale.ROOT);
    private static final LocalDateTime LONG_AGO = LocalDateTime.of(1970, 1, 1, 0, 0);

    private IcsZone() {
    }

    /** Writes the zone with all it takes to read local times of a span. */
    static void write(IcsText ics, ZoneId zone, Interval span) {
        ZoneRules rules = zone.getRules();
        ics.line("BEGIN", "VTIMEZONE").words("TZID", zone.getId());
        ZoneOffsetTransition change = rules.previousTransition(span.start().plusNanos(1));
        if (change == null) {
            ZoneOffset offset = rules.getOffset(span.start());
            observance(ics, rules.isDaylightSavings(span.start()), LONG_AGO, offset, offset);
            change = rules.nextTransition(span.start());
        }
        for (; change != null && change.getInstant().isBefore(span.endExclusive());
                change = rules.nextTransition(change.getInstant())) {
            Instant at = change.getInstant();
            observance(ics, rules.isDaylightSavings(at), change.getDateTimeBefore(), change.getOffsetBefore(),
                    change.getOffsetAfter());
        }
        ics.line("END", "VTIMEZONE");
    }

    private static void observance(IcsText ics, boolean summer, LocalDateTime from, ZoneOffset before,
                                   ZoneOffset after) {
        String kind = summer ? "DAYLIGHT" : "STANDARD";
        ics.line("BEGIN", kind).line("DTSTART", LOCAL.format(from)).line("TZOFFSETFROM", offset(before))
                .line("TZOFFSETTO", offset(after)).line("END", kind);
    }

    /** Such as +0100; with seconds where there are any. */
    private static String offset(ZoneOffset offset) {
        int seconds = offset.getTotalSeconds();
        String form = seconds % 60 == 0 ? "%s%02d%02d" : "%s%02d%02d%02d";
        int size = Math.abs(seconds);
        return String.format(Locale.ROOT, form, seconds < 0 ? "-" : "+", size / 3600, size / 60 % 60,
                size % 60);
    }
}
