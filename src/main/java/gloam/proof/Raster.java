package gloam.proof;

import gloam.gear.Frame;
import gloam.units.Range;

/**
 * Square pixels over a frame, row 0 at the top as seen in the scene.
 *
 * @param frame    the exposed area
 * @param widthPx  pixels along its width
 * @param heightPx pixels along its height
 */
public record Raster(Frame frame, int widthPx, int heightPx) {

    /** Allowed numbers of pixels along the longer side. */
    public static final Range LONG_SIDE = new Range("picture size", 16, 4000, "pixels");

    /** The raster of a frame with that many pixels along its longer side. */
    public static Raster of(Frame frame, int longSidePx) {
        LONG_SIDE.check(longSidePx);
        double pixelMm = Math.max(frame.widthMm(), frame.heightMm()) / longSidePx;
        return new Raster(frame, pixels(frame.widthMm(), pixelMm), pixels(frame.heightMm(), pixelMm));
    }

    private static int pixels(double sideMm, double pixelMm) {
        return (int) Math.max(1, Math.round(sideMm / pixelMm));
    }

    /** Side of a pixel in mm. */
    public double pixelMm() {
        return frame.widthMm() / widthPx;
    }

    /** Where a column counted from the left edge, whole numbers at the pixels' middles, lies on the sheet. */
    public double xMm(double column) {
        return ((column + 0.5) / widthPx - 0.5) * frame.widthMm();
    }

    /** Where a row counted from the upper edge, whole numbers at the pixels' middles, lies on the sheet. */
    public double yMm(double row) {
        return (0.5 - (row + 0.5) / heightPx) * frame.heightMm();
    }

    /** The column of a place: the inverse of {@link #xMm}. */
    public double column(double xMm) {
        return (xMm / frame.widthMm() + 0.5) * widthPx - 0.5;
    }

    /** The row of a place: the inverse of {@link #yMm}. */
    public double row(double yMm) {
        return (0.5 - yMm / frame.heightMm()) * heightPx - 0.5;
    }
}
