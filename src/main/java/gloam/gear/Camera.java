package gloam.gear;

import gloam.units.Range;
import java.time.Duration;

/**
 * A camera on its tripod.
 *
 * @param name       its name
 * @param lens       the lens on it
 * @param frame      the exposed area
 * @param changeover time from closing one exposure to opening the next, not negative
 */
public record Camera(String name, Lens lens, Frame frame, Duration changeover) {

    /** Allowed changeover times. */
    public static final Range CHANGEOVER = new Range("changeover", 0, 240, "min");

    /** Refuses a changeover outside its range with {@link gloam.units.BadInput}. */
    public Camera {
        CHANGEOVER.check(changeover.toSeconds() / 60.0);
    }
}
