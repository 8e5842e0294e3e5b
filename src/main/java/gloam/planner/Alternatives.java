package gloam.planner;

import gloam.ephemeris.Night;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;

/**
 * What to do when the sky does not keep to a plan.
 *
 * @param cloudedOut for wishes served, in the trip's order, the best window that is left on another night
 * @param ifClears   of a plan for one evening, what is left if the sky clears only later, in order of time
 */
public record Alternatives(List<SecondChoice> cloudedOut, List<IfClears> ifClears) {

    /** Nothing else to do. */
    public static final Alternatives NONE = new Alternatives(List.of(), List.of());

    /** Copies the lists. */
    public Alternatives {
        cloudedOut = List.copyOf(cloudedOut);
        ifClears = List.copyOf(ifClears);
    }

    /**
     * The best window that is left for a wish on a night on which it is not planned, beside what is.
     *
     * @param wish   which
     * @param camera with which camera
     * @param night  the night and its site
     * @param openAt when the shutter would open
     */
    public record SecondChoice(Wish wish, Camera camera, Night night, Instant openAt) {
    }

    /**
     * The best that is left of an evening.
     *
     * @param clearAt the sky is clear from then on, at the latest
     * @param night   the night and its site
     * @param instead the exposures, in order of time; empty when nothing is left
     */
    public record IfClears(Instant clearAt, Night night, List<Instead> instead) {

        /** Copies the list. */
        public IfClears {
            instead = List.copyOf(instead);
        }
    }

    /**
     * An exposure of what is left: its wish, its camera, when the shutter is open, and the f-number to set.
     */
    public record Instead(Wish wish, Camera camera, Interval open, FNumber fNumber) {
    }
}
