package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Puts into words what a wish requires of a night. */
final class ConditionWords {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ConditionWords() {
    }

    /** What holds, in words that can stand before "only 20:10–21:30". */
    static String what(Requirement what) {
        if (what instanceof Requirement.Plain plain) {
            return switch (plain) {
                case SUN_DOWN -> "Sun down";
                case DARK -> "dark";
                case NO_MOONLIGHT -> "free of moonlight";
                case MOON_UP -> "Moon up";
                case DUSK -> "dusk";
                case DAWN -> "dawn";
                case MOON_OUTSIDE -> "Moon outside the frame";
            };
        } else if (what instanceof Requirement.TargetUp up) {
            return name(up.target()) + " above the skyline";
        } else if (what instanceof Requirement.AimUp) {
            return "aim above the skyline";
        } else if (what instanceof Requirement.Level level) {
            return "trail of " + name(level.target()) + " within " + Wording.degrees(level.within().degrees()) + " of level";
        } else if (what instanceof Requirement.InFrame in) {
            return in.body().properName() + " in the frame";
        } else if (what instanceof Requirement.Within within) {
            return within(within);
        } else if (what instanceof Requirement.MoonOn on) {
            return "Moon " + Wording.word(on.side());
        }
        Requirement.ByTheClock clock = (Requirement.ByTheClock) what;
        return between(clock.shown().orElse(clock.wanted()));
    }

    /** Why something holds at no minute of a night. */
    static String never(Requirement what, Night night) {
        if (what instanceof Requirement.Plain plain) {
            return switch (plain) {
                case SUN_DOWN -> "the Sun does not set";
                case DARK -> "the Sun does not go below -18°";
                case NO_MOONLIGHT -> "moonlight all night";
                case MOON_UP -> "the Moon does not rise";
                case DUSK -> "no evening twilight";
                case DAWN -> "no morning twilight";
                case MOON_OUTSIDE -> "the Moon is in the frame all night";
            };
        } else if (what instanceof Requirement.TargetUp up) {
            return name(up.target()) + " is below the skyline while the Sun is down";
        } else if (what instanceof Requirement.AimUp up) {
            return String.format(Locale.ROOT, "the aim at altitude %.0f° is below the skyline of %.0f° at azimuth %.0f°; "
                    + "raise it", up.aim().altitude().degrees(), up.skyline().degrees(), up.aim().azimuth().degrees());
        } else if (what instanceof Requirement.Level level) {
            return String.format(Locale.ROOT, "the trail of %s leans more than %.0f° while the Sun is down",
                    name(level.target()), level.within().degrees());
        } else if (what instanceof Requirement.InFrame in) {
            return in.body().properName() + " is not in the frame while the Sun is down";
        } else if (what instanceof Requirement.ByTheClock clock) {
            return clock.shown().isPresent() ? "the Sun is up all through " + what(clock)
                    : "the clocks skip all of " + TIME.format(clock.wanted().from()) + " to "
                    + TIME.format(clock.wanted().to()) + ": " + ClockChange.of(night).orElseThrow();
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
        return "the clock between " + clock(time.from()) + " and " + clock(time.to());
    }

    private static String clock(LocalTime time) {
        return TIME.format(time);
    }

    private static String words(Between bounds, String unit) {
        String least = bounds.least().isPresent() ? "at least " + number(bounds.least().getAsDouble()) + unit : "";
        String most = bounds.most().isPresent() ? "at most " + number(bounds.most().getAsDouble()) + unit : "";
        return least.isEmpty() || most.isEmpty() ? least + most : least + " and " + most;
    }

    private static String number(double number) {
        return number == Math.rint(number) ? String.format(Locale.ROOT, "%.0f", number)
                : String.format(Locale.ROOT, "%.1f", number);
    }

    private static String name(Target target) {
        return target instanceof Body body ? body.properName() : ((Star) target).name();
    }
}
