package gloam.frame;

import gloam.units.Median;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;

/**
 * How light the sky is on a scanned sheet beside the sheet's own white.
 *
 * <p><b>Model.</b> The sky is the median of the middle of the picture, lines left out; white is the border
 * just outside the picture. <b>Valid.</b> Scans coded by the sRGB curve. <b>Error.</b> That of the scanner's
 * curve. <b>Departures.</b> None.
 *
 * @param sky    light of the sky as a share of the scan's white
 * @param border light of the border; empty where there is none
 * @param lines  share of the picture that lies on lines
 */
public record PictureTone(double sky, OptionalDouble border, double lines) {

    private static final double[] OUTWARD = {0.012, 0.02, 0.028};
    private static final int ALONG = 60;
    private static final double EVEN = 0.08;
    private static final double FROM = 0.3;
    private static final double OFF_LINES_PX = 4;
    private static final int EVERY_PX = 2;
    private static final int LEAST_PIXELS = 200;

    static PictureTone of(LightImage scan, double[][] corners, LightImage picture, Ridges ridges,
            boolean negative) {
        List<Double> off = new ArrayList<>();
        List<Double> all = new ArrayList<>();
        int on = 0;
        int seen = 0;
        for (int y = 0; y < picture.height(); y += EVERY_PX) {
            for (int x = 0; x < picture.width(); x += EVERY_PX) {
                double away = ridges.awayPx(x, y);
                seen++;
                on += away == 0 ? 1 : 0;
                if (inside(x, picture.width()) && inside(y, picture.height())) {
                    all.add((double) picture.light(x, y));
                    if (away > OFF_LINES_PX) {
                        off.add((double) picture.light(x, y));
                    }
                }
            }
        }
        double sky = median(off.size() < LEAST_PIXELS ? all : off);
        return new PictureTone(negative ? SrgbCurve.light(1 - SrgbCurve.level(sky)) : sky,
                border(scan, corners),
                (double) on / seen);
    }

    private static boolean inside(int at, int of) {
        return at > FROM * of && at < (1 - FROM) * of;
    }

    private static double median(List<Double> values) {
        return Median.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Light just outside the corners, where it is even. */
    private static OptionalDouble border(LightImage scan, double[][] corners) {
        Homography toScan = Homography.of(new double[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}}, corners);
        List<Double> sides = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            List<Double> lights = new ArrayList<>();
            for (int i = 0; i < ALONG; i++) {
                for (double outward : OUTWARD) {
                    double along = (i + 0.5) / ALONG;
                    double beside = side < 2 ? -outward : 1 + outward;
                    double[] at = side % 2 == 0 ? toScan.at(along, beside) : toScan.at(beside, along);
                    if (at[0] >= 0 && at[1] >= 0 && at[0] < scan.width() && at[1] < scan.height()) {
                        lights.add((double) scan.light((int) at[0], (int) at[1]));
                    }
                }
            }
            if (lights.size() > ALONG) {
                sides.add(median(lights));
            }
        }
        double[] levels = sides.stream().mapToDouble(SrgbCurve::level).toArray();
        return levels.length < 3 || StatUtils.max(levels) - StatUtils.min(levels) > EVEN
                ? OptionalDouble.empty() : OptionalDouble.of(median(sides));
    }
}
