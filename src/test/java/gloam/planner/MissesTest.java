package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import java.util.List;
import org.junit.jupiter.api.Test;

class MissesTest {

    private static final Direction SOUTH = Direction.ofDegrees(180, 40);

    @Test
    void saysByHowMuchToneAndTrailAreOff() {
        Wish near = Trips.withTrail(Trips.pointed("a", SOUTH, Wish.SkyKind.DARK, new Wish.Tone.Near(-2)), 20, 40);
        assertEquals(List.of("tone 0.6 stops darker than wanted", "trail 5 mm longer than wanted"),
                Misses.of(near, -2.6, 45, 3, 0));
        assertEquals(List.of("trail 4 mm shorter than wanted"), Misses.of(near, -1.95, 16, 3, 0));
    }

    @Test
    void aToneBelowItsBoundMissesNothing() {
        Wish bound = Trips.pointed("a", SOUTH, Wish.SkyKind.DARK, new Wish.Tone.AtMost(-2));
        assertEquals(List.of(), Misses.of(bound, -4, 16, 0, 0));
        assertEquals(List.of("tone 0.5 stops lighter than wanted"), Misses.of(bound, -1.5, 16, 0, 0));
    }
}
