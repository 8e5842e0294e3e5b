package gloam.answer;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.MoonPhase;
import gloam.gear.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The Moon at an instant.
 *
 * @param at       the instant
 * @param phase    the phase's name
 * @param seen     how it looks from the site
 * @param age      time since new moon; empty if the ephemeris does not reach back to it
 * @param quarters the next four quarters
 */
public record MoonAt(Instant at, MoonPhase.Name phase, Appearance seen, Optional<Duration> age,
                     List<MoonPhase.Quarter> quarters) {

    /** Copies the list. */
    public MoonAt {
        quarters = List.copyOf(quarters);
    }

    /** The Moon over a site. */
    public static MoonAt of(Ephemeris ephemeris, Site site, Instant at) {
        return new MoonAt(at, MoonPhase.at(ephemeris, at).name(), ephemeris.appearance(Body.MOON, site, at),
                MoonPhase.age(ephemeris, at), MoonPhase.next(ephemeris, at));
    }
}
