package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.Projection;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
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
    void starsInTheCornersRunAroundThePoleAsFarAsTheyStandFromIt() {
        List<StarHere> stars = at(45).starsHere(framing(0, 45), around(3600));
        assertEquals(List.of(StarHere.Where.values()), stars.stream().map(StarHere::where).toList());
        StarHere centre = stars.get(0);
        assertEquals(0, centre.lengthMm(), 1e-6);
        double radiusMm = 40 * Math.sqrt(2);
        List<Double> directionsDeg = List.of(225.0, 135.0, 315.0, 45.0); // anticlockwise round the north pole
        for (int i = 1; i < stars.size(); i++) {
            StarHere corner = stars.get(i);
            assertEquals(3600 * TURN * radiusMm, corner.lengthMm(), 1e-6);
            assertEquals(TURN * radiusMm, corner.motion().speedMmS(), 1e-9);
            assertEquals(radiusMm * (1 - Math.cos(1800 * TURN)), corner.sagittaMm(), 1e-6);
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

    /** Seen from the pole stars circle the zenith: the longest arc in the frame is the one along its inscribed rim. */
    @Test
    void theLongestTrailOfAWheelIsTheOneFurthestOut() {
        Framing up = framing(0, 90);
        double turnRad = Math.PI / 6; // 30°: corners leave the frame at once, points on the rim of the circle stay longest
        double longestMm = at(90).longestTrailMm(up, List.of(around(turnRad / TURN)));
        double rimMm = 40 * turnRad; // a circle of 40 mm touches all four edges
        assertTrue(longestMm > 0.9 * rimMm && longestMm < 1.3 * rimMm, () -> longestMm + " mm, rim " + rimMm + " mm");
    }

    /** A whole turn about a pole at the centre closes: its sagitta is the circle's diameter. */
    @Test
    void aClosedTrailStandsOffItsEndsByItsDiameter() {
        Interval turn = around(2 * Math.PI / TURN);
        StarHere corner = at(90).starsHere(framing(0, 90), turn).stream()
                .filter(here -> here.where() == StarHere.Where.TOP_RIGHT).findFirst().orElseThrow();
        assertEquals(2 * 40 * Math.sqrt(2), corner.sagittaMm(), 0.01);
        assertEquals(2 * Math.PI * 40 * Math.sqrt(2), corner.lengthMm(), 0.01);
    }
}
