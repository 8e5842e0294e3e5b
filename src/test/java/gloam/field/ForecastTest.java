package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ForecastTest {

    private static final Instant START = Instant.parse("2027-02-08T20:00:00Z");

    private static Forecast.Row row(double hours, double cloud) {
        return new Forecast.Row(at(hours), cloud, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Instant at(double hours) {
        return START.plusSeconds(Math.round(hours * 3600));
    }

    /** exp(∫ ln(1 − c) dt / 2 h) of an even half-clouded sky: a half in two hours, a quarter in four. */
    @Test
    void evenCloudHalvesTheChanceInTwoHours() {
        Forecast even = new Forecast(List.of(row(0, 0.5), row(1, 0.5), row(6, 0.5)));
        assertEquals(0.5, even.clearChance(new Interval(at(0.5), at(2.5))).orElseThrow(), 1e-12);
        assertEquals(0.25, even.clearChance(new Interval(at(1), at(5))).orElseThrow(), 1e-12);
    }

    /** Simpson's rule with a thousand steps over what runs straight from 0.2 to 0.8. */
    @Test
    void changingCloudIsIntegrated() {
        Forecast rising = new Forecast(List.of(row(0, 0.2), row(3, 0.8)));
        double sum = 0;
        int steps = 1000;
        for (int i = 0; i <= steps; i++) {
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.log(1 - (0.2 + 0.6 * i / steps));
        }
        double expected = Math.exp(sum / 3 / steps * 3 / 2);
        assertEquals(expected, rising.clearChance(new Interval(at(0), at(3))).orElseThrow(), 1e-9);
    }

    /** No sky is sure: a fraction of 0 counts as 0.02, of 1 as 0.98. */
    @Test
    void neverBecomesSure() {
        Forecast clear = new Forecast(List.of(row(0, 0), row(2, 0)));
        Forecast overcast = new Forecast(List.of(row(0, 1), row(2, 1)));
        assertEquals(0.98, clear.clearChance(new Interval(at(0), at(2))).orElseThrow(), 1e-12);
        assertEquals(0.02, overcast.clearChance(new Interval(at(0), at(2))).orElseThrow(), 1e-12);
    }

    @Test
    void saysNothingBeyondItsEnd() {
        Forecast short1 = new Forecast(List.of(row(0, 0.5), row(2, 0.5)));
        assertTrue(short1.clearChance(new Interval(at(1), at(3))).isEmpty());
        assertTrue(short1.clearChance(new Interval(at(-1), at(1))).isEmpty());
    }

    @Test
    void needsTwoRowsAtDifferentTimes() {
        assertThrows(BadInput.class, () -> new Forecast(List.of(row(0, 0.5))));
        assertThrows(BadInput.class, () -> new Forecast(List.of(row(0, 0.5), row(0, 0.6))));
    }
}
