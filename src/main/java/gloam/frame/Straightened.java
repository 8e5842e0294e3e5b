package gloam.frame;

/**
 * A picture on a scan as it was on the sheet: seen straight on, the right way up, positive.
 *
 * <p>Each pixel is the mean of points of the scan as many as it covers, each straight between the middles of
 * the scan's pixels.
 */
final class Straightened {

    /** In how many ways a sheet may lie on a scan. */
    static final int WAYS = 8;

    private static final int CORNERS = 4;
    private static final int MOST_ACROSS = 4;

    private Straightened() {
    }

    /**
     * The corners of a picture as they are on it, upper left first and clockwise, from those on the scan.
     *
     * @param way how the sheet lies on the scan: 0 to 3 turned by so many quarters of a turn to the left, 4
     *            to 7 mirrored besides
     */
    static double[][] corners(double[][] onScan, int way) {
        double[][] corners = new double[CORNERS][];
        for (int i = 0; i < CORNERS; i++) {
            corners[i] = onScan[way < CORNERS ? (i + way) % CORNERS : (3 * CORNERS + 1 - i - way) % CORNERS];
        }
        return corners;
    }

    /** The length of the upper edge beside that of the right one. */
    static double shape(double[][] corners) {
        return (length(corners[0], corners[1]) + length(corners[3], corners[2]))
                / (length(corners[1], corners[2]) + length(corners[0], corners[3]));
    }

    private static double length(double[] from, double[] to) {
        return Math.hypot(to[0] - from[0], to[1] - from[1]);
    }

    /** The picture with its corners at these points of the scan. */
    static LightImage of(LightImage scan, double[][] corners, int width, int height, boolean negative) {
        Homography toScan = Homography.of(new double[][] {{0, 0}, {width, 0}, {width, height}, {0, height}},
                corners);
        int across = (int) Math.max(1, Math.min(MOST_ACROSS, Math.round(length(corners[0], corners[1])
                / width)));
        LightImage picture = new LightImage(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int i = 0; i < across * across; i++) {
                    double[] at = toScan.at(x + (i % across + 0.5) / across, y + (i / across + 0.5) / across);
                    sum += light(scan, at[0], at[1]);
                }
                double light = sum / (across * across);
                picture.add(x, y, (float) (negative ? SrgbCurve.light(1 - SrgbCurve.level(
                        Math.min(1, light))) : light));
            }
        }
        return picture;
    }

    private static double light(LightImage scan, double x, double y) {
        double column = Math.max(0, Math.min(scan.width() - 1.001, x - 0.5));
        double row = Math.max(0, Math.min(scan.height() - 1.001, y - 0.5));
        int left = (int) column;
        int top = (int) row;
        double right = column - left;
        double under = row - top;
        return (1 - under) * ((1 - right) * scan.light(left, top) + right * scan.light(left + 1, top))
                + under * ((1 - right) * scan.light(left, top + 1) + right * scan.light(left + 1, top + 1));
    }
}
