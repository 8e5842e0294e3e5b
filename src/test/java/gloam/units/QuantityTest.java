package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    private static final Range LENGTH = new Range("length", -1e6, 1e6, "mm");
    private static final Range HEIGHT = new Range("height", -430, 9000, "m");
    private static final Range FOCUS = new Range("focus", 0.1, Double.POSITIVE_INFINITY, "m");
    private static final Range MINUTES = new Range("time", 0, 6000, "min");
    private static final Range ANGLE = new Range("angle", -360, 360, "deg");
    private static final Range SKY = new Range("sky", 0, 23, "mag/arcsec2");
    private static final Range STOPS = new Range("tone", -9, 9, "stops");
    private static final Range SHARE = new Range("share", 0, 1, "");

    /**
     * Metric prefixes: SI brochure (9th edition), table 7. Inch and foot: the agreement of 1959, 25.4 and
     * 304.8 mm.
     */
    @ParameterizedTest
    @CsvSource({"114, 114", "114mm, 114", "11.4cm, 114", "11.4 cm, 114", "2.3cm, 23", "0.114m, 114",
            "40um, 0.04",
        "40µm, 0.04", "4in, 101.6", "1ft, 304.8", "1 m 14 cm, 1140", "-3mm, -3", "−3 mm, -3", ".5cm, 5",
        "1e2, 100"})
    void lengthsAreExact(String text, double mm) {
        assertEquals(mm, new Quantity(text).in(LENGTH), 0); // decimals, so exact
    }

    @ParameterizedTest
    @CsvSource({"1320, 1320", "1320m, 1320", "1.32 km, 1320", "-0.43km, -430"})
    void thePlainNumberCountsInTheUnitAskedFor(String text, double metres) {
        assertEquals(metres, new Quantity(text).in(HEIGHT), 0); // decimals, so exact
    }

    @ParameterizedTest
    @CsvSource({"90, 90", "90min, 90", "90m, 90", "1h30m, 90", "1.5h, 90", "1:30:00, 90", "PT1H30M, 90",
            "30s, 0.5",
        "1 h 30 min, 90", "1d, 1440"})
    void times(String text, double minutes) {
        assertEquals(minutes, new Quantity(text).in(MINUTES), 0); // decimals, so exact
    }

    @ParameterizedTest
    @CsvSource({"40.41, 40.41", "40.41°, 40.41", "40°24′36″, 40.41", "40°24'36\", 40.41", "40d24m36s, 40.41",
        "40:24:36, 40.41", "40:24.6, 40.41", "-40:24:36, -40.41", "-0°30′, -0.5",
        "40 deg 24.6 arcmin, 40.41"})
    void angles(String text, double degrees) {
        assertEquals(degrees, new Quantity(text).in(ANGLE), 0); // decimals, so exact
    }

    @Test
    void otherUnits() {
        assertEquals(21.4, new Quantity("21.4 mag/arcsec2").in(SKY));
        assertEquals(21.4, new Quantity("21.4mag/arcsec²").in(SKY));
        assertEquals(-2, new Quantity("-2 stops").in(STOPS));
        assertEquals(Double.POSITIVE_INFINITY, new Quantity("infinity").in(FOCUS));
        assertEquals(3, new Quantity("3m").in(FOCUS));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        11.4 s | expected millimetres, found "11.4 s". Units that fit: km, m, ft, in, cm, mm, um.
        long | expected millimetres, found "long". Write a plain number, -1000000 … 1000000 mm.
        11,4cm | expected millimetres, found "11,4cm". Write a point before the decimals.
        1cm 11mm | expected millimetres, found "1cm 11mm". A part may not reach the one before it.
        1.5m 2cm | expected millimetres, found "1.5m 2cm". Only the last part may have a fraction.
        2cm 1m | expected millimetres, found "2cm 1m". A part may not reach the one before it.
        1:30 | expected millimetres, found "1:30". Write a plain number, -1000000 … 1000000 mm.
        20 km | length 20000000 mm is out of range; give -1000000 … 1000000 mm
        """)
    void whatIsNoLengthIsRefused(String text, String problem) {
        assertEquals(problem, assertThrows(BadInput.class, () -> new Quantity(text).in(LENGTH)).getMessage());
    }

    @Test
    void anHourAndAHalfIsNotTakenForAMinuteAndAHalf() {
        assertEquals("expected minutes, found \"1:30\". Write 1h30m or 1m30s, whichever is meant.",
                assertThrows(BadInput.class, () -> new Quantity("1:30").in(MINUTES)).getMessage());
        assertThrows(BadInput.class, () -> Quantity.duration("1:30"));
        assertEquals(Duration.ofMinutes(90), Quantity.duration("1:30:00"));
    }

    /** One per cent is the number 0.01: ISO 80000-1, 7.5. */
    @Test
    void aShareMayBePerCent() {
        assertEquals(0.18, new Quantity("18 %").in(SHARE), 0);
        assertEquals(0.185, new Quantity("18.5%").in(SHARE), 0);
        assertThrows(BadInput.class, () -> new Quantity("180%").in(SHARE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.5mm", "1/2", "", " ", "1e9999", "NaN", "infinity", "0x1"})
    void aPlainShareHasNoUnit(String text) {
        assertThrows(BadInput.class, () -> new Quantity(text).in(SHARE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"40:60", "40°61′", "1:2:3:4", "40°1′61″", "1h90m", "40.5:30", "--4", "4-", "4°N"})
    void minutesAndSecondsStayBelowSixty(String text) {
        assertThrows(BadInput.class, () -> new Quantity(text).in(ANGLE));
        assertThrows(BadInput.class, () -> Quantity.duration(text));
    }
}
