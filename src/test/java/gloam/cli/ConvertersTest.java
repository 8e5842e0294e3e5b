package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.ephemeris.Star;
import gloam.gear.Frame;
import gloam.units.BadInput;
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
    @CsvSource({"30s, PT30S", "18m, PT18M", "1h50m, PT1H50M", "PT18M, PT18M", "1h1m1s, PT1H1M1S", "1.5h, PT1H30M",
        "0.25s, PT0.25S", "1H50M, PT1H50M"})
    void durationsAreReadAsPeopleWriteThem(String text, Duration duration) {
        assertEquals(duration, Converters.duration(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "20", "1h50", "0s", "-5m", "PT-5M", "5 parsecs", "1m1h", "P1Y", "999999999h"})
    void otherDurationsAreRefused(String text) {
        assertThrows(BadInput.class, () -> Converters.duration(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "0x10", "1d", "1,5", "", "--5", "1e9999"})
    void onlyPlainNumbersAreNumbers(String text) {
        assertThrows(BadInput.class, () -> Converters.number(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-30", "2027-2-8", "08.02.2027", "+999999999-12-31"})
    void otherDatesAreRefused(String text) {
        assertThrows(BadInput.class, () -> Converters.date(text));
    }

    @ParameterizedTest
    @CsvSource({"2027-02-08T22:30, 2027-02-08T21:30:00Z", "2027-02-08 22:30:15, 2027-02-08T21:30:15Z",
        "2027-02-08T21:30:00Z, 2027-02-08T21:30:00Z", "2027-02-08T22:30+02:00, 2027-02-08T20:30:00Z",
        "2027-07-08T22:30, 2027-07-08T20:30:00Z", "2027-02-08T21:30:00.250Z, 2027-02-08T21:30:00.250Z"})
    void momentsAreTakenByTheClocksOfTheSiteUnlessTheyTellTheirOffset(String text, Instant instant) {
        assertEquals(instant, Moment.parse(text).in(MADRID));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-08", "22:30", "2027-02-08T25:00", "2027-02-30T10:00", "+20270-02-08T10:00Z"})
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
    @CsvSource({"12, 12", "f/12, 12", "F12, 12", "f/11, 11.313708498984761", "45, 45.254833995939045"})
    void markingsOfLensesStandForTheirExactValues(String text, double fNumber) {
        assertEquals(fNumber, new Converters.FNumber().convert(text), 1e-12); // rounding of doubles
    }

    @Test
    void framesAreWidthByHeight() {
        assertEquals(new Frame(80, 60.5), Converters.frame("80x60.5"));
        assertThrows(BadInput.class, () -> Converters.frame("80"));
        assertThrows(BadInput.class, () -> Converters.frame("80x1.2.3"));
        assertThrows(BadInput.class, () -> Converters.frame("80x4"));
    }

    @Test
    void starsMayMove() {
        Star star = Converters.star("101.2872,-16.7161,-546.0,-1223.1");
        assertEquals(-1223.1, star.properMotionDecMasYr());
        assertThrows(BadInput.class, () -> Converters.star("101.2872"));
        assertThrows(BadInput.class, () -> Converters.star("401,10"));
        assertThrows(BadInput.class, () -> Converters.star("1,2,3"));
    }
}
