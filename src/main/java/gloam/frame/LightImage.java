package gloam.frame;

import java.util.BitSet;

/**
 * An image as light: pixel by pixel its luminance as a share of white, larger pixels in place of many small
 * ones; x counts from the left, y from the top.
 */
public final class LightImage {

    private final int width;
    private final int height;
    private final float[] light;
    private final BitSet clipped;

    /**
     * An image without light, to be filled.
     *
     * @param width  pixels across
     * @param height pixels down
     */
    public LightImage(int width, int height) {
        this(width, height, new float[width * height], new BitSet(width * height));
    }

    private LightImage(int width, int height, float[] light, BitSet clipped) {
        this.width = width;
        this.height = height;
        this.light = light;
        this.clipped = clipped;
    }

    /** Pixels across. */
    public int width() {
        return width;
    }

    /** Pixels down. */
    public int height() {
        return height;
    }

    /** Adds light to a pixel. */
    public void add(int x, int y, float share) {
        light[y * width + x] += share;
    }

    /** Says that some of the light of a pixel was lost since it was more than white. */
    public void clip(int x, int y) {
        clipped.set(y * width + x);
    }

    /** Light of a pixel as a share of white. */
    public float light(int x, int y) {
        return light[y * width + x];
    }

    /** Level of a pixel, coded as sRGB, as a share of white. */
    public double level(int x, int y) {
        return SrgbCurve.level(Math.min(1, light(x, y)));
    }

    /** Whether some of its light was lost. */
    public boolean clipped(int x, int y) {
        return clipped.get(y * width + x);
    }

    float[] lights() {
        return light;
    }

    /**
     * The image turned as Exif says (TIFF 6.0, Orientation): 1 as it is, 2 mirrored, 3 turned by half, 4
     * upside down, 5 to 8 with rows for columns.
     */
    public LightImage turned(int orientation) {
        if (orientation <= 1 || orientation > 8) {
            return this;
        }
        boolean across = orientation >= 5;
        LightImage turned = new LightImage(across ? height : width, across ? width : height);
        boolean fromRight = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
        boolean fromBelow = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
        for (int y = 0; y < turned.height; y++) {
            for (int x = 0; x < turned.width; x++) {
                int along = across ? y : x;
                int down = across ? x : y;
                int from = (fromBelow ? height - 1 - down : down) * width
                        + (fromRight ? width - 1 - along : along);
                turned.light[y * turned.width + x] = light[from];
                turned.clipped.set(y * turned.width + x, clipped.get(from));
            }
        }
        return turned;
    }
}
