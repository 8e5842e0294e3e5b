package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.MoonPhase;
import gloam.ephemeris.MoonPhase.Quarter;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.MathUtils;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orekit.bodies.CelestialBodies;
import org.orekit.frames.Frame;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;
import org.orekit.utils.IERSConventions;
import org.orekit.utils.PVCoordinates;

/**
 * The Moon's quarters against apparent geocentric longitudes by Orekit 13.1.8: its reader, its nutation and
 * its ecliptic of date; light's way and aberration are those of the Explanatory Supplement, ch. 7.
 */
class MoonQuarterReferenceTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    private static final Frame ECLIPTIC = LiveOrekit.CONTEXT.getFrames()
            .getEcliptic(IERSConventions.IERS_2010);
    private static final double LEAST_RATE_ARCSEC_S = 0.44;
            // the Moon at its slowest, 11.8° a day, less the Sun's 1.02°

    static Stream<Quarter> quarters() {
        return IntStream.of(2001, 2017, 2027, 2044, 2058)
                .mapToObj(year -> Instant.parse(year + "-03-01T00:00:00Z"))
                .flatMap(start -> MoonPhase.quarters(EPHEMERIS, Interval.lasting(start, Duration.ofDays(120)))
                .stream());
    }

    /** To a second. */
    @ParameterizedTest
    @MethodSource("quarters")
    void longitudesDifferByQuartersOfTheCircle(Quarter quarter) {
        AbsoluteDate at = new AbsoluteDate(quarter.at(), LiveOrekit.CONTEXT.getTimeScales().getUTC());
        CelestialBodies bodies = LiveOrekit.bodies(quarter.at().atOffset(ZoneOffset.UTC).getYear());
        double elongation = longitude(bodies, "Moon", at) - longitude(bodies, "Sun", at);
        double wanted = quarter.name().ordinal() / 2 * Math.PI / 2;
        assertEquals(0, Math.toDegrees(MathUtils.normalizeAngle(elongation - wanted, 0)) * 3600,
                LEAST_RATE_ARCSEC_S, quarter.toString());
    }

    private static double longitude(CelestialBodies bodies, String body, AbsoluteDate at) {
        PVCoordinates earth = LiveOrekit.barycentric(bodies, "Earth", at);
        double lightS = 0;
        Vector3D way = Vector3D.ZERO;
        for (int i = 0; i < 4; i++) {
            way = LiveOrekit.barycentric(bodies, body, at.shiftedBy(-lightS)).getPosition()
                    .subtract(earth.getPosition());
            lightS = way.getNorm() / Constants.SPEED_OF_LIGHT;
        }
        Vector3D seen = way.normalize().add(1 / Constants.SPEED_OF_LIGHT, earth.getVelocity());
        return LiveOrekit.CONTEXT.getFrames().getGCRF().getStaticTransformTo(ECLIPTIC, at)
                .transformVector(seen)
                .getAlpha();
    }
}
