package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Straight, curved and pole-circling trails at three latitudes against formulas of other books: the horizon's
 * coordinates by Meeus, Astronomical Algorithms, 2nd ed., (13.5) and (13.6), the gnomonic projection by
 * Snyder 1987, US Geological Survey Professional Paper 1395, (22-4), (22-5) and (5-3).
 */
class ProjectionReferenceTest {

    private static final double FOCAL_LENGTH_MM = 90;

    @ParameterizedTest
    @CsvSource({
        // latitude, aim, declination, hours from the meridian at the middle
        "60,  180, 30,  0,   0",    // the equator in the south: straight
        "60,  180, 30, -15,  0.5",  // below it: curved
        "60,  0,   60,  70,  12",   // round the pole, below it
        "0,   270, 20,  0,   5",    // the equator due west: straight down
        "0,   270, 20,  25,  5",
        "0,   0,   5,   80,  0",    // round the pole on the horizon
        "-35, 0,   55,  0,   0",
        "-35, 0,   45,  15,  -1",
        "-35, 180, 35,  -75, 9",    // round the south pole
    })
    void trailsFallWhereTheBooksPutThem(double latitudeDeg, double azimuthDeg, double altitudeDeg,
    double declinationDeg,
                                        double hours) {
        TrailEstimator estimator = new TrailEstimator(new TurningSky(), Places.at(latitudeDeg, 0, 0))
                .airless();
        Star star = Star.at("", Math.floorMod(Math.round(-15 * hours * 1000), 360_000) / 1000.0,
                declinationDeg);
        Interval span = new Interval(TurningSky.ZERO.minusSeconds(3600), TurningSky.ZERO.plusSeconds(3600));
        Framing framing = Framing.level(Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Cameras.rectilinear(FOCAL_LENGTH_MM, 150, 150));
        Trail trail = estimator.trail(framing, star, span, Duration.ofMinutes(10)).orElseThrow();
        assertTrue(trail.points().size() >= 3);
        for (Trail.Point point : trail.points()) {
            double sinceS = Duration.between(TurningSky.ZERO, point.at()).toNanos() * 1e-9;
            double hourRad = sinceS * TurningSky.TURN_RAD_S - Math.toRadians(star.rightAscensionDeg());
            double[] expected = gnomonic(azimuthDeg, altitudeDeg,
                    horizon(Math.toRadians(latitudeDeg), Math.toRadians(declinationDeg), hourRad));
            assertEquals(expected[0], point.xMm(), 1e-5);
                    // points stand on full nanoseconds and interpolated places
            assertEquals(expected[1], point.yMm(), 1e-5);
        }
    }

    /** Azimuth from north and altitude in radians. */
    private static double[] horizon(double latitudeRad, double declinationRad, double hourRad) {
        double fromSouthRad = Math.atan2(Math.sin(hourRad),
                Math.cos(hourRad) * Math.sin(latitudeRad) - Math.tan(declinationRad) * Math.cos(latitudeRad));
        double altitudeRad = Math.asin(Math.sin(latitudeRad) * Math.sin(declinationRad)
                + Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.cos(hourRad));
        return new double[] {fromSouthRad + Math.PI, altitudeRad};
    }

    private static double[] gnomonic(double azimuthDeg, double altitudeDeg, double[] place) {
        double centreRad = Math.toRadians(altitudeDeg);
        double eastRad = place[0] - Math.toRadians(azimuthDeg);
        double cosine = Math.sin(centreRad) * Math.sin(place[1])
                + Math.cos(centreRad) * Math.cos(place[1]) * Math.cos(eastRad);
        return new double[] {FOCAL_LENGTH_MM * Math.cos(place[1]) * Math.sin(eastRad) / cosine,
            FOCAL_LENGTH_MM * (Math.cos(centreRad) * Math.sin(place[1])
                    - Math.sin(centreRad) * Math.cos(place[1]) * Math.cos(eastRad)) / cosine};
    }
}
