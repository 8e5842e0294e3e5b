package gloam.planner;

import gloam.ephemeris.Target;
import gloam.gear.FNumber;
import gloam.trail.Framing;
import java.util.List;
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
 * @param later      what is exposed on the same sheet after that, in order
 */
record ExposureChoice(Framing framing, int openMin, int closeMin, FNumber fNumber, double toneStops,
        double marginMag, Optional<Target> faintest, List<Later> later) {

    /** The exposure of a wish between two minutes of its night, through the best f-number. */
    static ExposureChoice of(WishNight night, int openMin, int closeMin) {
        int number = ExposureSearch.bestFNumber(night, openMin, closeMin);
        double toneStops = night.light().toneStops(number, openMin, closeMin);
        return new ExposureChoice(night.aiming().framing(openMin + (closeMin - openMin) / 2), openMin,
                closeMin,
                night.with().fNumbers().get(number), toneStops,
                night.marginMag(number, toneStops, openMin, closeMin),
                night.faintest(number, toneStops, openMin, closeMin),
                night.sequel().chosen(number, closeMin));
    }

    /** When the sheet is done. */
    int lastMin() {
        return later.isEmpty() ? closeMin : later.get(later.size() - 1).closeMin;
    }

    /**
     * A later opening.
     *
     * @param wish what is wanted of it
     */
    record Later(Wish wish, Framing framing, int openMin, int closeMin, FNumber fNumber) {
    }
}
