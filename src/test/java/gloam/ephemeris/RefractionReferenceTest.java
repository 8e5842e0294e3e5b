package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Angle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RefractionReferenceTest {

    private static final Refraction MEAN_AIR = new Refraction(1010, 10);

    static Stream<Row> rows() {
        return ReferenceTable.read("erfa/refraction.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheIntegralOfSofa(Row row) {
        Refraction air = new Refraction(row.number("pressure_hpa"), row.number("temperature_c"));
        assertEquals(row.number("refraction_arcsec"),
                liftArcmin(air, row.number("apparent_altitude_deg")) * 60,
                0.07 * 60);
    }

    /**
     * The star correction of the Nautical Almanac's altitude table, 10 °C and 1010 hPa, printed to 0.1′; from
     * memory.
     */
    @ParameterizedTest
    @CsvSource({"90, 0.0", "60, 0.6", "45, 1.0", "30, 1.7", "20, 2.6", "10, 5.3", "5, 9.9"})
    void agreesWithTheNauticalAlmanac(double apparentDeg, double arcmin) {
        assertEquals(arcmin, liftArcmin(MEAN_AIR, apparentDeg), 0.05 + 0.07, "rounding and Bennett's error");
    }

    /** Explanatory Supplement to the Astronomical Almanac: 34′ is adopted for rise and set. */
    @Test
    void liftsTheHorizonByThirtyFourMinutes() {
        assertEquals(34, liftArcmin(MEAN_AIR, 0), 0.5, "34 is printed without decimals");
    }

    /** Meeus 1998, Astronomical Algorithms, example 16.a: 28.754′ at 30′; from memory. */
    @Test
    void followsBennettsShortFormula() {
        assertEquals(28.754, Refraction.shortArcmin(0.5), 0.0005, "printed to 0.001");
    }

    /** Sæmundsson 1986, Sky and Telescope 72, 70, goes the other way and, after Meeus, agrees to 0.1′. */
    @Test
    void agreesWithSaemundsson() {
        for (double airlessDeg = -0.5; airlessDeg <= 90; airlessDeg += 0.5) {
            double arcmin = 1.02 / Math.tan(Math.toRadians(airlessDeg + 10.3 / (airlessDeg + 5.11)));
            double lift = MEAN_AIR.apparent(Angle.ofDegrees(airlessDeg)).degrees() - airlessDeg;
            assertEquals(arcmin, lift * 60, 0.1 + 0.07,
                    "and what Bennett's improvement changes, at " + airlessDeg);
        }
    }

    @Test
    void bothWaysAgree() {
        for (double deg = -10; deg <= 90; deg += 0.05) {
            Angle airless = Angle.ofDegrees(deg);
            Angle back = MEAN_AIR.airless(MEAN_AIR.apparent(airless));
            assertEquals(0, back.minus(airless)
                    .arcsec(), 0.001, "the iteration's end, 1e-9 deg, and rounding");
        }
    }

    /** Without a step anywhere, also where the formula ends and fades: the picture's trails must not jump. */
    @Test
    void apparentAltitudeGrowsSmoothly() {
        double stepDeg = 0.005;
        double last = Double.NaN;
        for (double deg = -12; deg < 90; deg += stepDeg) {
            double slope = (MEAN_AIR.apparent(Angle.ofDegrees(deg + stepDeg)).degrees()
                    - MEAN_AIR.apparent(Angle.ofDegrees(deg)).degrees()) / stepDeg;
            assertTrue(slope > 0.5 && slope < 1.8, "at " + deg + " it grows by " + slope);
            assertTrue(Double.isNaN(last) || Math.abs(slope - last) < 0.01, "kink at " + deg);
            last = slope;
        }
        assertEquals(-12, MEAN_AIR.apparent(Angle.ofDegrees(-12)).degrees(), 1e-9);
    }

    /** ISO 2533:1975, table of the standard atmosphere: 794.95 hPa and 2.00 °C at 2000 m; from memory. */
    @Test
    void takesTheStandardAtmosphereOfTheHeight() {
        assertEquals(794.95, Refraction.ofHeight(2000)
                .pressureHPa(), 0.1, "geometric for geopotential height");
        assertEquals(2.0, Refraction.ofHeight(2000).temperatureC(), 0.01);
    }

    private static double liftArcmin(Refraction air, double apparentDeg) {
        return (apparentDeg - air.airless(Angle.ofDegrees(apparentDeg)).degrees()) * 60;
    }
}
