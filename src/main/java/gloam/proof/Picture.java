package gloam.proof;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/** Pixels as a screen shows them: grey, or red, green and blue, eight bits each, sRGB. */
public final class Picture {

    private final int widthPx;
    private final int heightPx;
    private final int channels;
    private final byte[] levels;
    private final boolean printed;

    Picture(int widthPx, int heightPx, int channels, byte[] levels, boolean printed) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.channels = channels;
        this.levels = levels;
        this.printed = printed;
    }

    /** A grey picture by the level, 0 to 1, of each pixel. */
    public static Picture ofGrey(int widthPx, int heightPx, DoubleBinaryOperator levels) {
        byte[] grey = new byte[widthPx * heightPx];
        for (int i = 0; i < grey.length; i++) {
            grey[i] = (byte) Math.round(255 * Math.max(0, Math.min(1, levels.applyAsDouble(i % widthPx,
                    i / widthPx))));
        }
        return new Picture(widthPx, heightPx, 1, grey, false);
    }

    /** Whether it is the print made from a negative, not the sheet itself. */
    public boolean printed() {
        return printed;
    }

    /** Pixels in a row. */
    public int widthPx() {
        return widthPx;
    }

    /** Rows. */
    public int heightPx() {
        return heightPx;
    }

    /** Levels a pixel: 1 for grey, 3 for red, green and blue. */
    public int channels() {
        return channels;
    }

    /** The level of a channel of a pixel, 0 to 255, row 0 at the top. */
    public int level(int column, int row, int channel) {
        return levels[(row * widthPx + column) * channels + channel] & 0xff;
    }

    /** All levels of a row, pixel by pixel. */
    public byte[] row(int row) {
        return Arrays.copyOfRange(levels, row * widthPx * channels, (row + 1) * widthPx * channels);
    }
}
