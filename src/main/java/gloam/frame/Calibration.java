package gloam.frame;

import gloam.units.Range;

/**
 * What a camera's levels are off by, from a frame of a known sky.
 *
 * @param camera    the camera's name for itself; empty where the frame does not say
 * @param offsetMag to be added to a sky that its frames measure, in mag, -5 to 5
 * @param errorMag  one standard deviation of that, 0.01 to 2
 * @param known     whether it was measured at all
 */
public record Calibration(String camera, double offsetMag, double errorMag, boolean known) {

    /** Allowed offsets. */
    public static final Range OFFSET = new Range("offset of the camera", -5, 5, "mag");
    /** Allowed errors. */
    public static final Range ERROR = new Range("error of the calibration", 0.01, 2, "mag");
    /** A camera that was not calibrated: as ISO 12232 has it. */
    public static final Calibration NONE = new Calibration("", 0, 2, false);

    /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
    public Calibration {
        OFFSET.check(offsetMag);
        ERROR.check(errorMag);
    }
}
