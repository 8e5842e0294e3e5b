package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.OutsideCoverage;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import gloam.support.FinalsColumns;
import gloam.support.Places;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.data.DirectoryCrawler;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.frames.TopocentricFrame;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;
import org.orekit.utils.Constants;
import org.orekit.utils.IERSConventions;

/** Files of the user's own. */
class UserFilesTest {

    private static final OrekitEphemeris BUILT_IN = OrekitEphemeris.builtIn();
    private static final Site SITE = Places.MID_NORTH;
    private static final Instant NIGHT = Instant.parse("2027-02-10T22:00:00Z");

    @TempDir
    Path folder;

    @Test
    void takesPlanetsFromAFile() throws IOException {
        OrekitEphemeris own = BUILT_IN.withPlanets(write("unxp2000.405", builtInBytes()));
        assertEquals(BUILT_IN.position(Body.MOON, SITE, NIGHT), own.position(Body.MOON, SITE, NIGHT));
        assertTrue(own.covers().contains(Instant.parse("1999-12-30T00:00:00Z")), own.covers()::toString);
    }

    @Test
    void takesTheOtherOrderOfBytes() throws IOException {
        OrekitEphemeris own = BUILT_IN.withPlanets(write("lnxp2000.405", swapped(builtInBytes())));
        assertEquals(BUILT_IN.position(Body.MARS, SITE, NIGHT), own.position(Body.MARS, SITE, NIGHT));
    }

    @Test
    void takesThePoleFromTheSeriesOutsideTheTable() throws IOException {
        CelestialPole.Pole fromTable;
        CelestialPole.Pole fromSeries;
        double ttS = 9_000.3 * 86_400;
        byte[] emptyTable = ByteBuffer.allocate(8).putInt(0).putInt(0).array();
        try (InputStream leaps = resource("leap-seconds.tsv");
             InputStream pole = resource("celestial-pole.bin")) {
            PoleSeries series = new PoleSeries(LeapSeconds.read(leaps));
            fromTable = CelestialPole.read(pole, series).at(ttS);
            fromSeries = CelestialPole.read(new ByteArrayInputStream(emptyTable), series).at(ttS);
        }
        assertEquals(fromTable.x(), fromSeries.x(), 1e-10, "the table's unit is 1e-11 rad");
        assertEquals(fromTable.y(), fromSeries.y(), 1e-10);
        assertEquals(fromTable.originRad(), fromSeries.originRad(), 1e-10);
    }

    @Test
    void refusesWhatIsNoEphemeris() throws IOException {
        assertRefused("there is no such file", () -> BUILT_IN.withPlanets(folder.resolve("no such file")));
        Path text = write("text.405", new byte[10_000]);
        assertRefused("JPL's binary form", () -> BUILT_IN.withPlanets(text));
        Path cut = write("cut.405", Arrays.copyOf(builtInBytes(), 15_000));
        assertRefused("do not follow", () -> BUILT_IN.withPlanets(cut));
    }

    /** UT1 and polar motion, invented, against Orekit reading the same file. */
    @Test
    void turnsTheEarthAsMeasured() throws IOException {
        Path finals = write("finals2000A.all", FinalsColumns.february2027().getBytes(StandardCharsets.US_ASCII));
        OrekitEphemeris measured = BUILT_IN.withEarthOrientation(finals);
        SkyPosition with = measured.position(Body.SATURN, SITE, NIGHT);
        Vector3D expected = inOrekit(with, BUILT_IN.position(Body.SATURN, SITE, NIGHT));
        double azimuthRad = Math.atan2(expected.getX(), expected.getY());
        assertEquals(0, with.azimuth().minus(Angle.ofRadians(azimuthRad)).signed().arcsec(), 0.02,
                "linear between days, Orekit to the third order");
        assertEquals(Math.toDegrees(Math.asin(expected.getZ())) * 3600, with.airlessAltitude()
                .arcsec(), 0.02);
    }

    @Test
    void refusesDatesWithoutMeasurement() throws IOException {
        OrekitEphemeris measured = BUILT_IN.withEarthOrientation(
                write("finals2000A.all", FinalsColumns.february2027().getBytes(StandardCharsets.US_ASCII)));
        OutsideCoverage refusal = assertThrows(OutsideCoverage.class,
                () -> measured.position(Body.SUN, SITE, Instant.parse("2027-06-01T00:00:00Z")));
        assertTrue(refusal.getMessage().contains("2027-02-01 … 2027-02-27"), refusal.getMessage());
        Path text = write("text.all", "no columns here".getBytes(StandardCharsets.US_ASCII));
        assertRefused("finals2000A", () -> BUILT_IN.withEarthOrientation(text));
    }

    /**
     * The airless direction of right ascension and declination in Orekit's topocentric frame: east, north,
     * up.
     */
    private Vector3D inOrekit(SkyPosition with, SkyPosition without) {
        assertTrue(Math.abs(with.azimuth().minus(without.azimuth()).arcsec()) > 1,
                "0.4 s of UT1 are 6 arcsec");
        LazyLoadedDataContext orekit = new LazyLoadedDataContext();
        orekit.getDataProvidersManager().addProvider(new DirectoryCrawler(folder.toFile()));
        orekit.getTimeScales().addUTCTAIOffsetsLoader(
                () -> List.of(new OffsetModel(new DateComponents(2017, 1, 1), 37)));
        AbsoluteDate date = new AbsoluteDate(NIGHT, orekit.getTimeScales().getUTC());
        OneAxisEllipsoid earth = new OneAxisEllipsoid(Constants.WGS84_EARTH_EQUATORIAL_RADIUS,
                Constants.WGS84_EARTH_FLATTENING, orekit.getFrames()
                .getITRF(IERSConventions.IERS_2010, true));
        TopocentricFrame place = new TopocentricFrame(earth, new GeodeticPoint(SITE.latitude().radians(),
                SITE.longitude().radians(), SITE.heightM()), "place");
        return orekit.getFrames().getTOD(IERSConventions.IERS_2010, true).getTransformTo(place, date)
                .transformVector(new Vector3D(with.rightAscension().radians(), with.declination().radians()));
    }

    private static void assertRefused(String why, Executable opening) {
        BadInput refusal = assertThrows(BadInput.class, opening);
        assertTrue(refusal.getMessage().contains(why), refusal.getMessage());
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static byte[] builtInBytes() throws IOException {
        try (InputStream in = resource("unxp2000.405")) {
            return in.readAllBytes();
        }
    }

    private static byte[] swapped(byte[] bytes) {
        ByteBuffer from = ByteBuffer.wrap(bytes).order(ByteOrder.BIG_ENDIAN);
        ByteBuffer to = ByteBuffer.wrap(bytes.clone()).order(ByteOrder.LITTLE_ENDIAN);
        int recordBytes = 800 * Double.BYTES;
        for (int at = 2652; at < 2676; at += Double.BYTES) {
            to.putDouble(at, from.getDouble(at));
        }
        to.putInt(2676, from.getInt(2676));
        to.putDouble(2680, from.getDouble(2680)).putDouble(2688, from.getDouble(2688));
        for (int at = 2696; at < 2856; at += Integer.BYTES) {
            to.putInt(at, from.getInt(at));
        }
        for (int at = recordBytes; at < bytes.length; at += Double.BYTES) {
            to.putDouble(at, from.getDouble(at));
        }
        return to.array();
    }

    private static InputStream resource(String name) {
        return OrekitEphemeris.class.getResourceAsStream("/gloam/ephemeris/" + name);
    }
}
