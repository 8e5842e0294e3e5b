package gloam.ephemeris.orekit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.SkyPosition;
import gloam.units.Angle;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class LookReferenceTest {

    private static final EarthOrientation EARTH = new EarthOrientation(List.of());
    private static final SolarSystem SOLAR_SYSTEM = new SolarSystem(EARTH, new YearlyFiles(EARTH));
    private static final SkyPosition ANYWHERE =
            new SkyPosition(Angle.ZERO, Angle.ZERO, Angle.ZERO, Angle.ZERO, Angle.ZERO, 1);

    /**
     * Meeus 1998, Astronomical Algorithms, example 48.a, 1992-04-12: i = 69.0756°, k = 0.6786; inputs from
     * memory.
     */
    @Test
    void moonsFractionOfMeeus() {
        double elongationRad = Math.toRadians(110.7929);
        Vector3D moonKm = new Vector3D(368_410, 0, 0);
        Vector3D sunKm = new Vector3D(Math.cos(elongationRad), Math.sin(elongationRad), 0)
                .scalarMultiply(149_971_520);
        Appearance moon = new Look(Body.MOON, 0, sunKm.subtract(moonKm), moonKm.negate())
                .at(ANYWHERE, SOLAR_SYSTEM);
        assertEquals(69.0756, moon.phaseAngle().degrees(), 0.0001, "printed to 0.0001");
        assertEquals(0.6786, moon.illuminatedFraction(), 0.00005, "printed to 0.0001");
    }

    /**
     * Mean semidiameters of the Astronomical Almanac: Sun 959.63″ at 1 au, Moon 932.6″ at 384 400 km; from
     * memory.
     */
    @Test
    void semidiameters() {
        Vector3D au = new Vector3D(149_597_870.7, 0, 0);
        assertEquals(959.63, new Look(Body.SUN, 0, Vector3D.PLUS_I, au).at(ANYWHERE, SOLAR_SYSTEM)
                .semidiameter()
                .arcsec(), 0.5,
                "the almanac's solar radius is 696 000 km, the nominal one of the IAU 695 700 km");
        Vector3D moon = new Vector3D(384_400, 0, 0);
        assertEquals(932.6, new Look(Body.MOON, 0, au, moon).at(ANYWHERE, SOLAR_SYSTEM).semidiameter()
                .arcsec(), 0.5, "the almanac's lunar radius is 1738 km");
    }

    /**
     * Mallama and Hilton 2018, test rows: Mars 2003-08-28 0 h seen 329.27°, sunlit 330.76° west; 2004-07-19 0
     * h 76.84°, 64.66°; Saturn 2032-12-25 tilt 26.279°; Uranus 2008-03-08 1.02°, 0.97°.
     */
    @Test
    void globesStandAsTheAuthorsSay() {
        assertFace("2003-08-28", Body.MARS, 329.27, 330.76);
        assertFace("2004-07-19", Body.MARS, 76.84, 64.66);
        assertFace("2032-12-25", Body.SATURN, 26.279, 26.279);
        assertFace("2008-03-08", Body.URANUS, 1.02, 0.97);
    }

    private static void assertFace(String date, Body body, double seenDeg, double sunlitDeg) {
        double days = ChronoUnit.DAYS.between(LocalDate.of(2000, 1, 1), LocalDate.parse(date)) - 0.5;
        Look look = geocentric(body, days * 86400);
        PlanetAxis axis = SOLAR_SYSTEM.axis(body, look.leftS());
        assertEquals(seenDeg, face(body, axis, look.toSiteKm()), 0.3,
                "a quarter of a degree is a minute of Mars's turn");
        assertEquals(sunlitDeg, face(body, axis, look.toSunKm()), 0.3);
    }

    private static Look geocentric(Body body, double ttS) {
        Vector3D earthKm = SOLAR_SYSTEM.earthKm(ttS).getPosition();
        double leftS = ttS - SOLAR_SYSTEM.positionKm(body, ttS).distance(earthKm) / Topocentre.LIGHT_KM_S;
        Vector3D bodyKm = SOLAR_SYSTEM.positionKm(body, leftS);
        return new Look(body, leftS, SOLAR_SYSTEM.positionKm(Body.SUN, leftS).subtract(bodyKm),
                earthKm.subtract(bodyKm));
    }

    private static double face(Body body, PlanetAxis axis, Vector3D outward) {
        return switch (body) {
            case MARS -> axis.westDeg(outward);
            case SATURN -> Math.abs(axis.centricDeg(outward));
            default -> Math.abs(axis.uranographicDeg(outward));
        };
    }
}
