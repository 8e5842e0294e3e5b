package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Angle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeaHorizonTest {

    private static final Skyline HILLS_AND_SEA =
            new Skyline(List.of(new Skyline.Point(0, 5), new Skyline.Point(90, 5),
            new Skyline.Point(91, 0), new Skyline.Point(200, -0.2), new Skyline.Point(359, 0)));

    /** The dip table of The Nautical Almanac, printed to 0.1 arcmin; from memory. */
    @ParameterizedTest
    @CsvSource({"20, 7.9", "22, 8.3", "24, 8.6", "26, 9.0", "28, 9.3", "30, 9.6", "40, 11.1"})
    void dipsAsTheNauticalAlmanacHasIt(double heightM, double arcmin) {
        assertEquals(arcmin, SeaHorizon.dipDeg(heightM) * 60, 0.05);
    }

    /**
     * Without air the dip is the angle whose cosine is R / (R + h); light bent by a sixth of the Earth's
     * curve, as surveyors take it (0.13 to 0.17), makes it less by a tenth.
     */
    @Test
    void liesBetweenTheGeometricDipAndHalfOfIt() {
        for (double heightM = 1; heightM < 4000; heightM *= 2) {
            double geometricDeg = Math.toDegrees(Math.acos(6_371_000 / (6_371_000 + heightM)));
            double share = SeaHorizon.dipDeg(heightM) / geometricDeg;
            assertTrue(share > Math.sqrt(1 - 0.18) && share < Math.sqrt(1 - 0.12), () -> "share " + share);
        }
    }

    @Test
    void thereIsNoneAtTheSeasLevelAndBelow() {
        assertEquals(0, SeaHorizon.dipDeg(0));
        assertEquals(0, SeaHorizon.dipDeg(-400));
    }

    @Test
    void standsInTheSkylineWhereThatIsLevelOrLower() {
        Skyline seen = HILLS_AND_SEA.overSea(100);
        assertEquals(5, altitudeDeg(seen, 45));
        assertEquals(-17.6, altitudeDeg(seen, 91) * 60, 1e-9);
        assertEquals(-17.6, altitudeDeg(seen, 200) * 60, 1e-9);
        assertEquals(-17.6, altitudeDeg(Skyline.FLAT.overSea(100), 300) * 60, 1e-9);
        assertTrue(Skyline.FLAT.isLevel());
        assertFalse(seen.isLevel());
    }

    private static double altitudeDeg(Skyline skyline, double azimuthDeg) {
        return skyline.altitudeAt(Angle.ofDegrees(azimuthDeg)).degrees();
    }
}
