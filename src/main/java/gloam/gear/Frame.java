package gloam.gear;

import gloam.units.Range;

/**
 * The exposed area of a sheet.
 *
 * @param widthMm  along the camera's horizontal, 5 to 1000 mm
 * @param heightMm across it, 5 to 1000 mm
 */
public record Frame(double widthMm, double heightMm) {

    /** Allowed width and height. */
    public static final Range SIDE = new Range("frame side", 5, 1000, "mm");

    /** Refuses a side outside its range with {@link gloam.units.BadInput}. */
    public Frame {
        SIDE.check(widthMm);
        SIDE.check(heightMm);
    }

    /** Distance of a corner from the centre in mm. */
    public double halfDiagonalMm() {
        return Math.hypot(widthMm, heightMm) / 2;
    }

    /** Whether a point counted from the centre lies on the frame, its edge included. */
    public boolean contains(double xMm, double yMm) {
        return Math.abs(xMm) <= widthMm / 2 && Math.abs(yMm) <= heightMm / 2;
    }
}
