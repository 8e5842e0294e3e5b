package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

    @ParameterizedTest
    @CsvSource({"0.4, 0.4 s", "1, 1.0 s", "45, 45 s", "99.4, 99 s", "99.6, 1 min 40 s", "119, 2 min",
            "347, 5 min 50 s",
        "599, 10 min", "1080, 18 min", "6600, 1 h 50 min", "9414, 2 h 40 min", "35990, 10 h", "36000, 10 h",
        "50000, 14 h", "600000, 6.9 d"})
    void exposureHasTwoDigitsThatCanBeSet(double seconds, String text) {
        assertEquals(text, Wording.exposure(seconds));
    }

    @ParameterizedTest
    @CsvSource({"6600, 1 h 50 min", "7200, 2 h", "3661, 1 h 1 min 1 s", "30, 30 s"})
    void lengthIsGivenToTheSecond(double seconds, String text) {
        assertEquals(text, Wording.lasting(seconds));
    }

    @ParameterizedTest
    @CsvSource({"0, N", "11, N", "12, NNE", "90, E", "255, WSW", "350, N"})
    void bearingIsTheNearestOfSixteen(double azimuthDeg, String bearing) {
        assertEquals(bearing, Wording.bearing(azimuthDeg));
    }

    @ParameterizedTest
    @CsvSource({"-0.04, 0.0", "0.04, 0.0", "-0.06, \u22120.1", "0.06, +0.1"})
    void zeroHasNoSign(double stops, String text) {
        assertEquals(text, Wording.signed(stops, 1));
    }

    @ParameterizedTest
    @CsvSource({"11, f/11", "5.6, f/5.6", "12.5, f/12.5"})
    void fNumberIsWrittenAsEngraved(double fNumber, String text) {
        assertEquals(text, Wording.fNumber(fNumber));
    }

    @Test
    void windowsAreRoundedInwards() {
        OffsetDateTime at = OffsetDateTime.parse("2027-02-08T21:59:30.1+01:00");
        assertEquals("22:00", Wording.minuteAfter(at));
        assertEquals("21:59", Wording.minuteBefore(at));
        assertEquals("22:00", Wording.minuteAfter(OffsetDateTime.parse("2027-02-08T22:00:00+01:00")));
    }

    @Test
    void secondsRoundUpIntoTheNextDay() {
        OffsetDateTime at = OffsetDateTime.parse("2027-02-08T23:59:59.7+01:00");
        assertEquals("00:00:00", Wording.second(at));
        assertEquals(LocalDate.of(2027, 2, 9), Wording.secondDate(at));
    }

    @Test
    void dateTellsTheDayOfTheWeek() {
        assertEquals("Mon 2027-02-08", Wording.date(LocalDate.of(2027, 2, 8)));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1e-9, 0", "0.00078, 0.00078", "0.000023, 2.3e-05", "0.0234, 0.023", "12345, 12000"})
    void lightHasTwoDigits(double light, String text) {
        assertEquals(text, Wording.light(light));
    }
}
