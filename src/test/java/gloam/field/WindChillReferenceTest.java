package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindChillReferenceTest {

    private static final Instant AT = Instant.parse("2027-02-08T22:00:00Z");

    /** The wind chill chart of Environment Canada, in whole degrees. */
    @ParameterizedTest
    @CsvSource({"5, 5, 4", "0, 20, -5", "-5, 20, -12", "-10, 20, -18", "-20, 30, -33", "-25, 40, -41",
            "-40, 50, -63",
        "-50, 80, -81"})
    void agreesWithTheChart(double temperatureC, double windKmH, double chartC) {
        assertEquals(chartC, new WindChill(AT, temperatureC, windKmH).feltC(), 0.5);
                // the chart is in whole degrees
    }

    /** Outside what the index is made for, the air's own temperature. */
    @Test
    void leavesWarmAndStillAirAlone() {
        assertEquals(15, new WindChill(AT, 15, 40).feltC());
        assertEquals(-10, new WindChill(AT, -10, 2).feltC());
    }

    /** Environment Canada: from a wind chill of -28 on exposed skin can freeze within 10 to 30 minutes. */
    @Test
    void warnsOfFrostbite() {
        assertTrue(new WindChill(AT, -20, 30).freezesSkin());
        assertFalse(new WindChill(AT, -10, 20).freezesSkin());
    }
}
