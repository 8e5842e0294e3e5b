package gloam.planner;

import gloam.gear.FNumber;
import gloam.trail.Framing;

/**
 * An exposure for a wish.
 *
 * @param framing    how the camera looks
 * @param openMin    minute of opening
 * @param closeMin   minute of closing
 * @param fNumber    the f-number
 * @param toneStops  the sky's tone at the frame's centre
 * @param marginMag  magnitudes by which what must record is brighter than the trail limit, infinite where
 *                   nothing must
 */
record ExposureChoice(Framing framing, int openMin, int closeMin, FNumber fNumber, double toneStops,
        double marginMag) {
}
