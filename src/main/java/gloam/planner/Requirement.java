package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.units.Angle;
import java.util.List;
import java.util.Optional;

/** What must hold for a wish to be exposed, apart from its exposure and trails. */
public sealed interface Requirement {

    /** Requirements that have no numbers of the wish's own. */
    enum Plain implements Requirement {
        /** The Sun is below the horizon. */
        SUN_DOWN,
        /** The Moon, which is not in the picture wanted, stays outside the frame. */
        MOON_OUTSIDE
    }

    /** A part of the kind of sky wanted. */
    record OfSky(SkyKind.Part part) implements Requirement { }

    /** The night is spent at one of some sites, by their names. */
    record AtSite(List<String> sites) implements Requirement { }

    /** What the camera follows stands above the skyline. */
    record TargetUp(Target target) implements Requirement { }

    /** What the camera follows stands between two altitudes. */
    record TargetHigh(Target target, Between altitudeDeg) implements Requirement { }

    /** What the camera follows stands above a part of the horizon. */
    record TargetToward(Target target, Sector azimuth) implements Requirement { }

    /**
     * A fixed aim looks above the skyline.
     *
     * @param aim     where the frame's centre looks
     * @param skyline altitude of the skyline there, of the level horizon where it is lower
     */
    record AimUp(Direction aim, Angle skyline) implements Requirement { }

    /** The trail of what the camera follows is level, within an angle. */
    record Level(Target target, Angle within) implements Requirement { }

    /** A body or star stands in the frame, above the skyline. */
    record InFrame(Target target) implements Requirement { }

    /** A number of the sky lies between bounds. */
    record Within(Measure measure, Between bounds) implements Requirement { }

    /** Numbers of the sky that a wish may bound. */
    enum Measure {
        /** Apparent altitude of the Moon in degrees. */
        MOON_ALTITUDE_DEG,
        /** Lit part of the Moon's disc in per cent. */
        MOON_LIT_PERCENT,
        /** Depth of the Sun's centre below the horizon in degrees. */
        SUN_DEPTH_DEG
    }

    /** The Moon stands on a side of the camera. */
    record MoonOn(Limits.Side side) implements Requirement { }

    /** People are up, in their hours by the site's clocks. */
    record Awake(Limits.TimeOfNight hours) implements Requirement { }

    /**
     * The site's clocks show a time of night.
     *
     * @param wanted  the time wanted
     * @param shown   what the clocks show of it that night; empty where they skip all of it
     */
    record ByTheClock(Limits.TimeOfNight wanted,
            Optional<Limits.TimeOfNight> shown) implements Requirement { }
}
