package gloam.sheet;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.util.List;

/**
 * How the camera is set while the shutter is open, once or several times.
 *
 * @param framing  where the camera points
 * @param fNumber  the f-number
 * @param openings when the shutter is open, in order of time, at least one, without overlaps
 */
public record Setting(Framing framing, FNumber fNumber, List<Interval> openings) {

    /** Copies the list; refuses a setting at which nothing is exposed. */
    public Setting {
        openings = List.copyOf(openings);
        if (openings.isEmpty()) {
            throw new IllegalArgumentException("a setting needs an opening");
        }
        Sheet.refuseOverlaps(openings);
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return Interval.span(openings);
    }

    /** The lens. */
    public Lens lens() {
        return framing.camera().lens();
    }

    /** A wide sky's light in a direction as a share of that on the axis. */
    public double fallOff(Direction direction) {
        return lens().relativeIllumination(direction.to(framing.aim()), fNumber);
    }
}
