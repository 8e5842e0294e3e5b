package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clock changes as the IANA time zone database has them. */
class NightTimesTest {

    private static NightTimes times(String evening, String zone) {
        return new NightTimes(LocalDate.parse(evening), ZoneId.of(zone));
    }

    @ParameterizedTest
    @CsvSource({"2027-02-08T20:30:00Z, 21:30, 21:30", "2027-02-08T22:59:29Z, 23:59, Tue 00:00",
        "2027-02-08T22:59:30Z, Tue 2027-02-09 00:00, Tue 00:00",
        "2027-02-09T00:44:00Z, Tue 2027-02-09 01:44, Tue 01:44"})
    void aTimeAfterMidnightHasItsDate(String at, String nearest, String opens) {
        NightTimes times = times("2027-02-08", "Europe/Madrid");
        assertEquals(nearest, times.time(Instant.parse(at)));
        assertEquals(opens, times.opens(Instant.parse(at)));
    }

    @ParameterizedTest
    @CsvSource({"2027-02-08T19:00:00Z, 2027-02-08T20:00:00Z, 20:00–21:00, Mon 2027-02-08 20:00 – 21:00",
        "2027-02-08T19:00:00Z, 2027-02-09T00:00:00Z, 20:00 – Tue 2027-02-09 01:00, Mon 2027-02-08 20:00 – "
        + "Tue 2027-02-09 01:00",
        "2027-02-09T00:44:00Z, 2027-02-09T01:56:00Z, Tue 2027-02-09 01:44–02:56, Tue 2027-02-09 01:44 – "
        + "02:56"})
    void aSpanNamesEachDateOnce(String from, String to, String span, String exposure) {
        NightTimes times = times("2027-02-08", "Europe/Madrid");
        assertEquals(span, times.span(Instant.parse(from), Instant.parse(to)));
        assertEquals(exposure, times.exposure(Instant.parse(from), Instant.parse(to)));
    }

    @ParameterizedTest
    @CsvSource({"2027-10-31T00:30:00Z, Sun 01:30+01:00", "2027-10-31T01:30:00Z, Sun 01:30Z",
            "2027-10-31T02:30:00Z, Sun 02:30",
        "2027-10-30T23:30:00Z, Sun 00:30"})
    void aTimeThatComesTwiceSaysWhich(String at, String text) {
        assertEquals(text, times("2027-10-30", "Europe/London").opens(Instant.parse(at)));
    }

    /** In the minute in which the clocks go forward, rounding leads past the hour that is left out. */
    @ParameterizedTest
    @CsvSource({"2027-03-28T00:59:29Z, 01:59, 03:00, 01:59", "2027-03-28T00:59:30Z, 03:00, 03:00, 01:59"})
    void noTimeIsNamedThatClocksSkip(String at, String nearest, String opens, String closes) {
        NightTimes times = times("2027-03-27", "Europe/Madrid");
        assertEquals("Sun 2027-03-28 " + nearest, times.time(Instant.parse(at)));
        assertEquals("Sun " + opens, times.opens(Instant.parse(at)));
        assertEquals("Sun " + closes, times.closes(Instant.parse(at)));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-10-30, Europe/Zurich, 2027-10-30T22:10:00Z, 2027-10-31T03:00:00Z, 01+02:00 02+02:00 02+01:00 "
                + "03+01:00",
        "2027-03-27, Europe/Zurich, 2027-03-27T23:00:00Z, 2027-03-28T02:30:00Z, 00+01:00 01+01:00 03+02:00 "
        + "04+02:00",
        "2027-04-03, Australia/Lord_Howe, 2027-04-03T13:30:00Z, 2027-04-03T17:00:00Z, 01+11:00 02+10:30 "
        + "03+10:30",
        "2027-10-02, Australia/Lord_Howe, 2027-10-02T14:00:00Z, 2027-10-02T18:00:00Z, 01+10:30 03+11:00 "
        + "04+11:00",
        "2027-02-08, Asia/Kathmandu, 2027-02-08T14:15:00Z, 2027-02-08T16:15:00Z, 20+05:45 21+05:45"})
    void fullHoursAreThoseTheClocksShow(String evening, String zone, String from, String to, String hours) {
        assertEquals(hours, String.join(" ",
                times(evening, zone).fullHours(Instant.parse(from), Instant.parse(to)).stream()
                .map(hour -> String.format("%02d%s", hour.getHour(), hour.getOffset())).toList()));
    }

    /** Samoa went from Thursday to Saturday. */
    @ParameterizedTest
    @CsvSource({"2027-02-08, Europe/Madrid, Mon 2027-02-08 to Tue 2027-02-09",
        "2011-12-29, Pacific/Apia, Thu 2011-12-29 to Sat 2011-12-31"})
    void aNightHasTwoDates(String evening, String zone, String dates) {
        assertEquals(dates, times(evening, zone).dates());
    }
}
