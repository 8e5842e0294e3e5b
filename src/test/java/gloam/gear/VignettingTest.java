package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Stops;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class VignettingTest {

    private static final double CORNER_MM = 75;
    private static final double ROUNDING = 1e-9;

    /**
     * Shape and fading are common practice, no source: fourth power of the distance, gone two stops below
     * f/4.
     */
    @ParameterizedTest
    @CsvSource({"75, 4, 1.5", "0, 4, 0", "37.5, 4, 0.09375", "75, 2.8, 1.5", "75, 5.656854249492381, 0.75",
        "75, 8, 0", "75, 22, 0"})
    void mountTakesTheStatedLossInTheCorner(double radiusMm, double fNumber, double lossStops) {
        double share = new Vignetting(1.5, CORNER_MM, FNumber.exact(4)).share(radiusMm,
                FNumber.exact(fNumber));
        assertEquals(lossStops, Stops.between(share, 1), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"Infinity, 26.565051177", "0.45, 18.434948823"})
    void itComesOnTopOfTheProjectionsFallOff(double focusM, double cornerDeg) {
        // cos⁴ law; tan of the corner's angle is 75 mm over an image distance of 150 mm, or of 225 mm with
        // the focus at 3 f: 26.565° and 18.435°
        Lens lens = lens(focusM, Projection.RECTILINEAR);
        double cosine = Math.cos(Math.toRadians(cornerDeg));
        assertEquals(Math.pow(cosine, 4) * Math.pow(2, -1.5),
                lens.relativeIllumination(Angle.ofDegrees(cornerDeg), FNumber.exact(4)),
                1e-8); // the angle's digits
        assertEquals(Math.pow(cosine, 4),
                lens.relativeIllumination(Angle.ofDegrees(cornerDeg), FNumber.exact(8)), 1e-8);
    }

    @ParameterizedTest
    @EnumSource(Projection.class)
    void moreIsLostOutwardsAndLessStoppedDown(Projection projection) {
        Lens lens = lens(Double.POSITIVE_INFINITY, projection);
        for (double deg = 5; deg <= 120; deg += 5) {
            Angle here = Angle.ofDegrees(deg);
            assertTrue(lens.mountShare(here, FNumber.exact(4)) <= lens.mountShare(Angle.ofDegrees(deg - 5),
                    FNumber.exact(4)));
            assertTrue(lens.mountShare(here, FNumber.exact(4)) <= lens.mountShare(here, FNumber.exact(5)));
            assertEquals(1, lens.mountShare(here, FNumber.exact(8)));
            assertTrue(lens.relativeIllumination(here, FNumber.exact(4)) >= 0);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 4.1, Double.NaN})
    void lossBeyondItsRangeIsRefused(double lossStops) {
        assertTrue(assertThrows(BadInput.class,
                () -> new Vignetting(lossStops, CORNER_MM, FNumber.exact(4))).getMessage()
                .endsWith("is out of range; give 0 … 4 stops"));
    }

    @Test
    void cornerOnTheAxisIsABug() {
        assertThrows(IllegalArgumentException.class, () -> new Vignetting(1, 0, FNumber.exact(4)));
    }

    private static Lens lens(double focusM, Projection projection) {
        return new Lens(150, List.of(FNumber.exact(4), FNumber.exact(8)), 0.9, focusM, 40, 0, projection,
                new Vignetting(1.5, CORNER_MM, FNumber.exact(4)));
    }
}
