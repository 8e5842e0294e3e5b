package gloam.view;

import gloam.ephemeris.Body;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.planner.Between;
import gloam.planner.ClockChange;
import gloam.planner.Limits;
import gloam.planner.Requirement;
import gloam.planner.Sector;
import gloam.units.Angle;
import gloam.units.Label;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts into words what a wish requires of a night. */
final class RequirementWords {

    private RequirementWords() {
    }

    /** What holds, in words that can stand before "only 20:10–21:30". */
    static String what(Requirement what) {
        if (what instanceof Requirement.Plain plain) {
            return switch (plain) {
                case SUN_DOWN -> "Sun down";
                case MOON_OUTSIDE -> "Moon outside the frame";
            };
        } else if (what instanceof Requirement.OfSky of) {
            return SkyWords.what(of.part());
        } else if (what instanceof Requirement.AtSite at) {
            return "at " + String.join(" or ", at.sites());
        } else if (what instanceof Requirement.TargetUp up) {
            return name(up.target()) + " above the skyline";
        } else if (what instanceof Requirement.TargetHigh high) {
            return name(high.target()) + " " + words(high.altitudeDeg(), "°") + " high";
        } else if (what instanceof Requirement.TargetToward toward) {
            return name(toward.target()) + " between azimuths " + words(toward.azimuth());
        } else if (what instanceof Requirement.AimUp) {
            return "aim above the skyline";
        } else if (what instanceof Requirement.Level level) {
            return "trail of " + name(level.target()) + " within " + degrees(level.within()) + " of level";
        } else if (what instanceof Requirement.InFrame in) {
            return name(in.target()) + " in the frame";
        } else if (what instanceof Requirement.Within within) {
            return within(within);
        } else if (what instanceof Requirement.Awake) {
            return "you are up";
        } else if (what instanceof Requirement.MoonOn on) {
            return "Moon " + Label.of(on.side());
        }
        Requirement.ByTheClock clock = (Requirement.ByTheClock) what;
        return between(clock.shown().orElse(clock.wanted()));
    }

    /** Why something holds at no minute of a night. */
    static String never(Requirement what, Night night) {
        if (what instanceof Requirement.Plain plain) {
            return switch (plain) {
                case SUN_DOWN -> "the Sun does not set";
                case MOON_OUTSIDE -> "the Moon is in the frame all night";
            };
        } else if (what instanceof Requirement.OfSky of) {
            return SkyWords.never(of.part());
        } else if (what instanceof Requirement.AtSite) {
            return "wanted " + what(what) + " alone";
        } else if (what instanceof Requirement.TargetUp up) {
            return name(up.target()) + " is below the skyline while the Sun is down";
        } else if (what instanceof Requirement.TargetHigh || what instanceof Requirement.TargetToward) {
            return "never " + what(what) + " while the Sun is down";
        } else if (what instanceof Requirement.AimUp up) {
            return "the aim at altitude " + degrees(up.aim().altitude()) + " is below the skyline of "
                    + degrees(up.skyline()) + " at azimuth " + degrees(up.aim().azimuth()) + "; raise it";
        } else if (what instanceof Requirement.Level level) {
            return "the trail of " + name(level.target()) + " leans more than " + degrees(level.within())
                    + " while the Sun is down";
        } else if (what instanceof Requirement.InFrame in) {
            return name(in.target()) + " is not in the frame while the Sun is down";
        } else if (what instanceof Requirement.Awake awake) {
            return "you are up from " + awake.hours().from() + " to " + awake.hours().to()
                    + ", not while the Sun is down";
        } else if (what instanceof Requirement.ByTheClock clock) {
            return clock.shown().isPresent() ? "the Sun is up all through " + what(clock)
                    : "the clocks skip all of " + clock.wanted().from() + " to " + clock.wanted().to() + ": "
                    + NightWords.of(ClockChange.of(night).orElseThrow());
        }
        return "never the " + what(what) + " while the Sun is down";
    }

    private static String within(Requirement.Within within) {
        return switch (within.measure()) {
            case MOON_ALTITUDE_DEG -> "Moon " + words(within.bounds(), "°") + " high";
            case MOON_LIT_PERCENT -> "Moon " + words(within.bounds(), " %") + " lit";
            case SUN_DEPTH_DEG -> "Sun " + words(within.bounds(), "°") + " down";
        };
    }

    private static String between(Limits.TimeOfNight time) {
        return "the clock between " + time.from() + " and " + time.to();
    }

    private static String words(Between bounds, String unit) {
        String least = bounds.least().isPresent() ? "at least " + number(bounds.least().getAsDouble()) + unit
                : "";
        String most = bounds.most().isPresent() ? "at most " + number(bounds.most().getAsDouble()) + unit
                : "";
        return least.isEmpty() || most.isEmpty() ? least + most : least + " and " + most;
    }

    /** Such as "300° and 30°". */
    static String words(Sector sector) {
        return number(sector.fromDeg()) + "° and " + number(sector.toDeg()) + "°";
    }

    private static String number(double number) {
        return Wording.number(number, number == Math.rint(number) ? 0 : 1);
    }

    private static String degrees(Angle angle) {
        return Wording.number(angle.degrees(), 0) + "°";
    }

    /** The name of a body or star. */
    static String name(Target target) {
        return target instanceof Body body ? body.properName() : ((Star) target).name();
    }

    /** What must record, as it stands before the stars that do: such as "Mars and ". */
    static String beforeStars(Stream<String> names) {
        return names.map(name -> name + " and ").collect(Collectors.joining());
    }

    /** The same of what has that name in a trip file. */
    static String name(String name) {
        return Label.named(name, List.of(Body.values())).map(Body::properName).orElse(name);
    }
}
