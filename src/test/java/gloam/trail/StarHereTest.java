package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Projection;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the sky draws at the corners of a frame, and its pole, where geometry gives the answers. */
class StarHereTest {

    private static final double TURN = TurningSky.TURN_RAD_S;

    private static TrailEstimator at(double latitudeDeg) {
        return new TrailEstimator(new TurningSky(), Places.at(latitudeDeg, 0, 0)).airless();
    }

    private static Framing framing(double azimuthDeg, double altitudeDeg) {
        return Framing.level(Direction.ofDegrees(azimuthDeg, altitudeDeg), Cameras.rectilinear(100, 80, 80));
    }

    /** A span with its middle at the moment at which right ascension 0 is on the meridian. */
    private static Interval around(double seconds) {
        Duration half = Duration.ofNanos(Math.round(seconds * 5e8));
        return new Interval(TurningSky.ZERO.minus(half), TurningSky.ZERO.plus(half));
    }

    @Test
    void thePoleStandsAtTheHeightOfTheLatitude() {
        CelestialPole north = at(52).pole(framing(0, 40));
        assertTrue(north.north());
        assertEquals(52, north.direction().altitude().degrees(), 1e-7);
        assertEquals(100 * Math.tan(Math.toRadians(12)), north.place().orElseThrow().yMm(), 1e-6);
        assertTrue(north.inFrame());
        CelestialPole south = at(-31).pole(framing(0, 40));
        assertFalse(south.north());
        assertEquals(180, south.direction().azimuth().degrees(), 1e-7);
        assertFalse(south.inFrame());
    }

    @Test
    void starsInTheCornersRunAroundThePoleAndOnlyTouchTheFrame() {
        List<StarHere> stars = at(45).starsHere(framing(0, 45), around(3600));
        assertEquals(List.of(StarHere.Where.values()), stars.stream().map(StarHere::where).toList());
        StarHere centre = stars.get(0);
        assertEquals(0, centre.drawn().orElseThrow().lengthMm(), 1e-6);
        double radiusMm = 40 * Math.sqrt(2);
        List<Double> directionsDeg = List.of(225.0, 135.0, 315.0, 45.0); // anticlockwise round the north pole
        for (int i = 1; i < stars.size(); i++) {
            StarHere corner = stars.get(i);
            assertEquals(Optional.empty(), corner.drawn(),
                    "the circle through the corners lies beside the frame");
            assertEquals(TURN * radiusMm, corner.motion().speedMmS(), 1e-9);
            assertEquals(directionsDeg.get(i - 1), corner.motion().direction().degrees(), 1e-6);
            assertEquals(90 - Math.toDegrees(Math.atan(radiusMm / 100)), corner.star().declinationDeg(),
                    1e-6);
        }
    }

    @Test
    void cornersOutsideTheImageCircleOfAFisheyeHaveNoStars() {
        Framing wide = Framing.level(Direction.ZENITH, Cameras.of(10, 80, 80, Projection.EQUISOLID));
        assertEquals(List.of(StarHere.Where.CENTRE),
                at(45).starsHere(wide, around(3600)).stream().map(StarHere::where).toList());
    }

    /**
     * Seen from the pole stars circle the zenith: the longest arc in the frame is the one along its inscribed
     * rim.
     */
    @Test
    void theLongestTrailOfAWheelIsTheOneFurthestOut() {
        Framing up = framing(0, 90);
        double turnRad = Math.PI / 6;
                // 30°: corners leave the frame at once, points on the rim of the circle stay longest
        double longestMm = at(90).longestTrailMm(up, List.of(around(turnRad / TURN)));
        double rimMm = 40 * turnRad; // a circle of 40 mm touches all four edges
        assertTrue(longestMm > 0.9 * rimMm && longestMm < 1.3 * rimMm, () -> longestMm + " mm, rim " + rimMm
                + " mm");
    }

    /** A whole turn about a pole at the centre closes: its sagitta is the circle's diameter. */
    @Test
    void aClosedTrailStandsOffItsEndsByItsDiameter() {
        Interval turn = around(2 * Math.PI / TURN);
        double radiusMm = 30;
        Star star = Star.at("", 0, 90 - Math.toDegrees(Math.atan(radiusMm / 100)));
        Trail trail = at(90).trail(framing(0, 90), star, turn, Duration.ofHours(1)).orElseThrow();
        assertEquals(2 * radiusMm, trail.sagittaMm(), 0.01);
        assertEquals(2 * Math.PI * radiusMm, trail.lengthMm(), 0.01);
    }

    /**
     * On the equator, looking up: stars run straight to the right, along x = f tan of the angle they turn.
     */
    @Test
    void whatAStarDrawsEndsAtTheFrame() {
        List<StarHere> stars = at(0).starsHere(framing(180, 90), around(23 * 3600));
        Trail centre = stars.get(0).drawn().orElseThrow();
        assertEquals(80, centre.lengthMm(), 2e-5);
        assertEquals(0, centre.sagittaMm(), 1e-6);
        assertEquals(100 * TURN, stars.get(0).motion().speedMmS(), 1e-9);
    }

    /**
     * The rim of a fisheye's circle is where it ceases to see: a star of the equator over its zenith runs
     * 180° of it.
     */
    @Test
    void aFisheyesTrailEndsAtItsRim() {
        Framing up = Framing.level(Direction.ofDegrees(180, 90),
                Cameras.of(10, 80, 80, Projection.EQUIDISTANT));
        Trail trail = at(0).trail(up, Star.at("", 0, 0), around(20 * 3600), Duration.ofHours(1))
                .orElseThrow();
        assertEquals(10 * Math.PI, trail.lengthMm(), 1e-5);
        assertEquals(Math.PI / TURN, trail.stretches().get(0).span().seconds(), 0.01);
        assertEquals(1, trail.stretches().size());
    }
}
