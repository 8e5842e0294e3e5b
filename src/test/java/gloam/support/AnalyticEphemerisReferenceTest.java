package gloam.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The low-precision ephemeris keeps the errors it states. */
class AnalyticEphemerisReferenceTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();

    static Stream<ReferenceTable.Row> bodies() {
        return ReferenceTable.read("swiss-ephemeris/positions.csv").stream();
    }

    static Stream<ReferenceTable.Row> stars() {
        return ReferenceTable.read("erfa/stars.csv").stream();
    }

    /** The stated errors: those of the formulas, and 0.006° for the aberration left out. */
    private static double withinDeg(Body body) {
        return switch (body) {
            case SUN -> 0.02;
            case MOON -> 0.4;
            default -> 0.2;
        };
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void bodiesStandWhereTheyShould(ReferenceTable.Row row) {
        Body body = Body.valueOf(row.text("body").toUpperCase(Locale.ROOT));
        Appearance look = EPHEMERIS.appearance(body, site(row), row.instant("utc"));
        assertNear(row, look.position(), withinDeg(body));
        Direction ofDate = Direction.ofDegrees(row.number("ra_of_date_deg"), row.number("dec_of_date_deg"));
        Direction found = new Direction(look.position().rightAscension(), look.position().declination());
        assertEquals(0, ofDate.to(found).degrees(), withinDeg(body));
        double distanceKm = row.number("distance_au") * 149_597_870.7;
        // the Moon's parallax series: 0.003° of 0.95°
        assertEquals(1, look.position().distanceKm() / distanceKm, 0.003);
        if (body != Body.SUN) { // the table gives the Sun no phase
            // phase seen from the centre
            assertEquals(row.number("illuminated_fraction"), look.illuminatedFraction(), 0.01);
        }
        if (body != Body.MOON) { // the table's Moon is a formula of its library
            // Saturn's rings open and close by ± 0.5 mag
            assertEquals(row.number("magnitude"), look.magnitude(), 0.6);
        }
    }

    @ParameterizedTest
    @MethodSource("stars")
    void starsStandWhereTheyShould(ReferenceTable.Row row) {
        Star star = new Star(row.text("star"), row.number("ra_icrs_deg"), row.number("dec_icrs_deg"),
                row.number("pm_ra_cosdec_mas_yr"), row.number("pm_dec_mas_yr"), 0, 0);
        assertNear(row, EPHEMERIS.position(star, site(row), row.instant("utc")), 0.02);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void airLiftsLittleAndLeastHighUp(ReferenceTable.Row row) {
        Body body = Body.valueOf(row.text("body").toUpperCase(Locale.ROOT));
        SkyPosition position = EPHEMERIS.position(body, site(row), row.instant("utc"));
        double liftArcmin = position.apparentAltitude().minus(position.airlessAltitude()).degrees() * 60;
        assertTrue(liftArcmin >= 0 && liftArcmin < 50);
        if (position.airlessAltitude().degrees() > 45) {
            assertTrue(liftArcmin < 1.1); // 1.0′ at 45°
        }
    }

    private static void assertNear(ReferenceTable.Row row, SkyPosition position, double withinDeg) {
        Direction expected = Direction.ofDegrees(row.number("azimuth_deg"),
                row.number("altitude_airless_deg"));
        Direction found = new Direction(position.azimuth(), position.airlessAltitude());
        assertEquals(0, expected.to(found).degrees(), withinDeg);
    }

    private static Site site(ReferenceTable.Row row) {
        return Places.at(row.number("latitude_deg"), row.number("longitude_deg"), row.number("height_m"));
    }
}
