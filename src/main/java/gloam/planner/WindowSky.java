package gloam.planner;

import gloam.ephemeris.Night;
import gloam.light.SkyBrightness;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;

/**
 * The sky in which a window stands.
 *
 * @param kind     what sky that is: the one wanted, or for any a dark one where it is dark
 * @param moonless whether it is dark without the Moon
 * @param span     how long it lasts around the middle of the window
 * @param light    its light at the frame's centre half-way through
 */
public record WindowSky(SkyKind kind, boolean moonless, Optional<Interval> span, SkyBrightness light) {

    /** The sky of an exposure for a wish. */
    static WindowSky of(Wish wish, Interval open, SkyBrightness light, Night night) {
        boolean dark = wish.sky() == SkyKind.ANY && within(night.darkness(), open);
        SkyKind kind = dark ? SkyKind.DARK : wish.sky();
        boolean moonless = kind == SkyKind.DARK && within(night.moonlessDarkness(), open);
        List<Interval> spans = moonless ? night.moonlessDarkness() : kind.spans(night);
        return new WindowSky(kind, moonless, spans.stream().filter(span -> span.contains(open.middle()))
                .findFirst(), light);
    }

    private static boolean within(List<Interval> spans, Interval open) {
        return spans.stream().anyMatch(span -> span.contains(open));
    }
}
