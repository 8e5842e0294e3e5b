package gloam.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Scans of sheets made by the test: tilt, perspective, border, lid, grain, dust, uneven light, trails and
 * land.
 */
class PictureEdgesTest {

    private static final int WIDTH = 1100;
    private static final int HEIGHT = 1300;

    /** A sheet of which the picture's corners and the sheet's own lie at these points, by x and y. */
    private record Sheet(double[][] picture, double[][] outer, double border, double lid, long seed) {

        LightImage scanned() {
            Random random = new Random(seed);
            LightImage scan = new LightImage(WIDTH, HEIGHT);
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    double level = inside(outer, x + 0.5, y + 0.5)
                            ? inside(picture, x + 0.5, y + 0.5) ? picture(x, y) : border : lid;
                    level += 0.02 * random.nextGaussian() + 0.03 * ((double) x / WIDTH - 0.5);
                    scan.add(x, y, (float) FrameMaker.linear(Math.max(0, Math.min(1, level))));
                }
            }
            for (int i = 0; i < 200; i++) {
                int x = random.nextInt(WIDTH - 8);
                int y = random.nextInt(HEIGHT - 8);
                for (int j = 0; j < 36; j++) {
                    scan.add(x + j % 6, y + j / 6, 0.5f);
                }
            }
            return scan;
        }

        /** Sky that gets lighter downwards, land at its foot, trails across. */
        private double picture(int x, int y) {
            boolean trail = Math.abs((x * 0.6 + y) % 170) < 3;
            return y > 0.8 * HEIGHT ? 0.12 : trail ? 0.7 : 0.2 + 0.25 * y / HEIGHT;
        }
    }

    private static boolean inside(double[][] corners, double x, double y) {
        boolean in = true;
        for (int i = 0; i < 4; i++) {
            double[] a = corners[i];
            double[] b = corners[(i + 1) % 4];
            in &= (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) > 0;
        }
        return in;
    }

    /** The unit square turned and seen from aside, put into the scan with a margin in shares of its width. */
    private static double[][] corners(double margin, double turnDeg, double tilt) {
        double[][] corners = new double[4][];
        for (int i = 0; i < 4; i++) {
            double u = i == 1 || i == 2 ? 1 - margin : margin;
            double v = i >= 2 ? 1 - margin : margin;
            double a = Math.toRadians(turnDeg);
            double x = (u - 0.5) * WIDTH;
            double y = (v - 0.5) * HEIGHT;
            double depth = 1 + tilt * (v - 0.5);
            corners[i] = new double[] {WIDTH / 2.0 + (x * Math.cos(a) - y * Math.sin(a)) / depth,
                HEIGHT / 2.0 + (x * Math.sin(a) + y * Math.cos(a)) / depth};
        }
        return corners;
    }

    @Test
    void thePictureIsFoundInsideItsBorder() {
        for (int seed = 0; seed < 12; seed++) {
            Random random = new Random(50 + seed);
            random.nextDouble();
            double turn = -5 + 10 * random.nextDouble();
            double tilt = -0.06 + 0.12 * random.nextDouble();
            double lid = seed % 3 == 0 ? 0.03 : seed % 3 == 1 ? 0.95 : 0.6;
            Sheet sheet = new Sheet(corners(0.16, turn, tilt), corners(0.09, turn, tilt),
                    seed % 4 == 3 ? 0.02 : 0.9, seed % 4 == 3 ? 0.01 : lid, seed);
            double[][] found = PictureEdges.of(sheet.scanned(), Optional.empty()).orElseThrow();
            for (int i = 0; i < 4; i++) {
                assertEquals(sheet.picture[i][0], found[i][0], 0.003 * HEIGHT, "x of corner " + i + " of "
                        + seed);
                assertEquals(sheet.picture[i][1], found[i][1], 0.003 * HEIGHT, "y of corner " + i + " of "
                        + seed);
            }
        }
    }

    /** A grey wedge below the sheet, as broad as four fifths of the scan, has edges of its own. */
    @Test
    void whatLiesBesideTheSheetHasNoEdges() {
        Sheet sheet = new Sheet(corners(0.16, 1, 0.02), corners(0.09, 1, 0.02), 0.9, 0.25, 3);
        LightImage scan = sheet.scanned();
        for (int y = 1261; y < 1287; y++) {
            for (int x = 110; x < 990; x++) {
                scan.add(x, y, (float) (FrameMaker.linear(0.9 - 0.08 * ((x - 110) / 80)) - scan.light(x, y)));
            }
        }
        double[][] wedge = {{110, 1261}, {990, 1261}, {990, 1287}, {110, 1287}};
        double[][] found = PictureEdges.of(scan, Optional.of(wedge)).orElseThrow();
        for (int i = 0; i < 4; i++) {
            assertEquals(sheet.picture[i][0], found[i][0], 0.003 * HEIGHT, "x of corner " + i);
            assertEquals(sheet.picture[i][1], found[i][1], 0.003 * HEIGHT, "y of corner " + i);
        }
    }

    @Test
    void whereThereIsNoSheetNoneIsFound() {
        assertTrue(PictureEdges.of(new LightImage(WIDTH, HEIGHT), Optional.empty()).isEmpty());
    }

    /**
     * Straightened by its corners, the middle of the sheet is the middle, and a point in it is where it was.
     */
    @Test
    void theSheetIsStraightened() {
        double[][] seen = {{100, 80}, {900, 120}, {950, 1200}, {60, 1100}};
        double[][] sheet = {{-40, 40}, {40, 40}, {40, -40}, {-40, -40}};
        Homography toScan = Homography.of(sheet, seen);
        Homography toSheet = Homography.of(seen, sheet);
        for (int i = 0; i < 4; i++) {
            assertEquals(seen[i][0], toScan.at(sheet[i][0], sheet[i][1])[0], 1e-9);
            assertEquals(seen[i][1], toScan.at(sheet[i][0], sheet[i][1])[1], 1e-9);
        }
        double[] there = toScan.at(12.5, -31);
        double[] back = toSheet.at(there[0], there[1]);
        assertEquals(12.5, back[0], 1e-9);
        assertEquals(-31, back[1], 1e-9);
        // the diagonals of a square meet in its middle, however it is seen
        double[] middle = toScan.at(0, 0);
        double one = (middle[0] - 100) * (1200 - 80) - (middle[1] - 80) * (950 - 100);
        double other = (middle[0] - 900) * (1100 - 120) - (middle[1] - 120) * (60 - 900);
        assertEquals(0, one, 1e-6);
        assertEquals(0, other, 1e-6);
    }
}
