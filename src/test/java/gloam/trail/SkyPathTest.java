package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The interpolated way against the ephemeris asked directly, through a whole day with rise and set. */
class SkyPathTest {

    /** A thousandth of the promised 1″ for places. */
    private static final double WITHIN_ARCSEC = 0.001;

    private static final Interval DAY =
            Interval.lasting(Instant.parse("2027-02-06T12:34:56Z"), Duration.ofHours(24));

    static List<Site> sites() {
        return Places.all();
    }

    @ParameterizedTest
    @MethodSource("sites")
    void keepsToTheEphemeris(Site site) {
        Ephemeris ephemeris = OrekitEphemeris.builtIn();
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        for (Target target : List.of(Body.MOON, Body.MARS, Star.at("equator", 100, 0),
                Star.at("south", 10, -50))) {
            SkyPath path = estimator.path(target, DAY);
            for (double sinceS = 0; sinceS <= DAY.seconds(); sinceS += 97) {
                Vector3D exact =
                        ephemeris.position(target, site, path.instant(sinceS)).apparentDirection().vector();
                double offArcsec = Math.toDegrees(Vector3D.angle(exact, path.at(sinceS))) * 3600;
                assertTrue(offArcsec < WITHIN_ARCSEC, () -> target + " is off by " + offArcsec + " arcsec");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sites")
    void instantsComeBack(Site site) {
        SkyPath path = new TrailEstimator(new TurningSky(), site).path(Star.at("", 0, 0), DAY);
        for (double sinceS : new double[] {-5, 0, 0.001, 86400}) {
            assertEquals(sinceS, path.since(path.instant(sinceS)), 1e-9); // nanoseconds
        }
    }

    @Test
    void secondsAndInstantsTurnIntoEachOther() {
        Interval odd = Interval.lasting(Instant.parse("2027-02-06T12:34:56.75Z"), Duration.ofHours(1));
        SkyPath path = new SkyPath(at -> Vector3D.PLUS_K, Air.NONE, odd);
        assertEquals(10.5, path.since(Instant.parse("2027-02-06T12:35:07.25Z")), 1e-9);
        assertEquals(Instant.parse("2027-02-06T12:35:07.25Z"), path.instant(10.5));
    }
}
