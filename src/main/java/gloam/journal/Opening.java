package gloam.journal;

import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.util.List;

/**
 * One opening of the shutter and the sky's light on the film meanwhile.
 *
 * @param open           from opening to closing
 * @param illuminancesLx illuminance on the film in lx at even steps, both ends included; a single one for
 *                       steady light
 */
public record Opening(Interval open, List<Double> illuminancesLx) {

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

    /** Illuminance half-way through, in lx. */
    public double middleLx() {
        return illuminancesLx.get(illuminancesLx.size() / 2);
    }
}
