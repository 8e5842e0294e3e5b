package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
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

    @Test
    void cloudRunsStraightFromRowToRow() {
        Forecast rising = new Forecast(List.of(row(3, 0.8), row(0, 0.2), row(5, 0.8)));
        assertEquals(0.2, rising.cloudAt(at(0)).orElseThrow(), 1e-12);
        assertEquals(0.6, rising.cloudAt(at(2)).orElseThrow(), 1e-12);
        assertEquals(0.8, rising.cloudAt(at(5)).orElseThrow(), 1e-12);
    }

    @Test
    void saysNothingBeyondItsEnds() {
        Forecast two = new Forecast(List.of(row(0, 0.5), row(2, 0.5)));
        assertTrue(two.cloudAt(at(2.1)).isEmpty());
        assertTrue(two.cloudAt(at(-0.1)).isEmpty());
    }

    @Test
    void needsTwoRowsAtDifferentTimes() {
        assertThrows(BadInput.class, () -> new Forecast(List.of(row(0, 0.5))));
        assertThrows(BadInput.class, () -> new Forecast(List.of(row(0, 0.5), row(0, 0.6))));
    }
}
