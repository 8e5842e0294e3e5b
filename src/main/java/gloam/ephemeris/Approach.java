package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Two targets at their closest, as seen from a site.
 *
 * @param one        the first
 * @param other      the second
 * @param at         when their angle is least
 * @param separation that angle, between centres, airless
 */
public record Approach(Target one, Target other, Instant at, Angle separation) {

    /** Short enough for the sway that the Earth's rotation gives the Moon. */
    private static final Duration MOON_STEP = Duration.ofHours(2);
    /** The planets take weeks from one turn to the next. */
    private static final Duration STEP = Duration.ofHours(12);

    /**
     * Every approach inside a span, in order of time; near the Moon a site's rotation can make several of
     * one.
     */
    public static List<Approach> of(Ephemeris ephemeris, Site site, Target one, Target other, Interval span) {
        Duration step = one == Body.MOON || other == Body.MOON ? MOON_STEP : STEP;
        return FunctionOfTime.of(span, step, at -> separation(ephemeris, site, one, other, at).radians())
                .extrema().stream().filter(extremum -> !extremum.highest())
                .map(extremum -> new Approach(one, other, extremum.at(), Angle.ofRadians(extremum.value())))
                .toList();
    }

    /**
     * Every approach of Moon and planets, each with each, to an angle or less inside a span, in order of
     * time.
     */
    public static List<Approach> among(Ephemeris ephemeris, Site site, Angle widest, Interval span) {
        List<Body> bodies = Arrays.stream(Body.values()).filter(body -> body != Body.SUN).toList();
        List<Approach> found = new ArrayList<>();
        for (int first = 0; first < bodies.size(); first++) {
            for (int second = first + 1; second < bodies.size(); second++) {
                found.addAll(of(ephemeris, site, bodies.get(first), bodies.get(second), span));
            }
        }
        return found.stream().filter(approach -> approach.separation.compareTo(widest) <= 0)
                .sorted(Comparator.comparing(Approach::at)).toList();
    }

    private static Angle separation(Ephemeris ephemeris, Site site, Target one, Target other, Instant at) {
        return ephemeris.sightline(one, site, at).to(ephemeris.sightline(other, site, at));
    }
}
