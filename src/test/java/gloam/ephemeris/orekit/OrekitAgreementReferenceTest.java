package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.orekit.EarthOrientation.Values;
import gloam.ephemeris.orekit.EarthTurn.Equator;
import gloam.ephemeris.orekit.JplEphemeris.Item;
import gloam.support.FinalsColumns;
import gloam.support.Places;
import gloam.support.Samples;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.data.ClasspathCrawler;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.Frame;
import org.orekit.frames.ITRFVersion;
import org.orekit.frames.ITRFVersionLoader.ITRFVersionConfiguration;
import org.orekit.frames.TopocentricFrame;
import org.orekit.frames.Transform;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;
import org.orekit.utils.Constants;
import org.orekit.utils.IERSConventions;
import org.orekit.utils.TimeStampedPVCoordinates;

/**
 * The shipped tables and their quick use against Orekit 13.1.8 itself, its full series and its own reader.
 */
class OrekitAgreementReferenceTest {

    private static final double ARCSEC_RAD = Math.PI / 180 / 3600;
    private static final double LEAP_S = 37 + 32.184;
    private static final LazyLoadedDataContext OREKIT = orekit();
    private static final PoleSeries SERIES = new PoleSeries(open("leap-seconds.tsv", LeapSeconds::read));
    private static final JplEphemeris PLANETS = open("unxp2000.405", in -> JplEphemeris.of(in.readAllBytes()));
    private static final CelestialPole POLE =
            open("celestial-pole.bin", in -> CelestialPole.read(in, SERIES));

    static Stream<Named<Double>> times() {
        return Samples.of(12,
                random -> random.nextDouble(PLANETS.firstS() + 13 * 86400, PLANETS.lastS() - 60 * 86400));
    }

    /** Both read the same file: what is left is Orekit's TDB − TT, 1.7 ms at most, and rounding. */
    @ParameterizedTest
    @MethodSource("times")
    void readsTheSamePlaces(double tdbS) {
        AbsoluteDate date = new AbsoluteDate(OREKIT.getTimeScales().getJ2000Epoch(), tdbS);
        Frame barycentre = OREKIT.getCelestialBodies().getSolarSystemBarycenter()
                .getInertiallyOrientedFrame();
        TimeStampedPVCoordinates earth = OREKIT.getCelestialBodies().getEarth()
                .getPVCoordinates(date, barycentre);
        assertNear(earth.getPosition(), PLANETS.earth(tdbS).positionKm(), 0.1);
        assertNear(earth.getVelocity(), PLANETS.earth(tdbS).velocityKmS(), 1e-7);
        assertNear(OREKIT.getCelestialBodies().getMoon()
                .getPosition(date, barycentre), PLANETS.moonKm(tdbS), 0.1);
        assertNear(OREKIT.getCelestialBodies().getMars().getPosition(date, barycentre),
                PLANETS.positionKm(Item.MARS, tdbS), 0.1);
        assertNear(OREKIT.getCelestialBodies().getSun().getPosition(date, barycentre),
                PLANETS.positionKm(Item.SUN, tdbS), 0.1);
    }

    /** Interpolation between the days of the table may cost 0.001″ of the 0.01″ allowed for orientation. */
    @ParameterizedTest
    @MethodSource("times")
    void turnsTheEarthTheSameWay(double utcS) {
        double ttS = utcS + LEAP_S;
        AbsoluteDate date = new AbsoluteDate(OREKIT.getTimeScales().getJ2000Epoch(), ttS);
        Frame celestial = OREKIT.getFrames().getGCRF();
        EarthTurn turn = EarthTurn.at(ttS, utcS, Values.UNKNOWN, POLE.at(ttS));
        Equator equator = turn.equator();
        Transform toDate = celestial.getTransformTo(OREKIT.getFrames()
                .getTOD(IERSConventions.IERS_2010, true), date);
        assertNear(toDate.getInverse().transformVector(Vector3D.PLUS_I), equator.equinox());
        assertNear(toDate.getInverse().transformVector(Vector3D.PLUS_K), equator.pole());
        OneAxisEllipsoid earth = new OneAxisEllipsoid(Constants.WGS84_EARTH_EQUATORIAL_RADIUS,
                Constants.WGS84_EARTH_FLATTENING, OREKIT.getFrames()
                .getITRF(IERSConventions.IERS_2010, true));
        TopocentricFrame place = new TopocentricFrame(earth,
                new GeodeticPoint(Math.toRadians(55.2), Math.toRadians(-2.3), 250), "place");
        GroundPoint.Axes axes = new GroundPoint(Places.at(55.2, -2.3, 250)).at(turn);
        Transform fromPlace = place.getTransformTo(celestial, date);
        assertNear(fromPlace.transformVector(Vector3D.PLUS_I), turn.pole().toCelestial(axes.east()));
        assertNear(fromPlace.transformVector(Vector3D.PLUS_K), turn.pole().toCelestial(axes.up()));
        Vector3D fromCentre = fromPlace.transformPosition(Vector3D.ZERO);
        assertEquals(0, fromCentre.scalarMultiply(1e-3)
                .distance(hipparchus(turn.pole().toCelestial(axes.positionKm()))),
                1e-4, "0.1 m on the ground is 0.003 arcsec of turn");
    }

    /** A file of the IERS's columns, its Bulletin A alone: both read the same digits, what is left is rounding. */
    @Test
    void readsTheSameEarthOrientation() throws IOException {
        String text = FinalsColumns.february2027();
        LeapSeconds leapSeconds = open("leap-seconds.tsv", LeapSeconds::read);
        Map<Integer, EOPEntry> expected = EopHistoryLoader.Parser.newFinalsColumnsParser(IERSConventions.IERS_2010,
                (name, mjd) -> new ITRFVersionConfiguration("", ITRFVersion.ITRF_2020, Integer.MIN_VALUE,
                        Integer.MAX_VALUE), OrekitTime.of(leapSeconds).scales(), true)
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)), "finals2000A").stream()
                .collect(Collectors.toMap(EOPEntry::getMjd, entry -> entry));
        List<FinalsLine> days = FinalsLine.of(Path.of("finals2000A"), text);
        assertEquals(28, days.size());
        for (FinalsLine day : days) {
            EOPEntry entry = expected.get(day.mjd());
            assertEquals(entry.getUT1MinusUTC(), day.ut1MinusUtcS(), 1e-12);
            assertEquals(entry.getX() / ARCSEC_RAD, day.xPoleArcsec(), 1e-12);
            assertEquals(entry.getY() / ARCSEC_RAD, day.yPoleArcsec(), 1e-12);
        }
    }

    private static void assertNear(Vector3D expectedM, Vector actualKm, double tolerance) {
        assertEquals(0, expectedM.scalarMultiply(1e-3).distance(hipparchus(actualKm)), tolerance);
    }

    private static void assertNear(Vector3D expected, Vector actual) {
        assertEquals(0, expected.distance(hipparchus(actual)) / ARCSEC_RAD, 0.003, "arcsec");
    }

    private static Vector3D hipparchus(Vector vector) {
        return new Vector3D(vector.x(), vector.y(), vector.z());
    }

    static LazyLoadedDataContext orekit() {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        context.getDataProvidersManager().addProvider(new ClasspathCrawler("gloam/ephemeris/unxp2000.405"));
        context.getTimeScales().addUTCTAIOffsetsLoader(
                () -> List.of(new OffsetModel(new DateComponents(2000, 1, 1), 37)));
        context.getFrames().addEOPHistoryLoader(IERSConventions.IERS_2010, (converter, history) -> { });
        return context;
    }

    private static <T> T open(String name, Reader<T> reader) {
        try (InputStream in = OrekitEphemeris.class.getResourceAsStream("/gloam/ephemeris/" + name)) {
            return reader.read(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Reader<T> {
        T read(InputStream in) throws IOException;
    }
}
