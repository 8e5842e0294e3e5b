package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeclinationTest {

    /**
     * Every latitude of two decimals: the pole stands as high as the latitude, in the north or in the south.
     */
    @Test
    void thePoleOfTheSkyIsAtNinetyDegreesFromEveryLatitude() {
        for (int hundredths = -9000; hundredths <= 9000; hundredths++) {
            double latitudeDeg = hundredths / 100.0;
            Direction pole = Direction.ofDegrees(latitudeDeg < 0 ? 180 : 0, Math.abs(latitudeDeg));
            assertEquals(latitudeDeg < 0 ? -90 : 90, declinationDeg(latitudeDeg, pole), 1e-12,
                    () -> latitudeDeg + "°");
        }
    }

    /**
     * On the meridian the declination is the latitude less the angle from the zenith; from a pole it is the
     * altitude.
     */
    @ParameterizedTest
    @CsvSource({
        "41,   0,   90,  41",
        "41,   180, 49,  0",
        "41,   180, 20,  -29",
        "41,   0,   10,  59", // below the pole
        "41,   90,  0,   0",
        "-33,  0,   57,  0",
        "-33,  180, 0,   -57",
        "0,    0,   0,   90",
        "0,    180, 0,   -90",
        "0,    270, 35,  0",
        "90,   123, 25,  25",
        "-90,  123, 25,  -25",
        "90,   0,   90,  90",
        "-90,  77,  -90, 90",
    })
    void itIsThatOfTheMeridianThePolesAndTheHorizon(double latitudeDeg, double azimuthDeg, double altitudeDeg,
                                                    double expectedDeg) {
        // rounding of doubles; exact right angles are not doubles
        assertEquals(expectedDeg, declinationDeg(latitudeDeg, Direction.ofDegrees(azimuthDeg, altitudeDeg)),
                1e-12);
    }

    /**
     * Meeus, Astronomical Algorithms, 2nd ed., example 13.b: Venus from Washington, its azimuth there from
     * the south.
     */
    @Test
    void aWorkedExampleComesBack() {
        assertEquals(-6.719892, declinationDeg(38.921389, Direction.ofDegrees(68.0337 + 180, 15.1249)), 1e-3);
    }

    private static double declinationDeg(double latitudeDeg, Direction direction) {
        return direction.declination(Angle.ofDegrees(latitudeDeg)).degrees();
    }
}
