package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The celestial pole on the real sky. */
class PoleTest {

    private static final Interval NIGHT =
            Interval.lasting(Instant.parse("2027-02-06T18:00:00Z"), Duration.ofHours(11));

    static List<Site> sites() {
        return Places.all();
    }

    @ParameterizedTest
    @MethodSource("sites")
    void starsKeepTheirDistanceFromIt(Site site) {
        TrailEstimator estimator = new TrailEstimator(OrekitEphemeris.builtIn(), site).airless();
        double latitudeDeg = site.latitude().degrees();
        Framing framing = Framing.level(Direction.ofDegrees(latitudeDeg < 0 ? 180 : 0, Math.abs(latitudeDeg)),
                Cameras.rectilinear(100, 80, 80));
        Direction pole = estimator.pole(framing).direction();
        Star star = estimator.starAt(framing, 10, 20, NIGHT);
        double farthestDeg = Double.NEGATIVE_INFINITY;
        double nearestDeg = Double.POSITIVE_INFINITY;
        for (Instant at = NIGHT.start(); at.isBefore(NIGHT.endExclusive()); at = at.plusSeconds(1800)) {
            double distanceDeg = pole.to(estimator.direction(star, at)).degrees();
            farthestDeg = Math.max(farthestDeg, distanceDeg);
            nearestDeg = Math.min(nearestDeg, distanceDeg);
        }
        // Diurnal aberration moves a star by up to 0.32″ either way over a night, annual aberration drifts by
        // up to 0.2″.
        assertEquals(0, (farthestDeg - nearestDeg) * 3600, 0.9);
        assertTrue(nearestDeg > 12);
    }

    @Test
    void refractionLiftsIt() {
        Framing framing = Framing.level(Direction.ofDegrees(0, 40), Cameras.rectilinear(100, 80, 80));
        TrailEstimator estimator = new TrailEstimator(OrekitEphemeris.builtIn(), Places.MID_NORTH);
        double liftArcmin = 60 * estimator.pole(framing).direction().altitude()
                .minus(Places.MID_NORTH.latitude()).degrees();
        // Bennett 1982: 1′/tan(44.2° + 7.31/48.6 °) = 1.02′ at 1010 hPa and 10 °C; thinner air at 620 m takes
        // 6 %.
        assertEquals(0.96, liftArcmin, 0.03);
    }
}
