package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import java.time.Instant;
import java.util.Optional;

/** Where the camera of a wish points. */
public sealed interface Aim {

    /** How far the camera is turned about its axis, clockwise as seen from behind positive. */
    Angle roll();

    /** Where the frame's centre looks, with its trails at a site, when that is the middle of the exposure. */
    default Direction at(TrailEstimator trails, Instant middle) {
        return this instanceof Point point ? point.direction
                : this instanceof Follow follow ? trails.direction(follow.target, middle) : trails.pole();
    }

    /**
     * A fixed direction.
     *
     * @param direction where the frame's centre looks
     * @param roll      see {@link Aim#roll()}
     */
    record Point(Direction direction, Angle roll) implements Aim { }

    /**
     * The celestial pole above the horizon.
     *
     * @param roll see {@link Aim#roll()}
     */
    record Pole(Angle roll) implements Aim { }

    /**
     * Wherever a target stands at the middle of the exposure.
     *
     * @param target      what is put at the frame's centre
     * @param levelWithin how far its trail may lean from the level at mid exposure; empty where it does not
     *                    matter
     * @param altitudeDeg apparent altitude at which it stands at mid exposure
     * @param azimuth     part of the horizon above which it stands at mid exposure; empty for any
     * @param roll        see {@link Aim#roll()}
     */
    record Follow(Target target, Optional<Angle> levelWithin, Between altitudeDeg, Optional<Sector> azimuth,
            Angle roll) implements Aim {
    }
}
