package gloam.journal;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.util.List;
import java.util.Optional;

/**
 * One opening of the shutter and the sky's light on the film meanwhile.
 *
 * @param open           from opening to closing
 * @param illuminancesLx illuminance on the film in lx at even steps, both ends included; a single one for
 *                       steady light
 * @param aim            direction of the frame's centre, where it is not that of the sheet
 * @param fNumber        f-number, where it is not that of the sheet
 */
public record Opening(Interval open, List<Double> illuminancesLx, Optional<Direction> aim,
        Optional<FNumber> fNumber) {

    /** Allowed illuminances: from a dark sky through a dense filter and long bellows to daylight. */
    public static final Range ILLUMINANCE = new Range("illuminance", 1e-25, 1e6, "lx");
    /** Allowed numbers of illuminances. */
    public static final Range SAMPLES = new Range("number of illuminances", 1, 200, "");

    /** Copies the list; refuses impossible values with {@link BadInput}. */
    public Opening {
        illuminancesLx = List.copyOf(illuminancesLx);
        SAMPLES.check(illuminancesLx.size());
        illuminancesLx.forEach(ILLUMINANCE::check);
    }

    /** An opening at the aim and f-number of its sheet. */
    public Opening(Interval open, List<Double> illuminancesLx) {
        this(open, illuminancesLx, Optional.empty(), Optional.empty());
    }

    /** The same at an aim and f-number of its own, or at its sheet's where empty. */
    public Opening set(Optional<Direction> ownAim, Optional<FNumber> ownFNumber) {
        return new Opening(open, illuminancesLx, ownAim, ownFNumber);
    }

    /** Illuminance half-way through, in lx. */
    public double middleLx() {
        return illuminancesLx.get(illuminancesLx.size() / 2);
    }
}
