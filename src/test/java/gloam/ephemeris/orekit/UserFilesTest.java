package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.OutsideCoverage;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.support.FinalsColumns;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of the user's own. */
class UserFilesTest {

    private static final OrekitEphemeris BUILT_IN = OrekitEphemeris.builtIn();
    private static final Site SITE = Places.MID_NORTH;
    private static final Instant NIGHT = Instant.parse("2027-02-10T22:00:00Z");

    @TempDir
    Path folder;

    @Test
    void takesPlanetsFromAFile() throws IOException {
        OrekitEphemeris own = BUILT_IN.withPlanets(write("unxp2027.405", builtInBytes()));
        assertEquals(BUILT_IN.position(Body.MOON, SITE, NIGHT), own.position(Body.MOON, SITE, NIGHT));
        assertTrue(own.covers().contains(Instant.parse("2028-01-20T00:00:00Z")), own.covers()::toString);
    }

    @Test
    void takesTheOtherOrderOfBytes() throws IOException {
        OrekitEphemeris own = BUILT_IN.withPlanets(write("lnxp2027.405", swapped(builtInBytes())));
        assertEquals(BUILT_IN.position(Body.MARS, SITE, NIGHT), own.position(Body.MARS, SITE, NIGHT));
    }

    @Test
    void refusesWhatIsNoEphemeris() throws IOException {
        assertRefused("there is no such file", () -> BUILT_IN.withPlanets(folder.resolve("no such file")));
        Path text = write("text.405", new byte[10_000]);
        assertRefused("JPL's binary form", () -> BUILT_IN.withPlanets(text));
        Path cut = write("cut.405", Arrays.copyOf(builtInBytes(), 15_000));
        assertRefused("covers 2026-11-17", () -> BUILT_IN.withPlanets(cut));
    }

    /** Whatever dates, amounts and masses a damaged head names, they are no reason for a stack trace. */
    @Test
    void refusesDamagedHeads() throws IOException {
        byte[] endless = ByteBuffer.wrap(builtInBytes()).putDouble(2660, 1e300).array();
        assertRefused("its header is damaged", () -> BUILT_IN.withPlanets(write("unxp2027.405", endless)));
        byte[] huge = ByteBuffer.wrap(builtInBytes()).putInt(2700, Integer.MAX_VALUE / 3).array();
        assertRefused("its header is damaged", () -> BUILT_IN.withPlanets(write("unxp2027.405", huge)));
        byte[] ancient = ByteBuffer.wrap(builtInBytes()).putDouble(2652, 2.3e6).putDouble(2660, 2.4e6)
                .array();
        assertRefused("1972", () -> BUILT_IN.withPlanets(write("unxp2027.405", ancient)));
        byte[] damaged = builtInBytes();
        Arrays.fill(damaged, 14_000, 18_000, (byte) 0x7f);
        assertRefused("no sound place of", () -> BUILT_IN.withPlanets(write("unxp2027.405", damaged)));
    }

    static Stream<Row> measuredEarth() {
        return ReferenceTable.read("erfa/measured-earth.csv").stream();
    }

    /** UT1 and polar motion, invented: the tolerance and its reason stand in the head of the table. */
    @ParameterizedTest
    @MethodSource("measuredEarth")
    void turnsTheEarthAsMeasured(Row row) throws IOException {
        OrekitEphemeris measured = BUILT_IN.withEarthOrientation(finals(FinalsColumns.february2027()));
        Star star = new Star(row.text("star"), row.number("ra_icrs_deg"), row.number("dec_icrs_deg"),
                row.number("pm_ra_cosdec_mas_yr"), row.number("pm_dec_mas_yr"), row.number("parallax_mas"), 0,
                0);
        Site site = Places.at(row.number("latitude_deg"), row.number("longitude_deg"),
                row.number("height_m"));
        SkyPosition seen = measured.position(star, site, row.instant("utc"));
        Angle azimuth = Angle.ofDegrees(row.number("azimuth_deg"));
        Angle altitude = Angle.ofDegrees(row.number("altitude_airless_deg"));
        assertEquals(0, seen.azimuth().minus(azimuth).signed().arcsec() * altitude.cos(), 0.02,
                "azimuth times cosine");
        assertEquals(0, seen.airlessAltitude().minus(altitude).arcsec(), 0.02, "altitude");
        SkyPosition without = BUILT_IN.position(star, site, row.instant("utc"));
        assertTrue(without.apparentDirection().to(seen.apparentDirection()).arcsec() > 0.05,
                "the file counts");
    }

    @Test
    void endsWhereUt1Ends() throws IOException {
        String[] days = FinalsColumns.february2027().split("\\R");
        days[20] = days[20].substring(0, 15);
        OrekitEphemeris measured = BUILT_IN.withEarthOrientation(finals(String.join("\n", days)));
        assertEquals("2027-02-20T00:00:00Z", measured.covers().endExclusive().toString());
    }

    @Test
    void refusesDamagedDays() throws IOException {
        String[] days = FinalsColumns.february2027().split("\\R");
        assertRefused("line", () -> BUILT_IN.withEarthOrientation(finals(
                String.join("\n", days).replace("0.3965000", "0.39x5000"))));
        assertRefused("on modified Julian date 61442 UT1 - UTC 9.3965 s is out of range", () -> BUILT_IN
                .withEarthOrientation(finals(String.join("\n", days).replace("0.3965000", "9.3965000"))));
        days[9] = days[8];
        assertRefused("2027-02-09", () -> BUILT_IN.withEarthOrientation(finals(String.join("\n", days))));
    }

    private Path finals(String text) throws IOException {
        return write("finals2000A.all", text.getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void refusesDatesWithoutMeasurement() throws IOException {
        OrekitEphemeris measured = BUILT_IN.withEarthOrientation(
                finals(FinalsColumns.february2027()));
        OutsideCoverage refusal = assertThrows(OutsideCoverage.class,
                () -> measured.position(Body.SUN, SITE, Instant.parse("2027-06-01T00:00:00Z")));
        assertTrue(refusal.getMessage().contains("2027-02-01 … 2027-02-27"), refusal.getMessage());
        Path text = write("text.all", "no columns here".getBytes(StandardCharsets.US_ASCII));
        assertRefused("finals2000A", () -> BUILT_IN.withEarthOrientation(text));
    }

    private static void assertRefused(String why, Executable opening) {
        BadInput refusal = assertThrows(BadInput.class, opening);
        assertTrue(refusal.getMessage().contains(why), refusal.getMessage());
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static byte[] builtInBytes() throws IOException {
        try (InputStream in = resource("unxp2027.405")) {
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
