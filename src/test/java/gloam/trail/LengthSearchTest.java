package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class LengthSearchTest {

    private static final Instant OPEN = TurningSky.ZERO;
    private final TrailEstimator estimator =
            new TrailEstimator(new TurningSky(), Places.at(50, 0, 0)).airless();

    @Test
    void aTrailRoundThePoleGrowsEvenly() {
        Framing framing = Framing.level(Direction.ofDegrees(0, 50), Cameras.rectilinear(100, 80, 80));
        Star star = Star.at("", 0, 70);
        Interval found = new LengthSearch(estimator, OPEN, 12)
                .find(open -> new LengthSearch.Shot(framing, star)).orElseThrow();
        double radiusMm = 100 * Math.tan(Math.toRadians(20));
        assertEquals(12 / radiusMm / TurningSky.TURN_RAD_S, found.seconds(), 0.01);
                // a ten-thousandth of a mm
    }

    @Test
    void anAimAtMidExposureShiftsWithTheTime() {
        Star star = Star.at("", 20, 10);
        Framing camera = Framing.level(Direction.ofDegrees(0, 0), Cameras.rectilinear(100, 80, 80));
        Interval found = new LengthSearch(estimator, OPEN, 25).find(open -> new LengthSearch.Shot(
                camera.placing(estimator.direction(star, open.middle()), 10, -5).orElseThrow(), star))
                .orElseThrow();
        Framing framing = camera.placing(estimator.direction(star, found.middle()), 10, -5).orElseThrow();
        Track track = estimator.track(framing, star, found);
        assertEquals(25, track.lengthMm(found), 0.002); // 0.1 s of the search
        assertEquals(10, track.at(found.middle()).orElseThrow().xMm(), 1e-6);
        assertEquals(-5, track.at(found.middle()).orElseThrow().yMm(), 1e-6);
    }

    @Test
    void aTrailAtThePoleNeverGetsLong() {
        Framing framing = Framing.level(Direction.ofDegrees(0, 50), Cameras.rectilinear(100, 80, 80));
        assertTrue(new LengthSearch(estimator, OPEN, 12)
                .find(open -> new LengthSearch.Shot(framing, Star.at("", 0, 89.9))).isEmpty());
    }
}
