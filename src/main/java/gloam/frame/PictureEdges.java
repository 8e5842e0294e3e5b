package gloam.frame;

import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the picture on a scanned or photographed sheet: the four-sided area inside the sheet's border.
 *
 * <p><b>Model.</b> The scan is made small; on lines from each of its sides inwards every step of brightness
 * votes for the straight edges it may lie on; of the edges that most lines agree on the outermost one at
 * which it gets darker is the border's inner edge, else the outermost one at which it gets lighter; least
 * squares over its steps; corners where edges cross. <b>Valid.</b> Sheets turned by up to 8°, pictures that
 * fill half of the scan or more. <b>Error.</b> A third of a percent of the scan's longer side.
 * <b>Departures.</b> Edges are straight.
 */
public final class PictureEdges {

    private static final int SIDES = 4;
    private static final int SIDE = 600;
    private static final double DEPTH = 0.4;
    private static final double FROM = 0.15;
    private static final double STEEPEST = Math.tan(Math.toRadians(8));
    private static final int TILTS = 61;
    private static final int REACH = 3;
    private static final double LEAST_STEP = 0.05;
    private static final double AGREE = 0.6;
    private static final double BESIDE = 2.5;
    private static final int AROUND = 5;

    private final int width;
    private final int height;
    private final int together;
    private final float[] levels;
    private final BitSet hidden = new BitSet();

    private PictureEdges(LightImage scan, Optional<double[][]> besides) {
        this.together = Math.max(1, (int) Math.ceil(Math.max(scan.width(), scan.height()) / (double) SIDE));
        this.width = scan.width() / together;
        this.height = scan.height() / together;
        this.levels = new float[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int i = 0; i < together * together; i++) {
                    sum += scan.light(x * together + i % together, y * together + i / together);
                }
                levels[y * width + x] = (float) SrgbCurve.level(sum / (together * together));
            }
        }
        besides.ifPresent(part -> {
            for (int y = (int) (part[0][1] / together) - AROUND; y < part[2][1] / together + AROUND; y++) {
                hidden.set(Math.max(0, y * width + Math.max(0, (int) (part[0][0] / together) - AROUND)),
                        Math.max(0, y * width + Math.min(width, (int) (part[2][0] / together) + AROUND)));
            }
        });
    }

    /**
     * The corners of the picture in pixels of the scan, by x and y: upper left, upper right, lower right,
     * lower left; empty where no four edges are found.
     *
     * @param besides the corners of what lies on the scan beside the sheet, upright
     */
    public static Optional<double[][]> of(LightImage scan, Optional<double[][]> besides) {
        PictureEdges edges = new PictureEdges(scan, besides);
        for (int darker = 0; darker < 2; darker++) {
            int sign = darker == 0 ? -1 : 1;
            double[][] sides = IntStream.range(0, SIDES).mapToObj(side -> edges.edge(side, sign))
                    .flatMap(Optional::stream).toArray(double[][]::new);
            if (sides.length == SIDES) {
                return Optional.of(edges.corners(sides));
            }
        }
        return Optional.empty();
    }

    /** Left, upper, right and lower side in turn: pixels inwards on a line from the side. */
    private int pixel(int side, int line, int inwards) {
        return switch (side) {
            case 0 -> line * width + inwards;
            case 1 -> inwards * width + line;
            case 2 -> line * width + width - 1 - inwards;
            default -> (height - 1 - inwards) * width + line;
        };
    }

    /** How much lighter it gets at a pixel of a line. */
    private double step(int side, int line, int inwards) {
        double sum = 0;
        for (int i = 0; i < REACH; i++) {
            sum += levels[pixel(side, line, inwards + i)] - levels[pixel(side, line, inwards - 1 - i)];
        }
        return sum / REACH;
    }

    /**
     * The edge along a side: how far in it lies at the middle of the side, and by how much farther in for a
     * pixel along it; empty where there is none.
     */
    private Optional<double[]> edge(int side, int sign) {
        int along = side % 2 == 0 ? height : width;
        int deep = (int) (DEPTH * (side % 2 == 0 ? width : height));
        int first = (int) (FROM * along);
        int last = along - first;
        int[][] votes = new int[TILTS][deep + 1];
        boolean[][] steps = new boolean[along][deep + 1];
        for (int line = first; line < last; line++) {
            for (int inwards = REACH + 1; inwards < deep - REACH; inwards++) {
                double here = sign * step(side, line, inwards);
                steps[line][inwards] = here > LEAST_STEP && !hidden.get(pixel(side, line, inwards))
                        && here >= sign * step(side, line, inwards - 1)
                        && here > sign * step(side, line, inwards + 1);
                for (int tilt = 0; steps[line][inwards] && tilt < TILTS; tilt++) {
                    int at = (int) Math.round(inwards - slope(tilt) * (line - along / 2.0));
                    if (at >= 0 && at <= deep) {
                        votes[tilt][at]++;
                    }
                }
            }
        }
        double needed = AGREE * (last - first);
        for (int at = 1; at < deep; at++) {
            int best = 0;
            for (int tilt = 1; tilt < TILTS; tilt++) {
                best = three(votes[tilt], at) > three(votes[best], at) ? tilt : best;
            }
            if (three(votes[best], at) >= needed) {
                return Optional.of(fitted(steps, at, slope(best), along));
            }
        }
        return Optional.empty();
    }

    private static int three(int[] votes, int at) {
        return votes[at - 1] + votes[at] + votes[at + 1];
    }

    private static double slope(int tilt) {
        return STEEPEST * (2.0 * tilt / (TILTS - 1) - 1);
    }

    /**
     * The line by least squares through the steps near another, twice, the second time through nearer ones.
     */
    private static double[] fitted(boolean[][] steps, double at, double slope, int along) {
        double[] line = {at, slope};
        for (double beside : new double[] {2 * BESIDE, BESIDE}) {
            double count = 0;
            double x = 0;
            double y = 0;
            double xx = 0;
            double xy = 0;
            for (int i = 0; i < steps.length; i++) {
                double aside = i + 0.5 - along / 2.0;
                double expected = line[0] + line[1] * aside;
                for (int in = (int) Math.max(0, expected - beside); in < steps[i].length && in <= expected
                        + beside;
                        in++) {
                    if (steps[i][in]) {
                        count++;
                        x += aside;
                        y += in;
                        xx += aside * aside;
                        xy += aside * in;
                    }
                }
            }
            double spread = count * xx - x * x;
            if (count < 2 || spread == 0) {
                return line;
            }
            line[1] = (count * xy - x * y) / spread;
            line[0] = (y - line[1] * x) / count;
        }
        return line;
    }

    private double[][] corners(double[][] sides) {
        double[] right = {width - sides[2][0], -sides[2][1]};
        double[] lower = {height - sides[3][0], -sides[3][1]};
        return new double[][] {corner(sides[0], sides[1]), corner(right, sides[1]), corner(right, lower),
            corner(sides[0], lower)};
    }

    /** Where an upright edge crosses a level one, in pixels of the scan. */
    private double[] corner(double[] upright, double[] level) {
        double x = (upright[0] + upright[1] * (level[0] - height / 2.0 - level[1] * width / 2.0))
                / (1 - upright[1] * level[1]);
        return new double[] {x * together, (level[0] + level[1] * (x - width / 2.0)) * together};
    }
}
