package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Two targets at their closest, as seen from a site.
 *
 * @param at         when their angle is least
 * @param separation that angle, between centres, airless
 */
public record Approach(Instant at, Angle separation) {

    /** Short enough for the sway that the Earth's rotation gives the Moon. */
    private static final Duration STEP = Duration.ofHours(2);

    /**
     * Every approach inside a span, in order of time; near the Moon a site's rotation can make several of
     * one.
     */
    public static List<Approach> of(Ephemeris ephemeris, Site site, Target one, Target other, Interval span) {
        return EventFinder.of(span, STEP, at -> separation(ephemeris, site, one, other, at).radians())
                .extrema().stream().filter(extremum -> !extremum.highest())
                .map(extremum -> new Approach(extremum.at(), Angle.ofRadians(extremum.value()))).toList();
    }

    private static Angle separation(Ephemeris ephemeris, Site site, Target one, Target other, Instant at) {
        return ephemeris.sightline(one, site, at).to(ephemeris.sightline(other, site, at));
    }
}
