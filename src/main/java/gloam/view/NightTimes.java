package gloam.view;

import gloam.ephemeris.Night;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Moments of one night in words, by the clocks at the site and to the minute.
 *
 * <p>A time of the evening's date stands alone, any other has its date: {@code 21:30},
 * {@code Tue 2027-02-09 01:44}. In the columns of a table that names the night its day of the week is enough,
 * {@code Tue 01:44}. What stands without the night, as on a card, has its date in any case. A time that the
 * clocks show twice has its offset from UTC.
 *
 * @param evening date of the evening
 * @param zone    the zone that the clocks keep
 */
public record NightTimes(LocalDate evening, ZoneId zone) {

    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
    private static final int HALF_A_MINUTE_S = 30;

    /** The times of a night at its site. */
    static NightTimes of(Night night) {
        return new NightTimes(night.date(), night.site().zone());
    }

    /** A date with its day of the week, such as Tue 2027-02-09. */
    public static String date(LocalDate date) {
        return day(date) + " " + date;
    }

    /** The dates on which the night begins and ends, such as Mon 2027-02-08 to Tue 2027-02-09. */
    public String dates() {
        LocalDate morning = evening.plusDays(1).atTime(LocalTime.NOON).atZone(zone).toLocalDate();
        return date(evening) + " to " + date(morning);
    }

    /** The nearest minute, such as 20:06 or Tue 2027-02-09 06:37. */
    public String time(Instant at) {
        return time(nearest(at));
    }

    /** The nearest minute, in a table: such as 20:06 or Tue 06:37. */
    public String about(Instant at) {
        return brief(nearest(at));
    }

    /** The first whole minute from which a shutter may be open, in a table: such as 21:30 or Tue 01:44. */
    public String opens(Instant at) {
        return brief(notBefore(at));
    }

    /** The last whole minute until which it may be, in a table. */
    public String closes(Instant at) {
        return brief(at.atZone(zone));
    }

    /** A span to the nearest minutes, such as 20:36–22:14 or 20:06 – Tue 2027-02-09 06:37. */
    public String span(Interval span) {
        return span(span.start(), span.endExclusive());
    }

    /** The clock's hours of a span of the night, such as 20:06–06:37. */
    public String hours(Interval span) {
        return clock(nearest(span.start())) + "–" + clock(nearest(span.endExclusive()));
    }

    /** The same from one moment to another. */
    public String span(Instant from, Instant to) {
        ZonedDateTime start = nearest(from);
        ZonedDateTime end = nearest(to);
        boolean sameDate = start.toLocalDate().equals(end.toLocalDate());
        return time(start) + (sameDate ? "–" + clock(end) : " – " + dated(end));
    }

    /** A span between whole minutes, in a table: such as 21:30–21:55 or Tue 01:44–02:10; one minute alone. */
    public String within(Instant from, Instant to) {
        ZonedDateTime start = from.atZone(zone);
        ZonedDateTime end = to.atZone(zone);
        boolean sameDate = start.toLocalDate().equals(end.toLocalDate());
        return from.equals(to) ? brief(start) : brief(start) + "–" + (sameDate ? clock(end) : brief(end));
    }

    /** The nearest minute with its date, such as Tue 2027-02-09 01:44. */
    public String dated(Instant at) {
        return dated(nearest(at));
    }

    /** When a shutter opens, and closes, with its dates, such as Tue 2027-02-09 01:44 – 02:56. */
    public String exposure(Instant open, Instant close) {
        ZonedDateTime from = notBefore(open);
        ZonedDateTime to = close.atZone(zone);
        return dated(from) + " – " + (from.toLocalDate().equals(to.toLocalDate()) ? clock(to) : dated(to));
    }

    /** The moments at which the clocks show a full hour, not before one moment and before another. */
    public List<ZonedDateTime> fullHours(Instant from, Instant to) {
        List<ZonedDateTime> hours = new ArrayList<>();
        ZonedDateTime start = from.atZone(zone);
        ZonedDateTime hour = full(start) ? start : nextHour(start);
        while (hour.toInstant().isBefore(to)) {
            hours.add(hour);
            hour = nextHour(hour);
        }
        return hours;
    }

    private ZonedDateTime nextHour(ZonedDateTime at) {
        ZonedDateTime next = at.plus(ChronoUnit.HOURS.getDuration().minusNanos(at.toLocalTime().toNanoOfDay()
                % ChronoUnit.HOURS.getDuration().toNanos()));
        if (next.getOffset().equals(at.getOffset())) {
            return next;
        }
        ZonedDateTime changed = zone.getRules().nextTransition(at.toInstant()).getInstant().atZone(zone);
        return full(changed) ? changed : nextHour(changed);
    }

    private static boolean full(ZonedDateTime at) {
        return at.toLocalDateTime().equals(at.toLocalDateTime().truncatedTo(ChronoUnit.HOURS));
    }

    private ZonedDateTime nearest(Instant at) {
        return at.plusSeconds(HALF_A_MINUTE_S).atZone(zone);
    }

    private ZonedDateTime notBefore(Instant at) {
        Instant whole = at.truncatedTo(ChronoUnit.MINUTES);
        return (whole.equals(at) ? whole : whole.plus(1, ChronoUnit.MINUTES)).atZone(zone);
    }

    private String time(ZonedDateTime at) {
        return at.toLocalDate().equals(evening) ? clock(at) : dated(at);
    }

    private String brief(ZonedDateTime at) {
        return at.toLocalDate().equals(evening) ? clock(at) : day(at.toLocalDate()) + " " + clock(at);
    }

    private String dated(ZonedDateTime at) {
        return date(at.toLocalDate()) + " " + clock(at);
    }

    private String clock(ZonedDateTime at) {
        boolean twice = zone.getRules().getValidOffsets(at.toLocalDateTime()).size() > 1;
        String offset = twice ? at.getOffset().getId() : "";
        return String.format(Locale.ROOT, "%02d:%02d%s", at.getHour(), at.getMinute(), offset);
    }

    private static String day(LocalDate date) {
        return DAYS.get(date.getDayOfWeek().getValue() - 1);
    }
}
