package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.units.Angle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MissTest {

    private static final Direction SOUTH = Direction.ofDegrees(180, 40);

    @Test
    void saysByHowMuchToneAndTrailAreOff() {
        Wish near = Trips.withTrail(Trips.pointed("a", SOUTH, SkyKind.DARK, new Wish.Tone.Near(-2)), 20,
                40);
        assertEquals(List.of(new Miss.Tone(-2.5 + 2), new Miss.Trail(5)),
                Miss.of(near, -2.5, 45, 3, 0, Optional.empty()));
        assertEquals(List.of(new Miss.Trail(-4)), Miss.of(near, -1.95, 16, 3, 0, Optional.empty()));
    }

    @Test
    void aToneBelowItsBoundMissesNothing() {
        Wish bound = Trips.pointed("a", SOUTH, SkyKind.DARK, new Wish.Tone.AtMost(-2));
        assertEquals(List.of(), Miss.of(bound, -4, 16, 0, 0, Optional.empty()));
        assertEquals(List.of(new Miss.Tone(0.5)), Miss.of(bound, -1.5, 16, 0, 0, Optional.empty()));
    }

    @Test
    void countsTheStarsAndTheLightThatAreMissing() {
        Wish stars = Trips.wish("a", new Aim.Point(SOUTH, Angle.ZERO), SkyKind.DARK,
                new Wish.Tone.Free(), new Wish.Records.AtLeast(8));
        assertEquals(List.of(new Miss.Stars(7, 8)), Miss.of(stars, -4, 16, 7, 0.2, Optional.empty()));
        assertEquals(List.of(), Miss.of(stars, -4, 16, 8, 0.2, Optional.empty()));
        Wish mars = Trips.wish("a", new Aim.Point(SOUTH, Angle.ZERO), SkyKind.DARK, new Wish.Tone.Free(),
                new Wish.Records.These(List.of(Body.MARS)));
        assertEquals(List.of(new Miss.TooFaint(Body.MARS, 0.2)),
                Miss.of(mars, -4, 16, 0, 0.2, Optional.of(Body.MARS)));
    }
}
