package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShutterTest {

    private static final Instant DUSK = Instant.parse("2027-02-06T19:00:00Z");
    private static final Interval FIRST = minutes(0, 10);
    private static final Interval SECOND = minutes(30, 40);
    private static final Interval AVAILABLE = minutes(60, 600);

    @Test
    void openingsAreKeptInOrder() {
        Shutter shutter = new Shutter(List.of(SECOND, FIRST), AVAILABLE);
        assertEquals(List.of(FIRST, SECOND), shutter.earlier());
        assertEquals(minutes(0, 600), shutter.span());
        assertEquals(Duration.ofMinutes(20), shutter.openBefore());
        assertEquals(List.of(FIRST, SECOND, minutes(60, 61)), shutter.openings(60));
        assertEquals(List.of(FIRST, SECOND), shutter.openings(0));
    }

    @Test
    void openingsDoNotOverlap() {
        assertThrows(BadInput.class, () -> new Shutter(List.of(minutes(0, 31), SECOND), AVAILABLE));
        assertThrows(BadInput.class, () -> new Shutter(List.of(minutes(50, 61)), AVAILABLE));
        assertThrows(BadInput.class, () -> new Shutter(List.of(minutes(601, 602)), AVAILABLE));
    }

    private static Interval minutes(int from, int to) {
        return new Interval(DUSK.plusSeconds(60L * from), DUSK.plusSeconds(60L * to));
    }
}
