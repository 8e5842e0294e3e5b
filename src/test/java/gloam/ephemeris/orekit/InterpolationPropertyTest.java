package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Body;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.Samples;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.frames.Frames;
import org.orekit.frames.TopocentricFrame;
import org.orekit.frames.Transform;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;
import org.orekit.utils.PVCoordinates;

/** What is interpolated between samples of Orekit, against Orekit asked at the same instant. */
class InterpolationPropertyTest {

    private static final double ALLOWED_ARCSEC = 0.01;
    private static final double DAY_S = Constants.JULIAN_DAY;
    /** Noon of 2000-01-01, J2000.0, back to its midnight in UTC, and to that of 2060-01-01. */
    private static final double FIRST_S = -DAY_S / 2 + 64.184;
    private static final double LAST_S = 21_914.5 * DAY_S + 69.184;
    private static final EarthOrientation EARTH = new EarthOrientation(List.of());
    private static final SolarSystem SOLAR_SYSTEM = new SolarSystem(EARTH, new YearlyFiles(EARTH));
    private static final Map<Integer, CelestialBodies> YEARS = new ConcurrentHashMap<>();

    static Stream<Named<Double>> times() {
        return Stream.concat(Stream.of(FIRST_S, LAST_S - 1).map(end -> Named.of("end " + end, end)),
                Samples.of(200, random -> random.nextDouble(FIRST_S, LAST_S)));
    }

    /**
     * Both sides of every midnight from the last of December to the first of January, by both years' files.
     */
    static Stream<Named<Double>> newYears() {
        return IntStream.rangeClosed(2001, 2059).boxed().flatMap(year -> Stream.of(-600, -1, 0, 1, 600)
                .map(offsetS -> Named.of(year + " " + offsetS + " s", newYear(year) + offsetS)));
    }

    private static double newYear(int year) {
        return new AbsoluteDate(year, 1, 1, 0, 0, 0, LiveOrekit.CONTEXT.getTimeScales().getTT())
                .durationFrom(LiveOrekit.CONTEXT.getTimeScales().getJ2000Epoch());
    }

    @ParameterizedTest
    @MethodSource("times")
    void bodiesStandWhereOrekitHasThem(double ttS) {
        assertBodies(yearOf(ttS), ttS);
    }

    @ParameterizedTest
    @MethodSource("newYears")
    void filesOfNeighbouringYearsJoin(double ttS) {
        assertBodies(yearOf(ttS + DAY_S / 2), ttS);
        assertBodies(yearOf(ttS - DAY_S / 2), ttS);
    }

    private static int yearOf(double ttS) {
        return Math.max(2000, Math.min(2059, LiveOrekit.yearOf(ttS)));
    }

    private static void assertBodies(int year, double ttS) {
        CelestialBodies bodies = YEARS.computeIfAbsent(year, LiveOrekit::bodies);
        PVCoordinates earth = LiveOrekit.barycentric(bodies, "Earth", LiveOrekit.date(ttS));
        for (Body body : Body.values()) {
            Vector3D expected = LiveOrekit.barycentric(bodies, body.name().charAt(0) + body.label()
                    .substring(1), LiveOrekit.date(ttS)).getPosition().subtract(earth.getPosition());
            Vector3D actual = SOLAR_SYSTEM.positionKm(body, ttS)
                    .subtract(SOLAR_SYSTEM.earthKm(ttS).getPosition());
            assertEquals(0, LiveOrekit.arcsec(expected, actual), ALLOWED_ARCSEC,
                    body.label() + " from the Earth");
            assertEquals(expected.getNorm() / 1000, actual.getNorm(), 1e-7 * actual.getNorm(), body.label());
        }
        assertEquals(0, earth.getVelocity().scalarMultiply(1e-3)
                .distance(SOLAR_SYSTEM.earthKm(ttS).getVelocity()),
                1e-5, "km/s; 1e-5 of the Earth's 30 turn the aberration by 7e-6 arcsec");
    }

    @ParameterizedTest
    @MethodSource("times")
    void theEarthStandsAsOrekitTurnsIt(double ttS) {
        Frames frames = LiveOrekit.CONTEXT.getFrames();
        Instant at = LiveOrekit.date(ttS).toInstant(LiveOrekit.CONTEXT.getTimeScales());
        AbsoluteDate date = new AbsoluteDate(at, LiveOrekit.CONTEXT.getTimeScales().getUTC());
        EarthAttitude attitude = EARTH.attitude(at);
        assertEquals(date.durationFrom(LiveOrekit.date(0)), attitude.ttS(), 1e-6, "s of terrestrial time");
        Transform fromDate = frames.getTOD(EarthOrientation.CONVENTIONS, true)
                .getTransformTo(frames.getGCRF(), date);
        assertNear(fromDate.transformVector(Vector3D.PLUS_I), EARTH.equinox(attitude), "equinox");
        assertNear(fromDate.transformVector(Vector3D.PLUS_K), attitude.pole(), "pole");
        Site site = Places.CLOCK_CHANGE;
        TopocentricFrame place =
                new TopocentricFrame(new OneAxisEllipsoid(Constants.WGS84_EARTH_EQUATORIAL_RADIUS,
                Constants.WGS84_EARTH_FLATTENING, frames.getITRF(EarthOrientation.CONVENTIONS, true)),
                new GeodeticPoint(site.latitude().radians(), site.longitude().radians(), site.heightM()),
                "place");
        Topocentre topocentre = Topocentre.of(Ground.of(site, EARTH.ellipsoid()), attitude, SOLAR_SYSTEM);
        Transform fromPlace = place.getTransformTo(frames.getGCRF(), date);
        assertNear(fromPlace.transformVector(Vector3D.PLUS_I), topocentre.east(),
                "east, that is sidereal time");
        assertNear(fromPlace.transformVector(Vector3D.PLUS_K), topocentre.up(), "zenith");
        assertEquals(0, fromPlace.transformPosition(Vector3D.ZERO).scalarMultiply(1e-3).distance(
                topocentre.positionKm().subtract(SOLAR_SYSTEM.earthKm(attitude.ttS()).getPosition())), 3e-4,
                "km; 0.3 m on the ground are 0.01 arcsec");
    }

    private static void assertNear(Vector3D expected, Vector3D actual, String what) {
        assertEquals(0, LiveOrekit.arcsec(expected, actual), ALLOWED_ARCSEC, what);
    }
}
