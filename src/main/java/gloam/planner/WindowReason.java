package gloam.planner;

import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.StarCatalogue;
import gloam.units.Interval;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Puts into one line why a window is where it is and what it will give. */
final class WindowReason {

    /** A shorter trail at the centre while the sky turns by more means that the pole stands there. */
    private static final double WHEEL_BELOW_MM = 2;
    private static final double WHEEL_FROM_DEG = 10;

    private WindowReason() {
    }

    /** Such as "moonless and dark 20:31–04:10, sky 21.4, tone −1.8 ± 0.6, 23 of 41 stars record, trail 27 mm". */
    static String of(Plan.Window window, NightSky sky) {
        double skyMag = sky.light(window.aim(), window.open().middle()).total().magArcsec2();
        return String.format(Locale.ROOT, "%s, sky %.1f, tone %s ± %.1f, %s, %s", span(window, sky), skyMag,
                Wording.stops(window.skyToneStops()), window.skyToneSpreadStops(), records(window), trail(window)) + clear(window)
                + (window.misses().isEmpty() ? "" : "; misses: " + String.join(", ", window.misses()));
    }

    private static String clear(Plan.Window window) {
        return window.clearChance().isPresent()
                ? String.format(Locale.ROOT, ", clear %.0f %%", 100 * window.clearChance().getAsDouble()) : "";
    }

    private static String span(Plan.Window window, NightSky sky) {
        return switch (window.wish().sky()) {
            case DARK -> moonless(window, sky);
            case MOONLIT -> moon(window) + ", dark " + around(sky.night().darkness(), window, sky);
            case DUSK -> "opens in dusk, Sun down " + around(sky.night().sunDown(), window, sky);
            case DAWN -> "closes in dawn, Sun down " + around(sky.night().sunDown(), window, sky);
            case ANY -> sky.night().darkness().stream().anyMatch(dark -> holds(dark, window.open()))
                    ? moonless(window, sky) : "Sun down " + around(sky.night().sunDown(), window, sky);
        };
    }

    private static String moonless(Plan.Window window, NightSky sky) {
        List<Interval> moonless = sky.night().moonlessDarkness();
        if (moonless.stream().anyMatch(span -> holds(span, window.open()))) {
            return "moonless and dark " + around(moonless, window, sky);
        }
        return "dark " + around(sky.night().darkness(), window, sky) + ", " + moon(window);
    }

    /** Such as "Moon 14° high behind you, 122° from the aim" or, half-way through, "Moon down". */
    private static String moon(Plan.Window window) {
        if (window.moon().position().apparentAltitude().degrees() < 0) {
            return "Moon down half-way through";
        }
        double aroundDeg = window.moon().position().azimuth().minus(window.aim().azimuth()).degrees();
        Limits.Side side = Arrays.stream(Limits.Side.values())
                .max(Comparator.comparingDouble(quarter -> quarter.marginDeg(aroundDeg))).orElseThrow();
        return String.format(Locale.ROOT, "Moon %.0f° high %s, %.0f° from the aim",
                window.moon().position().apparentAltitude().degrees(), words(side), window.moon().fromAim().degrees());
    }

    private static String words(Limits.Side side) {
        return switch (side) {
            case AHEAD -> "ahead";
            case BEHIND -> "behind you";
            case LEFT -> "to your left";
            case RIGHT -> "to your right";
        };
    }

    private static String around(List<Interval> spans, Plan.Window window, NightSky sky) {
        return spans.stream().filter(span -> span.contains(window.open().middle())).findFirst()
                .map(span -> NightTimes.of(sky.night()).span(span)).orElse("");
    }

    private static boolean holds(Interval span, Interval open) {
        return !span.start().isAfter(open.start()) && !span.endExclusive().isBefore(open.endExclusive());
    }

    private static String trail(Plan.Window window) {
        double turnDeg = EarthTurn.degrees(window.open().seconds());
        return window.trailLengthMm() < WHEEL_BELOW_MM && turnDeg >= WHEEL_FROM_DEG
                ? String.format(Locale.ROOT, "wheel of %.0f° arcs", turnDeg)
                : "trail " + Wording.mm(window.trailLengthMm());
    }

    private static String records(Plan.Window window) {
        String stars = String.format(Locale.ROOT, "%d of %d stars to mag %.0f record", window.recordedStars(),
                window.framedStars(), StarCatalogue.FAINTEST_MAG);
        return window.wish().records() instanceof Wish.Records.One one ? one.body().properName() + " and " + stars : stars;
    }
}
