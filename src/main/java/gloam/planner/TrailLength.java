package gloam.planner;

import gloam.units.Range;
import java.util.OptionalDouble;

/**
 * Trail length wanted at the frame's centre, in mm; empty where it does not matter.
 *
 * @param leastMm the least
 * @param mostMm  the most
 */
public record TrailLength(OptionalDouble leastMm, OptionalDouble mostMm) {

    /** Allowed trail lengths. */
    public static final Range TRAIL = new Range("trail length", 0, 2000, "mm");

    /** Refuses lengths outside their range with {@link gloam.units.BadInput}. */
    public TrailLength {
        leastMm.ifPresent(TRAIL::check);
        mostMm.ifPresent(TRAIL::check);
    }

    /** Whether any length is as good. */
    public boolean free() {
        return leastMm.isEmpty() && mostMm.isEmpty();
    }
}
