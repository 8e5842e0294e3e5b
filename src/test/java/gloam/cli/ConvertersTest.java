package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Star;
import gloam.gear.Frame;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConvertersTest {

    private static final ZoneId MADRID = ZoneId.of("Europe/Madrid");

    @ParameterizedTest
    @CsvSource({"30s, PT30S", "18m, PT18M", "1h50m, PT1H50M", "PT18M, PT18M", "1h1m1s, PT1H1M1S",
            "1.5h, PT1H30M",
        "0.25s, PT0.25S", "1H50M, PT1H50M"})
    void durationsAreReadAsPeopleWriteThem(String text, Duration duration) {
        assertEquals(duration, Quantity.duration(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "20", "1h50", "0s", "-5m", "PT-5M", "5 parsecs", "1m1h", "P1Y",
            "999999999h"})
    void otherDurationsAreRefused(String text) {
        assertThrows(BadInput.class, () -> Quantity.duration(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "0x10", "1d", "1,5", "", "--5", "1e9999"})
    void onlyPlainNumbersAreNumbers(String text) {
        assertThrows(BadInput.class, () -> Quantity.number(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-30", "2027-2-8", "08.02.2027", "+999999999-12-31"})
    void otherDatesAreRefused(String text) {
        assertThrows(BadInput.class, () -> Converters.date(text));
    }

    @ParameterizedTest
    @CsvSource({"2027-02-08T22:30, 2027-02-08T21:30:00Z", "2027-02-08 22:30:15, 2027-02-08T21:30:15Z",
        "2027-02-08T21:30:00Z, 2027-02-08T21:30:00Z", "2027-02-08T22:30+02:00, 2027-02-08T20:30:00Z",
        "2027-07-08T22:30, 2027-07-08T20:30:00Z", "2027-02-08T22:30 UTC, 2027-02-08T22:30:00Z",
        "2027-02-08 22:30 America/New_York, 2027-02-09T03:30:00Z",
        "2027-02-08T22:30[Asia/Kathmandu], 2027-02-08T16:45:00Z",
        "2027-02-08T22:30+0530, 2027-02-08T17:00:00Z", "2027-02-08T21:30:00.250Z, 2027-02-08T21:30:00.250Z"})
    void momentsAreTakenByTheClocksOfTheSiteUnlessTheyTellTheirOffset(String text, Instant instant) {
        assertEquals(instant, Moment.parse(text).in(MADRID));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-08", "22:30", "2027-02-08T25:00", "2027-02-30T10:00",
            "+20270-02-08T10:00Z"})
    void otherMomentsAreRefused(String text) {
        assertThrows(BadInput.class, () -> Moment.parse(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-03-28T02:30", "2027-10-31T02:30"})
    void timesThatClocksSkipOrRepeatAreRefused(String text) {
        Moment moment = Moment.parse(text);
        assertThrows(BadInput.class, () -> moment.in(MADRID));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        2027-02-08 9:30 pm | "2027-02-08 9:30 pm" is 12-hour time; use 24-hour time, 21:30
        2027-02-08T9:30PM | "2027-02-08T9:30PM" is 12-hour time; use 24-hour time, 21:30
        2027-02-08 9 a.m. | "2027-02-08 9 a.m." is 12-hour time; use 24-hour time, 09:00
        2027-02-08 12:30 am | "2027-02-08 12:30 am" is 12-hour time; use 24-hour time
        """)
    void halvesOfADayAreRefusedWithTheTimeOfTwentyFourHours(String text, String problem) {
        assertEquals(problem, assertThrows(BadInput.class, () -> Moment.parse(text)).getMessage());
    }

    @Test
    void anHourOfOneDigitMayBeMorningOrEvening() {
        assertTrue(assertThrows(BadInput.class, () -> Moment.parse("2027-02-08 9:30")).getMessage()
                .endsWith("Write the hour with two digits of 24, 2027-02-08 09:30"));
        assertThrows(BadInput.class, () -> Moment.parse("2027-02-08T22:30+01:00 Europe/Madrid"));
        assertTrue(assertThrows(BadInput.class, () -> Moment.parse("2027-02-08T22:30 Europe/Madird"))
                .getMessage()
                .contains("did you mean Europe/Madrid?"));
    }

    /** Spain's clocks, tz database: 2027-03-28 01:00 UTC on and 2027-10-31 01:00 UTC back. */
    @Test
    void timesThatClocksSkipOrRepeatAreTold() {
        assertEquals("2027-03-28T02:30 does not exist in Europe/Madrid: the clocks go from 02:00 on to "
                + "03:00. Give a time before or after that", refusal(Moment.parse("2027-03-28T02:30")));
        assertEquals("2027-10-31T02:30 comes twice in Europe/Madrid: the clocks go back from 03:00 to "
                + "02:00. Give "
                + "2027-10-31T02:30+02:00 for the first time or 2027-10-31T02:30+01:00 for the second",
                refusal(Moment.parse("2027-10-31T02:30")));
        assertEquals(Instant.parse("2027-10-31T00:30:00Z"), Moment.parse("2027-10-31T02:30+02:00")
                .in(MADRID));
        assertEquals(Instant.parse("2027-10-31T01:30:00Z"), Moment.parse("2027-10-31T02:30+01:00")
                .in(MADRID));
    }

    private static String refusal(Moment moment) {
        return assertThrows(BadInput.class, () -> moment.in(MADRID)).getMessage();
    }

    /** The three forms of an interval, ISO 8601-1:2019, 5.5.1. */
    @ParameterizedTest
    @ValueSource(strings = {"2027-02-08T20:10/40m", "2027-02-08T20:10/PT40M",
            "2027-02-08T20:10/2027-02-08T20:50",
        "PT40M/2027-02-08T20:50", "2027-02-08T19:10Z/2027-02-08T20:50", "2027-02-08T20:10 Europe/Madrid/40m",
        "2027-02-08 20:10 / 2027-02-08 20:50", "2027-02-08T20:10[Europe/Madrid]/2027-02-08T19:50Z"})
    void openingsAreIntervals(String text) {
        assertEquals(Interval.lasting(Instant.parse("2027-02-08T19:10:00Z"), Duration.ofMinutes(40)),
                TimedOpening.parse(text).in(MADRID));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-08T20:10", "40m/40m", "2027-02-08T20:10/", "/40m",
            "2027-02-08T20:10/20:50",
        "2027-02-08T20:50/2027-02-08T20:10", "2027-02-08T20:10/2027-02-08T20:10", "2027-02-08T20:10/40"})
    void otherOpeningsAreRefused(String text) {
        assertThrows(BadInput.class, () -> TimedOpening.parse(text).in(MADRID));
    }

    @Test
    void framesAreWidthByHeight() {
        assertEquals(new Frame(80, 80), Frame.of("8x8cm"));
        assertEquals(new Frame(80, 60), Frame.of("80 mm × 6 cm"));
        assertEquals(new Frame(101.6, 127), Frame.of("4x5in"));
        assertEquals(new Frame(80, 60.5), Frame.of("80x60.5"));
        assertThrows(BadInput.class, () -> Frame.of("80"));
        assertThrows(BadInput.class, () -> Frame.of("80x1.2.3"));
        assertThrows(BadInput.class, () -> Frame.of("80x4"));
    }

    @Test
    void starsMayMove() {
        Star star = Star.parse("101.2872,-16.7161,-546.0,-1223.1");
        assertEquals(-1223.1, star.properMotionDecMasYr());
        assertThrows(BadInput.class, () -> Star.parse("101.2872"));
        assertThrows(BadInput.class, () -> Star.parse("401,10"));
        assertThrows(BadInput.class, () -> Star.parse("1,2,3"));
    }
}
