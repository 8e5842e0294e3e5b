package gloam.planner;

import gloam.ephemeris.Target;
import gloam.gear.FNumber;
import gloam.trail.Framing;
import java.util.Optional;

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
 * @param faintest   what of it that is faintest against its limit, where it goes by names
 */
record ExposureChoice(Framing framing, int openMin, int closeMin, FNumber fNumber, double toneStops,
        double marginMag, Optional<Target> faintest) {
}
