package gloam.frame;

import gloam.units.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Finds points and short lines of light in an image.
 *
 * <p><b>Model.</b> The image smoothed over three by three pixels; from it the median of cells, straight in
 * between, is taken; what stands out by five standard deviations (from the median deviation of the cell) and
 * hangs together is one thing; its place is the mean of its light. <b>Valid.</b> Stars at least as wide as a
 * pixel, trails up to some dozens of pixels. <b>Error.</b> A fifth of a pixel where it is clear.
 * <b>Departures.</b> What has nearly all of its light in one pixel is a fault of the sensor, and what is
 * large is a lamp, the Moon or land.
 */
public final class Detector {

    private static final int CELL = 32;
    private static final double STANDS_OUT = 5;
    /** A cell is never taken to be more even than that share of its light. */
    private static final double LEAST_NOISE = 0.004;
    private static final int LEAST_AREA = 5;
    private static final double LARGEST_SHARE = 0.04;
    private static final double ONE_PIXEL = 0.8;
    private static final int MOST = 500;
    private static final int ASIDE = 2;

    private final LightImage image;
    private final int width;
    private final int height;
    private final float[] smooth;
    private final int columns;
    private final int rows;
    private final float[] middles;
    private final float[] deviations;
    private final BitSet bright;
    private final List<Detection> found = new ArrayList<>();

    /** Looks through an image. */
    public Detector(LightImage image) {
        this.image = image;
        this.width = image.width();
        this.height = image.height();
        this.columns = Math.max(1, width / CELL);
        this.rows = Math.max(1, height / CELL);
        this.smooth = smooth(image);
        this.middles = new float[columns * rows];
        this.deviations = new float[columns * rows];
        cells();
        this.bright = new BitSet(width * height);
        find();
        found.sort(Comparator.comparingDouble(Detection::flux).reversed());
    }

    /** What was found, brightest first, some hundreds at most. */
    public List<Detection> found() {
        return List.copyOf(found.subList(0, Math.min(MOST, found.size())));
    }

    /** The pixels that stand out from the sky around them, with those next to them. */
    BitSet bright() {
        BitSet wide = new BitSet(width * height);
        for (int i = bright.nextSetBit(0); i >= 0; i = bright.nextSetBit(i + 1)) {
            int x = i % width;
            int y = i / width;
            int left = Math.max(0, x - ASIDE);
            int right = Math.min(width - 1, x + ASIDE);
            for (int row = Math.max(0, y - ASIDE); row <= Math.min(height - 1, y + ASIDE); row++) {
                wide.set(row * width + left, row * width + right + 1);
            }
        }
        return wide;
    }

    private static float[] smooth(LightImage image) {
        int width = image.width();
        int height = image.height();
        float[] light = image.lights();
        float[] across = new float[light.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * width + x;
                across[i] = (light[x > 0 ? i - 1 : i] + light[i] + light[x < width - 1 ? i + 1 : i]) / 3;
            }
        }
        float[] smooth = new float[light.length];
        for (int i = 0; i < smooth.length; i++) {
            smooth[i] = (across[i >= width ? i - width : i] + across[i]
                    + across[i + width < smooth.length ? i + width : i]) / 3;
        }
        return smooth;
    }

    private void cells() {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int left = column * width / columns;
                int top = row * height / rows;
                int right = (column + 1) * width / columns;
                int bottom = (row + 1) * height / rows;
                float[] values = new float[(right - left) * (bottom - top)];
                for (int y = top; y < bottom; y++) {
                    System.arraycopy(smooth, y * width + left, values, (y - top) * (right - left),
                            right - left);
                }
                Arrays.sort(values);
                float middle = values[values.length / 2];
                for (int i = 0; i < values.length; i++) {
                    values[i] = Math.abs(values[i] - middle);
                }
                Arrays.sort(values);
                middles[row * columns + column] = middle;
                deviations[row * columns + column] = (float) Math.max(LEAST_NOISE * middle,
                        Median.NORMAL * values[values.length / 2]);
            }
        }
    }

    /** A value of the cells at a pixel, straight between their middles. */
    private double at(float[] cells, int x, int y) {
        double column = Math.max(0, Math.min(columns - 1, (x + 0.5) * columns / width - 0.5));
        double row = Math.max(0, Math.min(rows - 1, (y + 0.5) * rows / height - 0.5));
        int left = Math.min((int) column, Math.max(0, columns - 2));
        int top = Math.min((int) row, Math.max(0, rows - 2));
        int right = Math.min(columns - 1, left + 1);
        int below = Math.min(rows - 1, top + 1);
        double across = column - left;
        double down = row - top;
        return (1 - down) * ((1 - across) * cells[top * columns + left]
                + across * cells[top * columns + right])
                + down * ((1 - across) * cells[below * columns + left]
                + across * cells[below * columns + right]);
    }

    private void find() {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (smooth[y * width + x] > at(middles, x, y) + STANDS_OUT * at(deviations, x, y)) {
                    bright.set(y * width + x);
                }
            }
        }
        BitSet left = (BitSet) bright.clone();
        int[] stack = new int[bright.cardinality()];
        for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
            together(i, left, stack);
        }
    }

    /** Follows what hangs together with a pixel, and keeps it where it may be a star. */
    private void together(int first, BitSet left, int[] stack) {
        left.clear(first);
        stack[0] = first;
        int size = 1;
        for (int next = 0; next < size; next++) {
            int x = stack[next] % width;
            int y = stack[next] / width;
            for (int row = Math.max(0, y - 1); row <= Math.min(height - 1, y + 1); row++) {
                for (int column = Math.max(0, x - 1); column <= Math.min(width - 1, x + 1); column++) {
                    int i = row * width + column;
                    if (left.get(i)) {
                        left.clear(i);
                        stack[size++] = i;
                    }
                }
            }
        }
        if (size >= LEAST_AREA) {
            keep(Arrays.copyOf(stack, size));
        }
    }

    private void keep(int[] pixels) {
        double flux = 0;
        double alongX = 0;
        double alongY = 0;
        double most = 0;
        double raw = 0;
        int least = Integer.MAX_VALUE;
        int greatest = 0;
        for (int i : pixels) {
            int x = i % width;
            int y = i / width;
            double sky = at(middles, x, y);
            double over = Math.max(0, smooth[i] - sky);
            flux += over;
            alongX += over * (x + 0.5);
            alongY += over * (y + 0.5);
            double alone = Math.max(0, image.light(x, y) - sky);
            raw += alone;
            most = Math.max(most, alone);
            least = Math.min(least, x);
            greatest = Math.max(greatest, x);
        }
        int tall = pixels.length == 0 ? 0 : (Arrays.stream(pixels).max().orElseThrow() / width)
                - (Arrays.stream(pixels).min().orElseThrow() / width);
        if (most < ONE_PIXEL * raw && Math.max(greatest - least, tall) < LARGEST_SHARE
                * Math.max(width, height)) {
            found.add(new Detection(alongX / flux, alongY / flux, flux));
        }
    }
}
