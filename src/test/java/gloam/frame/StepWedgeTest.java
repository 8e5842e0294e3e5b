package gloam.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wedges on scans whose curve is a power: light is 10 to minus the density (ISO 5-1), whatever the power. */
class StepWedgeTest {

    private static final int STEPS = 5;
    private static final double STEP_DENSITY = 0.4;
    private static final int ALONG_PX = 150;
    private static final int ACROSS_PX = 20;
    private static final StepWedge WEDGE = StepWedge.of("0,0.4,0.8,1.2,1.6");

    /** A wedge that fills a scan, and its corners. */
    private record Scan(LightImage image, double[][] corners) {

        static Scan of(double power, boolean upright, boolean lightFirst) {
            int width = upright ? ACROSS_PX : ALONG_PX;
            int height = upright ? ALONG_PX : ACROSS_PX;
            LightImage image = new LightImage(width, height);
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    int step = (upright ? y : x) * STEPS / ALONG_PX;
                    image.add(x, y, (float) shown(STEP_DENSITY * (lightFirst ? step : STEPS - 1 - step),
                            power));
                }
            }
            return new Scan(image, new double[][] {{0, 0}, {width, 0}, {width, height}, {0, height}});
        }

        /** What a scanner shows of a density. */
        private static double shown(double density, double power) {
            return Math.pow(10, -power * density);
        }
    }

    @ParameterizedTest
    @CsvSource({"0.8, false, true", "1.3, false, false", "0.8, true, false", "1.3, true, true"})
    void eachDensityIsItsLight(double power, boolean upright, boolean lightFirst) {
        Scan scan = Scan.of(power, upright, lightFirst);
        scan.image.add(0, 0, (float) (Scan.shown(0.5, power) - scan.image.light(0, 0)));
        scan.image.add(0, 1, (float) (Scan.shown(2, power) - scan.image.light(0, 1)));
        LightImage light = WEDGE.light(scan.image, scan.corners);
        assertEquals(Math.pow(10, -0.5), light.light(0, 0), 1e-4, "between two steps");
        assertEquals(Math.pow(10, -2), light.light(0, 1), 1e-4, "beyond the last");
        for (int step = 0; step < STEPS; step++) {
            int along = (2 * step + 1) * ALONG_PX / STEPS / 2;
            assertEquals(Math.pow(10, -STEP_DENSITY * (lightFirst ? step : STEPS - 1 - step)), upright
                    ? light.light(ACROSS_PX / 2, along) : light.light(along, ACROSS_PX / 2), 1e-4);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1,0.5", "0.1,0.1,0.2", "-0.1,0.2,0.5", "0.1,0.5,6", "NaN,0.2,0.5", "0.1,,0.5"})
    void whatIsNoWedgeIsRefused(String densities) {
        assertThrows(BadInput.class, () -> StepWedge.of(densities));
    }
}
