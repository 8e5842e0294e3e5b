package gloam.store;

import gloam.units.Nearest;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;

/** Reads dates, times and time zones. */
final class ItemTimes {

    private ItemTimes() {
    }

    /** A date. */
    static LocalDate date(Item item) {
        item.readAs("date");
        String text = item.scalar("a date").text().strip();
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException wrong) {
            throw item.fault("expected a date of the calendar as year-month-day, such as 2027-02-14, found "
                    + Shown.quoted(text));
        }
    }

    /** A time of day. */
    static LocalTime time(Item item) {
        String text = item.text();
        item.readAs("time of day");
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException bad) {
            throw item.fault("expected a time such as 22:30, found " + Shown.quoted(text)
                    + ". Write 24-hour time, hours and minutes with two digits each.");
        }
    }

    /** A moment, by a zone's clocks where it has no offset of its own. */
    static Instant instant(Item item, ZoneId zone) {
        String text = item.text();
        item.readAs("date and time");
        try {
            return DateTimeFormatter.ISO_DATE_TIME.parseBest(text, OffsetDateTime::from, LocalDateTime::from)
                    instanceof OffsetDateTime whole ? whole.toInstant()
                    : LocalDateTime.parse(text).atZone(zone).toInstant();
        } catch (DateTimeException bad) {
            throw item.fault("expected a date and time such as 2027-02-06T22:30, found " + Shown.quoted(text)
                    + ". Write both, 24-hour time, with an offset such as +01:00 "
                    + "if not by the site's clocks.");
        }
    }

    /** A time zone. */
    static ZoneId zone(Item item) {
        item.readAs("time zone");
        String text = item.scalar("a time zone").text().strip();
        try {
            return ZoneId.of(text);
        } catch (DateTimeException wrong) {
            throw item.fault("unknown time zone " + Shown.quoted(text)
                    + Nearest.sentence(text, ZoneId.getAvailableZoneIds())
                    .map(". "::concat)
                    .orElse(". Write Area/City as the tz database does, such as Europe/Madrid, or UTC."));
        }
    }
}
