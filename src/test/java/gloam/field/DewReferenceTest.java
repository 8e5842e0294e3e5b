package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

class DewReferenceTest {

    private static final Instant AT = Instant.parse("2027-02-08T22:00:00Z");

    /**
     * Dew points by the formula of Alduchov and Eskridge (Journal of Applied Meteorology 35, 1996, 601;
     * 17.625 and 243.04 °C), whose own error is 0.35 °C.
     */
    @ParameterizedTest
    @CsvSource({"20, 50, 9.261", "10, 80, 6.708", "25, 60, 16.698", "5, 90, 3.496", "0, 95, -0.705",
            "-5, 80, -7.916"})
    void agreesWithAnotherPublishedFormula(double temperatureC, double humidityPercent, double pointC) {
        assertEquals(pointC, Dew.pointC(temperatureC, humidityPercent), 0.01);
                // both fit the same tables to that
    }

    /** Over saturated air the dew point is the temperature, by definition. */
    @ParameterizedTest
    @CsvSource({"-20", "0", "15", "30"})
    void saturatedAirIsAtItsDewPoint(double temperatureC) {
        assertEquals(temperatureC, Dew.pointC(temperatureC, 100), 1e-9);
    }

    @Test
    void warnsBeforeTheAirReachesItsDewPoint() {
        assertTrue(new Dew(AT, 5, 3).threatens());
        assertFalse(new Dew(AT, 5, 1).threatens());
    }
}
