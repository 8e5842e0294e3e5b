package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.Angle;
import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkylineTest {

    /** Rounding of doubles. */
    private static final double ROUNDING_DEG = 1e-10;

    private static double at(Skyline skyline, double azimuthDeg) {
        return skyline.altitudeAt(Angle.ofDegrees(azimuthDeg)).degrees();
    }

    private static Skyline.Point point(double azimuthDeg, double altitudeDeg) {
        return new Skyline.Point(azimuthDeg, altitudeDeg);
    }

    @ParameterizedTest
    @CsvSource({"10,2", "100,20", "55,11", "340,8", "350,6", "0,4", "359.999,4.0002", "5,3", "-20,8", "370,2",
            "220,14"})
    void runsStraightBetweenPointsAndOverNorth(double azimuthDeg, double altitudeDeg) {
        Skyline skyline = new Skyline(List.of(point(340, 8), point(10, 2), point(100, 20)));
        assertEquals(altitudeDeg, at(skyline, azimuthDeg), ROUNDING_DEG);
    }

    @Test
    void onePointIsALevelLine() {
        Skyline skyline = new Skyline(List.of(point(123, 7)));
        assertEquals(7, at(skyline, 0), ROUNDING_DEG);
        assertEquals(7, at(skyline, 123), ROUNDING_DEG);
        assertEquals(7, at(skyline, 300), ROUNDING_DEG);
        assertEquals(0, at(Skyline.FLAT, 77));
    }

    @Test
    void twoPointsAtOneAzimuthMakeAStep() {
        Skyline wall = new Skyline(List.of(point(0, 0), point(90, 0), point(90, 30), point(180, 30)));
        assertEquals(0, at(wall, 89.999999), 1e-5);
        assertEquals(30, at(wall, 90.000001), 1e-5);
    }

    @Test
    void north360IsNorth() {
        assertEquals(3, at(new Skyline(List.of(point(360, 3), point(180, 1))), 0), ROUNDING_DEG);
    }

    @Test
    void refusesNoPointsAndWrongOnes() {
        assertThrows(IllegalArgumentException.class, () -> new Skyline(List.of()));
        assertThrows(BadInput.class, () -> point(361, 0));
        assertThrows(BadInput.class, () -> point(0, 90));
    }
}
