package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {

    private static final Range LATITUDE = new Range("latitude", -90, 90, "deg");
    private static final Range SHARE = new Range("share", 0.25, 0.0001 + 0.9999, "");
    private static final Range DISTANCE = new Range("distance", 0.0001, Double.POSITIVE_INFINITY, "m");

    @ParameterizedTest
    @ValueSource(doubles = {-90, 0, 90})
    void letsThroughWhatIsAllowedEndsIncluded(double value) {
        assertEquals(value, LATITUDE.check(value));
    }

    @Test
    void saysWhatValueUnitAndRange() {
        assertEquals("latitude 95 deg is out of range; give -90 … 90 deg", message(LATITUDE, 95));
        assertEquals("latitude -90.5 deg is out of range; give -90 … 90 deg", message(LATITUDE, -90.5));
        assertEquals("share 0.2 is out of range; give 0.25 … 1", message(SHARE, 0.2));
    }

    @Test
    void saysWhereOnlyTheLeastCounts() {
        assertEquals("distance 0.00001 m is out of range; give 0.0001 m and more",
                message(DISTANCE, 0.00001));
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertEquals("latitude NaN deg is out of range; give -90 … 90 deg", message(LATITUDE, Double.NaN));
        assertEquals("latitude Infinity deg is out of range; give -90 … 90 deg",
                message(LATITUDE, Double.POSITIVE_INFINITY));
    }

    private static String message(Range range, double value) {
        return assertThrows(BadInput.class, () -> range.check(value)).getMessage();
    }
}
