package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The Sun's apparent longitude at equinoxes and solstices. */
class SeasonReferenceTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    /** Where the Earth's turn does not move the observer. */
    private static final Site POLE = Places.at(90, 0, 0);
    private static final double OBLIQUITY_2000_DEG = 23.43928;
    private static final double OBLIQUITY_FALL_DEG_YEAR = 0.000130;

    /**
     * Meeus 1998, Astronomical Algorithms, table 27.E: instants of dynamical time to the second from VSOP87;
     * from memory. The second printed is 0.02″ of longitude on either side; the observer at the pole sees the
     * Sun lower by its parallax, which leaves at most 0.1″ of longitude; nutation in obliquity, left out,
     * moves longitude by less than 0.01″ where the Sun has no latitude.
     */
    @ParameterizedTest
    @CsvSource({
        "2000-03-20T07:36:19Z, 0", "2000-06-21T01:48:46Z, 90", "2000-09-22T17:28:40Z, 180",
                "2000-12-21T13:38:30Z, 270",
        "2001-03-20T13:31:47Z, 0", "2001-06-21T07:38:48Z, 90", "2001-09-22T23:05:32Z, 180",
        "2001-12-21T19:22:34Z, 270",
        "2002-03-20T19:17:13Z, 0", "2002-06-21T13:25:29Z, 90", "2002-09-23T04:56:28Z, 180",
        "2002-12-22T01:15:26Z, 270",
        "2003-03-21T01:00:50Z, 0", "2003-06-21T19:11:32Z, 90", "2003-09-23T10:47:53Z, 180",
        "2003-12-22T07:04:53Z, 270",
        "2004-03-20T06:49:42Z, 0", "2004-06-21T00:57:57Z, 90", "2004-09-22T16:30:54Z, 180",
        "2004-12-21T12:42:40Z, 270",
        "2005-03-20T12:34:29Z, 0", "2005-06-21T06:47:12Z, 90", "2005-09-22T22:24:14Z, 180",
        "2005-12-21T18:36:01Z, 270"})
    void longitudeIsAFullQuarter(Instant printed, double longitudeDeg) {
        Instant utc = printed.minus(Duration.ofMillis(64_184));
        SkyPosition sun = EPHEMERIS.position(Body.SUN, POLE, utc);
        double offArcsec = (longitudeDeg(sun, utc) - longitudeDeg + 540) % 360 * 3600 - 180 * 3600;
        assertEquals(0, offArcsec, 0.2);
    }

    /**
     * Almanacs to the minute of UT, from memory: 2024-03-20 03:06, 2025-06-21 02:42, 2026-09-23 00:05,
     * 2027-12-22 02:42.
     */
    @ParameterizedTest
    @CsvSource({"2024-03-20T03:06:00Z, 0", "2025-06-21T02:42:00Z, 90", "2026-09-23T00:05:00Z, 180",
        "2027-12-22T02:42:00Z, 270"})
    void almanacsAgreeToTheMinute(Instant printed, double longitudeDeg) {
        SkyPosition sun = EPHEMERIS.position(Body.SUN, POLE, printed);
        double offArcsec = (longitudeDeg(sun, printed) - longitudeDeg + 540) % 360 * 3600 - 180 * 3600;
        assertEquals(0, offArcsec, 30 * 0.0425, "half a minute of the Sun's motion");
    }

    /** Of the geocentric Sun: the pole looks at it from below the equator's plane by its parallax. */
    private static double longitudeDeg(SkyPosition sun, Instant at) {
        double years = Duration.between(Instant.parse("2000-01-01T12:00:00Z"), at).toDays() / 365.25;
        double obliquityRad = Math.toRadians(OBLIQUITY_2000_DEG - OBLIQUITY_FALL_DEG_YEAR * years);
        double level = sun.distanceKm() * sun.declination().cos();
        double y = level * sun.rightAscension().sin();
        double z = sun.distanceKm() * sun.declination().sin() + 6356.752;
        return Math.toDegrees(Math.atan2(y * Math.cos(obliquityRad) + z * Math.sin(obliquityRad),
                level * sun.rightAscension().cos()));
    }
}
