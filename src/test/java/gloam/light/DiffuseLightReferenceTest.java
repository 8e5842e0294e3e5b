package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DiffuseLightReferenceTest {

    private static final double WITHIN_SHARE = 0.01;

    static Stream<Row> zodiacal() {
        return ReferenceTable.read("leinert-1998/zodiacal.csv").stream();
    }

    static Stream<Row> starlight() {
        return ReferenceTable.read("leinert-1998/starlight.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("zodiacal")
    void zodiacalLightIsThePublishedOne(Row row) {
        double expected = row.number("s10");
        assertEquals(expected, new ZodiacalLight().s10(star(row, "ra_deg", "dec_deg"),
                star(row, "sun_ra_deg", "sun_dec_deg")), WITHIN_SHARE * expected);
    }

    /** B−V 0.75 where the unit has 0.65: Pogson's law makes a tenth of a magnitude of it. */
    @ParameterizedTest
    @MethodSource("starlight")
    void starlightIsThePublishedOneAMagnitudesTenthBrighterInV(Row row) {
        double expected = row.number("s10_440") * Math.pow(10, 0.4 * 0.1);
        assertEquals(expected, new Starlight().s10(star(row, "ra_deg", "dec_deg"), Vector3D.PLUS_I),
                WITHIN_SHARE * expected);
    }

    private static Vector3D star(Row row, String rightAscension, String declination) {
        return new Vector3D(Math.toRadians(row.number(rightAscension)),
                Math.toRadians(row.number(declination)));
    }

    /**
     * Noll et al. 2012, A&amp;A 543, A92, equations 19 and 20 at 100 and 1000 of their unit, to three digits.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.122, 0.020", "3, 0.866, 0.702", "0, 0, 0"})
    void airTakesLessFromDimLight(double logarithm, double molecules, double dust) {
        assertEquals(molecules, DiffuseAir.moleculesFactor(logarithm), 5e-4);
        assertEquals(dust, DiffuseAir.dustFactor(logarithm), 5e-4);
    }

    /** Rozenberg 1966 after the same paper, equation 2: 40 on the horizon, sec z high up. */
    @ParameterizedTest
    @CsvSource({"0, 40", "0.5, 1.9996", "1, 1.0000"})
    void airmassByRozenberg(double up, double airmass) {
        assertEquals(airmass, DiffuseAir.airmass(up), 5e-4);
    }
}
