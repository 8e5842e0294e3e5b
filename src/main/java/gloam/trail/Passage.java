package gloam.trail;

import gloam.ephemeris.Target;
import gloam.units.Finite;

/**
 * How something passes over the frame while the shutter is open.
 *
 * @param target   what passes
 * @param middle   half-way through the longest of its stretches
 * @param speedMmS speed of its image at mid exposure, or at the moment in the frame nearest to it, in mm/s
 */
public record Passage(Target target, Trail.Point middle, double speedMmS) {

    /** Refuses what is not finite. */
    public Passage {
        Finite.check(speedMmS, "speed in mm/s");
    }
}
