package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {

    /** Rounding of a double between degrees and radians. */
    private static final double ROUNDING_DEG = 1e-12;

    @ParameterizedTest
    @CsvSource({"0,0", "-0.0,0", "359.5,359.5", "360,0", "-90,270", "725,5", "-725,355", "-360,0"})
    void positiveRunsFromZeroToAFullTurn(double givenDeg, double expectedDeg) {
        assertEquals(expectedDeg, Angle.ofDegrees(givenDeg).positive().degrees(), ROUNDING_DEG);
    }

    @ParameterizedTest
    @CsvSource({"0,0", "180,180", "-180,180", "181,-179", "-179,-179", "540,180", "-190,170"})
    void signedRunsFromMinusToPlusHalfATurn(double givenDeg, double expectedDeg) {
        assertEquals(expectedDeg, Angle.ofDegrees(givenDeg).signed().degrees(), ROUNDING_DEG);
    }

    @Test
    void theLeastNegativeAngleIsNotAFullTurn() {
        assertEquals(Angle.ZERO, Angle.ofRadians(-Double.MIN_VALUE).positive());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double radians) {
        assertThrows(IllegalArgumentException.class, () -> Angle.ofRadians(radians));
    }

    @Test
    void countsSecondsOfArc() {
        assertEquals(206_264.806, Angle.ofRadians(1).arcsec(), 0.001); // the usual figure, printed to 0.001
        assertEquals(60, Angle.ofDegrees(1.0 / 60).arcsec(), 1e-10);
    }

    @Test
    void addsTakesAwayAndCompares() {
        Angle sum = Angle.ofDegrees(350).plus(Angle.ofDegrees(20));
        assertEquals(370, sum.degrees(), ROUNDING_DEG);
        assertEquals(-20, Angle.ofDegrees(350).minus(sum).degrees(), ROUNDING_DEG);
        assertTrue(Angle.ofDegrees(-1).compareTo(Angle.ZERO) < 0);
        assertEquals(0.5, Angle.ofDegrees(30).sin(), 1e-15);
        assertEquals(0.5, Angle.ofDegrees(60).cos(), 1e-15);
    }
}
