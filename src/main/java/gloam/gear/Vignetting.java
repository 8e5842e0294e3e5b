package gloam.gear;

import gloam.units.Range;
import gloam.units.Stops;

/**
 * Light that a lens's own mount takes away from the axis, beyond the fall-off of its projection.
 *
 * <p><b>Model.</b> In stops the loss grows with the fourth power of the distance from the axis: hardly any in
 * the middle, steep towards the corner. It is whole at the widest f-number and fades evenly to none two stops
 * below.
 * <b>Valid.</b> Any frame; beyond the stated corner the loss goes on growing. <b>Error.</b> Between axis and
 * corner a quarter of the stated loss, by which a growth with the square would differ. <b>Departures.</b>
 * Shape and fading are generic, common practice, no source; lenses differ, many are clear out to some
 * distance.
 *
 * @param cornerStops   loss in the corner at the widest f-number in stops, 0 to 4
 * @param cornerMm      distance from the axis at which it is stated, in mm, more than 0
 * @param widest        the lens's widest f-number
 */
public record Vignetting(double cornerStops, double cornerMm, FNumber widest) {

    /** Allowed losses in the corner. */
    public static final Range CORNER = new Range("loss in the corner", 0, 4, "stops");
    /** A mount that takes nothing. */
    public static final Vignetting NONE = new Vignetting(0, 1, FNumber.ONE);

    private static final double FADES_OVER_STOPS = 2;

    /** Refuses a loss or an f-number outside its range with {@link gloam.units.BadInput}. */
    public Vignetting {
        CORNER.check(cornerStops);
        if (!(cornerMm > 0)) {
            throw new IllegalArgumentException("a corner lies off the axis, not at " + cornerMm + " mm");
        }
    }

    /** Share of light the mount lets by at a distance from the axis, at an f-number. */
    double share(double radiusMm, FNumber fNumber) {
        double lossStops = cornerStops * fade(fNumber);
        return lossStops == 0 ? 1 : Stops.factor(-lossStops * Math.pow(radiusMm / cornerMm, 4));
    }

    /** Share of the loss that is left at an f-number: 1 at the widest, 0 from two stops below on. */
    private double fade(FNumber fNumber) {
        return Math.min(1, Math.max(0, 1 - widest.stopsOver(fNumber) / FADES_OVER_STOPS));
    }
}
