package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Refraction;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Angle;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Places and looks against other libraries and a published example. */
class OrekitEphemerisReferenceTest {

    private static final OrekitEphemeris EPHEMERIS = OrekitEphemeris.builtIn();
    private static final double AU_KM = 149_597_870.7;
    /** The tolerances and their reasons stand in the heads of the tables. */
    private static final double SKY_ARCSEC = 0.3;
    private static final double OF_DISTANCE = 1e-6;
    /**
     * The one instant at which the table's azimuths and altitudes are not those of its own right ascensions.
     */
    private static final Instant OTHER_SIDEREAL_TIME = Instant.parse("2054-11-23T01:17:02Z");
    /**
     * Greenwich apparent sidereal time then: SOFA's gst06a by ERFA 2.0.0.1, UT1 = UTC, TT − UTC = 69.184 s.
     */
    private static final Angle SIDEREAL_TIME = Angle.ofDegrees(81.5056827);

    /** Parallaxes in mas: Hipparcos catalogue (ESA 1997), from memory. */
    private static final Map<String,
            Double> PARALLAXES = Map.of("Sirius", 379.21, "Vega", 128.93, "Arcturus", 88.85,
            "Polaris", 7.56, "Achernar", 22.68, "Betelgeuse", 7.63);

    static Stream<Row> bodies() {
        return ReferenceTable.read("swiss-ephemeris/positions.csv").stream();
    }

    static Stream<Row> stars() {
        return ReferenceTable.read("erfa/stars.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void placesOfBodies(Row row) {
        Body body = body(row);
        SkyPosition position = EPHEMERIS.position(body, site(row), row.instant("utc"));
        if (row.instant("utc").equals(OTHER_SIDEREAL_TIME)) {
            assertTurned(row, position);
        } else {
            assertNear(position.azimuth(), position.airlessAltitude(), row, "azimuth_deg",
                    "altitude_airless_deg");
        }
        assertNear(position.rightAscension(), position.declination(), row, "ra_of_date_deg",
                "dec_of_date_deg");
        double distanceAu = row.number("distance_au");
        assertEquals(distanceAu, position.distanceKm() / AU_KM, distanceAu * OF_DISTANCE);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void looksOfBodies(Row row) {
        Body body = body(row);
        Appearance look = EPHEMERIS.appearance(body, site(row), row.instant("utc"));
        assertEquals(row.number("phase_angle_deg"), look.phaseAngle().degrees(), 0.002);
        // The table gives the Sun, which has no phase, a fraction of 0.
        double fraction = body == Body.SUN ? 1 : row.number("illuminated_fraction");
        assertEquals(fraction, look.illuminatedFraction(), 6e-6, "table is rounded to 1e-5");
        if (body != Body.SUN && body != Body.MOON) {
            assertEquals(row.number("magnitude"), look.magnitude(), body == Body.MARS ? 0.12 : 0.03);
        }
    }

    @ParameterizedTest
    @MethodSource("stars")
    void placesOfStars(Row row) {
        Star star = new Star(row.text("star"), row.number("ra_icrs_deg"), row.number("dec_icrs_deg"),
                row.number("pm_ra_cosdec_mas_yr"), row.number("pm_dec_mas_yr"),
                PARALLAXES.get(row.text("star")),
                Double.NaN, Double.NaN);
        SkyPosition position = EPHEMERIS.position(star, site(row), row.instant("utc"));
        assertNear(position.azimuth(), position.airlessAltitude(), row, "azimuth_deg",
                "altitude_airless_deg");
        assertTrue(Double.isInfinite(position.distanceKm()));
    }

    /**
     * Reda and Andreas 2004, Solar Energy 76, 577 (NREL/TP-560-34302), A.5: 2003-10-17, 12:30:30 at UT − 7 h.
     */
    @Test
    void solarPositionOfReda() {
        Site site = Places.at(39.742476, -105.1786, 1830.14);
        SkyPosition sun = EPHEMERIS.position(Body.SUN, site, Instant.parse("2003-10-17T19:30:30Z"));
        double claimedDeg = 0.0003; // what the paper claims for its algorithm
        assertEquals(194.34024, sun.azimuth().degrees(), claimedDeg);
        assertEquals(202.22704, sun.rightAscension().degrees(), claimedDeg, "from memory");
        assertEquals(-9.316179, sun.declination().degrees(), claimedDeg, "from memory");
        double zenithDeg = 90 - new Refraction(820, 11).apparent(sun.airlessAltitude()).degrees();
        assertEquals(50.11162, zenithDeg, claimedDeg + 0.07 / 60,
                "Bennett's refraction, the paper has another");
    }

    /** The table's own right ascension and declination, turned into the horizon by SOFA's sidereal time. */
    private static void assertTurned(Row row, SkyPosition position) {
        double hourAngleRad = Math.toRadians(SIDEREAL_TIME.degrees() + row.number("longitude_deg")
                - row.number("ra_of_date_deg"));
        Angle latitude = Angle.ofDegrees(row.number("latitude_deg"));
        Angle declination = Angle.ofDegrees(row.number("dec_of_date_deg"));
        double up = latitude.sin() * declination.sin() + latitude.cos() * declination.cos()
                * Math.cos(hourAngleRad);
        double east = -declination.cos() * Math.sin(hourAngleRad);
        double north = latitude.cos() * declination.sin() - latitude.sin() * declination.cos()
                * Math.cos(hourAngleRad);
        double altitudeRad = Math.atan2(up, Math.hypot(east, north));
        double offAroundRad = position.azimuth().minus(Angle.ofRadians(Math.atan2(east, north))).signed()
                .radians()
                * Math.cos(altitudeRad);
        assertEquals(0, Angle.ofRadians(offAroundRad).arcsec(), SKY_ARCSEC, "azimuth times cosine");
        assertEquals(0, position.airlessAltitude().minus(Angle.ofRadians(altitudeRad)).arcsec(), SKY_ARCSEC,
                "altitude");
    }

    private static void assertNear(Angle around, Angle up, Row row, String aroundColumn, String upColumn) {
        Angle expectedUp = Angle.ofDegrees(row.number(upColumn));
        double offAround = around.minus(Angle.ofDegrees(row.number(aroundColumn))).signed()
                .arcsec() * expectedUp.cos();
        assertEquals(0, offAround, SKY_ARCSEC, aroundColumn + " times cosine");
        assertEquals(0, up.minus(expectedUp).arcsec(), SKY_ARCSEC, upColumn);
    }

    private static Body body(Row row) {
        return Body.valueOf(row.text("body").toUpperCase(Locale.ROOT));
    }

    private static Site site(Row row) {
        return Places.at(row.number("latitude_deg"), row.number("longitude_deg"), row.number("height_m"));
    }
}
