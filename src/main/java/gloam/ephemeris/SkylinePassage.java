package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * A body coming over the terrain around a site or going under it: of Sun and Moon the upper limb, else the
 * centre.
 *
 * @param body which body
 * @param at   when, refraction included
 * @param over whether it comes into view, else it leaves
 */
public record SkylinePassage(Body body, Instant at, boolean over) {

    /**
     * Terrain is rougher than a body's path: a peak narrower than what the sky turns in this may be missed.
     */
    private static final Duration STEP = Duration.ofMinutes(4);

    /** The name as reports write it, such as {@code sun-over-skyline}. */
    public String label() {
        return body.label() + (over ? "-over-skyline" : "-under-skyline");
    }

    /** Every passage of a body in a span, in order of time. */
    public static List<SkylinePassage> of(Ephemeris ephemeris, Site site, Body body, Interval span) {
        Refraction air = Refraction.ofHeight(site.heightM());
        return FunctionOfTime.of(span, STEP,
                at -> clearanceRad(ephemeris.appearance(body, site, at), site, air))
                .crossings(0).all().stream()
                .map(crossing -> new SkylinePassage(body, crossing.at(), crossing.rising())).toList();
    }

    private static double clearanceRad(Appearance seen, Site site, Refraction air) {
        boolean limb = seen.body() == Body.SUN || seen.body() == Body.MOON;
        Angle airless = seen.position().airlessAltitude();
        Angle top = air.apparent(limb ? airless.plus(seen.semidiameter()) : airless);
        return top.minus(site.skyline().altitudeAt(seen.position().azimuth())).radians();
    }
}
