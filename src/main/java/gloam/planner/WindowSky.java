package gloam.planner;

import gloam.light.SkyBrightness;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;

/**
 * The sky in which a window stands.
 *
 * @param under what sky that is
 * @param span  how long it lasts around the middle of the window
 * @param light its light at the frame's centre half-way through
 */
public record WindowSky(Under under, Optional<Interval> span, SkyBrightness light) {

    /** Kinds of sky. */
    public enum Under {
        /** Dark, the Moon down. */
        MOONLESS,
        /** Dark, the Moon up at some time. */
        DARK,
        /** Dark, moonlight wanted. */
        MOONLIT,
        /** Opens in evening twilight; the span is that of the Sun below the horizon. */
        DUSK,
        /** Closes in morning twilight; the span is that of the Sun below the horizon. */
        DAWN,
        /** The Sun is below the horizon. */
        SUN_DOWN
    }

    /** The sky of an exposure for a wish. */
    static WindowSky of(Wish wish, Interval open, SkyBrightness light, NightSky sky) {
        Under under = under(wish, open, sky);
        return new WindowSky(under, spans(under, sky).stream().filter(span -> span.contains(open.middle()))
                .findFirst(), light);
    }

    private static Under under(Wish wish, Interval open, NightSky sky) {
        return switch (wish.sky()) {
            case MOONLIT -> Under.MOONLIT;
            case DUSK -> Under.DUSK;
            case DAWN -> Under.DAWN;
            case DARK, ANY -> {
                boolean dark = wish.sky() == Wish.SkyKind.DARK || within(sky.night().darkness(), open);
                yield !dark ? Under.SUN_DOWN : within(sky.night().moonlessDarkness(), open) ? Under.MOONLESS
                        : Under.DARK;
            }
        };
    }

    private static boolean within(List<Interval> spans, Interval open) {
        return spans.stream().anyMatch(span -> span.contains(open));
    }

    private static List<Interval> spans(Under under, NightSky sky) {
        return switch (under) {
            case MOONLESS -> sky.night().moonlessDarkness();
            case DARK, MOONLIT -> sky.night().darkness();
            case DUSK, DAWN, SUN_DOWN -> sky.night().sunDown();
        };
    }
}
