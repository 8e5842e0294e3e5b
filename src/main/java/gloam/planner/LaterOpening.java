package gloam.planner;

import gloam.gear.FNumber;
import gloam.units.Range;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A later opening on the sheet of a wish. It lasts as long as it says and begins as soon after the one before
 * as its gap and its sky let it.
 *
 * @param aim     where the camera points then
 * @param sky     the kind of sky wanted then
 * @param lasts   how long it is open, in whole minutes
 * @param fNumber its f-number; that of the first opening if empty
 * @param gap     least time from closing the one before
 */
public record LaterOpening(Aim aim, SkyKind sky, Duration lasts, Optional<FNumber> fNumber,
        Duration gap) {

    /** How long it may last. */
    public static final Range EXPOSURE = new Range("exposure", 1, 1440, "min");
    /** Allowed gaps. */
    public static final Range GAP = new Range("gap", 0, 1440, "min");

    /** Refuses times outside their ranges with {@link gloam.units.BadInput}. */
    public LaterOpening {
        EXPOSURE.check(lasts.toMinutes());
        GAP.check(gap.toMinutes());
    }

    /** What is wanted of it, as a wish of its own: any tone, nothing that must record. */
    Wish alone(Wish whole) {
        return new Wish(whole.name(), aim, sky, new Wish.Tone.Free(), new Wish.Records.Nothing(),
                new TrailLength(OptionalDouble.empty(), OptionalDouble.empty()), lasts, lasts,
                fNumber.map(List::of).orElse(whole.fNumbers()), whole.worth(), 1, whole.film());
    }
}
