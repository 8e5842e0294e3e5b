package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.SkyPosition;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Says at which minutes of a night the limits of a wish hold that bind the moment and not the length of an exposure. */
final class LimitConditions {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Limits limits;
    private final Wish.SkyKind kind;
    private final NightSky sky;
    private final Aiming aiming;

    /** The limits of a wish on a night. */
    LimitConditions(Limits limits, Wish.SkyKind kind, NightSky sky, Aiming aiming) {
        this.limits = limits;
        this.kind = kind;
        this.sky = sky;
        this.aiming = aiming;
    }

    /** A condition for each limit there is. */
    List<Condition> all() {
        List<Condition> all = new ArrayList<>();
        if (!limits.moonAltitudeDeg().any()) {
            all.add(condition("Moon " + words(limits.moonAltitudeDeg(), "°") + " high", Condition.When.THROUGHOUT,
                    minute -> limits.moonAltitudeDeg().margin(moon(minute).apparentAltitude().degrees())));
        }
        if (!limits.moonLitPercent().any()) {
            all.add(condition("Moon " + words(limits.moonLitPercent(), " %") + " lit", Condition.When.AT_MIDDLE,
                    minute -> limits.moonLitPercent().margin(litPercent(minute))));
        }
        limits.moonSide().ifPresent(side -> all.add(condition("Moon " + Wording.word(side), Condition.When.AT_MIDDLE,
                minute -> side.marginDeg(moon(minute).azimuth().minus(aiming.direction(minute).azimuth()).degrees()))));
        if (!limits.sunDepthDeg().any()) {
            all.add(condition("Sun " + words(limits.sunDepthDeg(), "°") + " down", moment(),
                    minute -> limits.sunDepthDeg().margin(-sky.sunDeg(minute))));
        }
        limits.time().ifPresent(time -> all.add(byTheClock(time)));
        return all;
    }

    private Condition condition(String what, Condition.When when, IntToDoubleFunction margin) {
        return new Condition(what, when, sky.clock().where(sky.sunDown(), margin), "never the " + what + " while the Sun is down");
    }

    private Condition.When moment() {
        return switch (kind) {
            case DUSK -> Condition.When.AT_OPENING;
            case DAWN -> Condition.When.AT_CLOSING;
            default -> Condition.When.AT_MIDDLE;
        };
    }

    private SkyPosition moon(int minute) {
        return sky.position(Body.MOON, minute);
    }

    private double litPercent(int minute) {
        return 100 * sky.ephemeris().appearance(Body.MOON, sky.site(), sky.clock().at(minute)).illuminatedFraction();
    }

    private Condition byTheClock(Limits.TimeOfNight time) {
        BitSet minutes = new BitSet();
        BitSet down = sky.sunDown();
        for (int minute = down.nextSetBit(0); minute >= 0; minute = down.nextSetBit(minute + 1)) {
            minutes.set(minute, time.holds(sky.clock().at(minute).atZone(sky.site().zone()).toLocalTime()));
        }
        Optional<Limits.TimeOfNight> shown = ClockChange.shown(sky.night(), time);
        if (shown.isEmpty()) {
            return new Condition(between(time), Condition.When.THROUGHOUT, minutes,
                    "the clocks skip all of " + TIME.format(time.from()) + " to " + TIME.format(time.to()) + ": "
                    + ClockChange.of(sky.night()).orElseThrow());
        }
        String what = between(shown.get());
        return new Condition(what, Condition.When.THROUGHOUT, minutes, "the Sun is up all through " + what);
    }

    private static String between(Limits.TimeOfNight time) {
        return "the clock between " + TIME.format(time.from()) + " and " + TIME.format(time.to());
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
}
