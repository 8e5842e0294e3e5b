package gloam.light;

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

class AtmosphereReferenceTest {

    static Stream<Row> airmasses() {
        return ReferenceTable.read("kasten-young-1989/airmass.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("airmasses")
    void airmassFollowsThePaper(Row row) {
        double expected = row.number("airmass");
        Angle altitude = Angle.ofDegrees(90 - row.number("zenithDeg"));
        assertEquals(expected, Atmosphere.airmass(altitude), 5e-4 * expected);
    }

    static Stream<Row> extinctions() {
        return ReferenceTable.read("green-1992/extinction.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("extinctions")
    void clearAirTakesWhatIsPublished(Row row) {
        assertEquals(row.number("extinctionMag"), Atmosphere.clearExtinctionMag(row.number("heightM")),
                0.005);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "45, 1.3868", "60, 1.8898", "75, 3.0963", "80, 3.8084", "90, 5"})
    void scatteringAirmassFollowsThePaper(double zenithDeg, double airmass) {
        // Krisciunas and Schaefer 1991, equation 3, independently computed to four digits
        assertEquals(airmass, Atmosphere.scatteringAirmass(zenithDeg), 5e-5);
    }

    /** Half-way up, at 45°, where the airmass is 1.4126 (the formula of Kasten and Young 1989 by hand). */
    @Test
    void theUsualLossIsThatHalfWayUp() {
        assertEquals(1.4126 * Atmosphere.clearExtinctionMag(0), Atmosphere.usualLossMag(), 1e-4);
    }

    @Test
    void airmassNeverFallsTowardsAndBelowTheHorizon() {
        assertEquals(1, Atmosphere.airmass(Angle.ofDegrees(90)));
        for (int tenths = 900; tenths > -900; tenths--) {
            assertTrue(Atmosphere.airmass(Angle.ofDegrees((tenths - 1) / 10.0))
                    >= Atmosphere.airmass(Angle.ofDegrees(tenths / 10.0)));
        }
    }
}
