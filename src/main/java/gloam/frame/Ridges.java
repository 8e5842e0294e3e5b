package gloam.frame;

import gloam.units.Median;
import java.util.OptionalDouble;

/**
 * Bright lines of a picture: where it is brighter than on both sides of itself, in whatever direction, by
 * more than its grain; and how far each pixel lies from the nearest one.
 */
public final class Ridges {

    /** A coarse search steps so that it cannot pass a line that is so wide. */
    static final double WIDE_PX = 6;

    private static final int ASIDE = 4;
    /** So far from its middle nothing is left of a line, however blurred. */
    private static final int WHOLE = 11;
    private static final double STANDS_OUT = 4;
    private static final double DIAGONAL = Math.sqrt(2);

    private final int width;
    private final int height;
    private final float[] smooth;
    private final float[] away;
    private final double least;

    Ridges(LightImage picture) {
        this.width = picture.width();
        this.height = picture.height();
        this.smooth = smooth(picture);
        float[] strength = new float[width * height];
        for (int y = ASIDE; y < height - ASIDE; y++) {
            for (int x = ASIDE; x < width - ASIDE; x++) {
                strength[y * width + x] = strength(x, y);
            }
        }
        double[] sizes = new double[strength.length];
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(strength[i]);
        }
        this.least = STANDS_OUT * Median.NORMAL * Median.of(sizes);
        this.away = new float[width * height];
        for (int i = 0; i < away.length; i++) {
            away[i] = strength[i] > least ? 0 : Float.MAX_VALUE / 4;
        }
        spread();
    }

    /** Levels, smoothed over five by five pixels. */
    private static float[] smooth(LightImage picture) {
        int width = picture.width();
        int height = picture.height();
        float[] across = new float[width * height];
        float[] smooth = new float[width * height];
        for (int pass = 0; pass < 2; pass++) {
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    double sum = 0;
                    for (int i = -2; i <= 2; i++) {
                        int column = pass == 0 ? Math.max(0, Math.min(width - 1, x + i)) : x;
                        int row = pass == 0 ? y : Math.max(0, Math.min(height - 1, y + i));
                        sum += pass == 0 ? SrgbCurve.level(Math.min(1, picture.light(column, row)))
                                : across[row * width + column];
                    }
                    (pass == 0 ? across : smooth)[y * width + x] = (float) (sum / 5);
                }
            }
        }
        return smooth;
    }

    /**
     * How much brighter a pixel is than the brighter of two on both sides, in the best of four directions.
     */
    private float strength(int x, int y) {
        float here = smooth[y * width + x];
        float best = Math.max(over(here, x, y, ASIDE, 0), over(here, x, y, 0, ASIDE));
        return Math.max(best, Math.max(over(here, x, y, ASIDE - 1, ASIDE - 1),
                over(here, x, y, ASIDE - 1, 1 - ASIDE)));
    }

    private float over(float here, int x, int y, int right, int down) {
        return here - Math.max(smooth[(y + down) * width + x + right],
                smooth[(y - down) * width + x - right]);
    }

    /** Distances to the nearest ridge, by two sweeps (Borgefors 1986, chamfer distances of 1 and √2). */
    private void spread() {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                nearer(x, y, -1);
            }
        }
        for (int y = height - 1; y >= 0; y--) {
            for (int x = width - 1; x >= 0; x--) {
                nearer(x, y, 1);
            }
        }
    }

    private void nearer(int x, int y, int sense) {
        nearer(x, y, x + sense, y, 1);
        nearer(x, y, x - 1, y + sense, (float) DIAGONAL);
        nearer(x, y, x, y + sense, 1);
        nearer(x, y, x + 1, y + sense, (float) DIAGONAL);
    }

    private void nearer(int x, int y, int column, int row, float apart) {
        if (column >= 0 && column < width && row >= 0 && row < height) {
            away[y * width + x] = Math.min(away[y * width + x], away[row * width + column] + apart);
        }
    }

    /** How far a place in the picture lies from the nearest ridge. */
    double awayPx(double x, double y) {
        return away[Math.min(height - 1, (int) y) * width + Math.min(width - 1, (int) x)];
    }

    /** How far along a line across a trail the ridge lies, to parts of a pixel; empty where there is none. */
    OptionalDouble acrossPx(double x, double y, double right, double down, int reachPx) {
        double best = Double.NEGATIVE_INFINITY;
        double at = 0;
        for (double step = -reachPx; step <= reachPx; step += 0.5) {
            double value = level(x + step * right, y + step * down);
            if (value > best) {
                best = value;
                at = step;
            }
        }
        double before = level(x + (at - ASIDE) * right, y + (at - ASIDE) * down);
        double after = level(x + (at + ASIDE) * right, y + (at + ASIDE) * down);
        if (!(best - Math.max(before, after) > least)) {
            return OptionalDouble.empty();
        }
        double sky = Math.max(before, after);
        double sum = 0;
        double moment = 0;
        for (double step = -ASIDE; step <= ASIDE; step += 0.5) {
            double over = Math.max(0, level(x + (at + step) * right, y + (at + step) * down) - sky);
            sum += over;
            moment += over * (at + step);
        }
        return sum > 0 ? OptionalDouble.of(moment / sum) : OptionalDouble.empty();
    }

    /** How much brighter a place on a line towards another is than both sides of the line; 0 at the rim. */
    double contrast(double[] here, double[] next) {
        double length = Math.hypot(next[0] - here[0], next[1] - here[1]);
        double x = -(next[1] - here[1]) / length * ASIDE;
        double y = (next[0] - here[0]) / length * ASIDE;
        double over = level(here[0], here[1]) - Math.max(level(here[0] + x, here[1] + y),
                level(here[0] - x, here[1] - y));
        return Double.isNaN(over) ? 0 : over;
    }

    /**
     * How much brighter a place on a line towards another is than the mean of both sides of the line, and
     * that mean; not numbers at the rim.
     */
    double[] rise(double[] here, double[] next) {
        double length = Math.hypot(next[0] - here[0], next[1] - here[1]);
        double x = -(next[1] - here[1]) / length * ASIDE;
        double y = (next[0] - here[0]) / length * ASIDE;
        double beside = (level(here[0] + x, here[1] + y) + level(here[0] - x, here[1] - y)) / 2;
        return new double[] {level(here[0], here[1]) - beside, beside};
    }

    /**
     * What a line towards another place has over what is beside it, summed up across it, in levels times
     * pixels; not a number at the rim.
     */
    double whole(double[] here, double[] next) {
        double length = Math.hypot(next[0] - here[0], next[1] - here[1]);
        double x = -(next[1] - here[1]) / length;
        double y = (next[0] - here[0]) / length;
        double beside = (level(here[0] + WHOLE * x, here[1] + WHOLE * y)
                + level(here[0] - WHOLE * x, here[1] - WHOLE * y)) / 2;
        double sum = 0;
        for (int step = 1 - WHOLE; step < WHOLE; step++) {
            sum += level(here[0] + step * x, here[1] + step * y) - beside;
        }
        return sum;
    }

    /** By how much a line has to stand out. */
    double least() {
        return least;
    }

    /** Level at a place, straight between the middles of pixels; not a number beside the picture. */
    private double level(double x, double y) {
        int left = (int) Math.floor(x - 0.5);
        int top = (int) Math.floor(y - 0.5);
        if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) {
            return Double.NaN;
        }
        double across = x - 0.5 - left;
        double under = y - 0.5 - top;
        int i = top * width + left;
        return (1 - under) * ((1 - across) * smooth[i] + across * smooth[i + 1])
                + under * ((1 - across) * smooth[i + width] + across * smooth[i + width + 1]);
    }
}
