package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * An ephemeris that computes bodies' places at one site only once for each whole minute of a night. For one
 * thread at a time.
 *
 * <p>What is asked for together is computed together, while the ephemeris still knows the site's place at the
 * instant.
 */
final class RememberedEphemeris implements Ephemeris {

    private final Ephemeris ephemeris;
    private final Site home;
    private final NightClock clock;
    private final List<Body> together;
    private final Map<Body, SkyPosition[]> positions = new EnumMap<>(Body.class);
    private final Map<Body, Appearance[]> appearances = new EnumMap<>(Body.class);

    /**
     * Remembers what another ephemeris says of a site.
     *
     * @param together bodies whose positions are asked for at most minutes at which one of them is
     */
    RememberedEphemeris(Ephemeris ephemeris, Site home, NightClock clock, List<Body> together) {
        this.ephemeris = ephemeris;
        this.home = home;
        this.clock = clock;
        this.together = together;
        for (Body body : Body.values()) {
            positions.put(body, new SkyPosition[clock.minutes() + 1]);
            appearances.put(body, new Appearance[clock.minutes() + 1]);
        }
    }

    @Override
    public Interval covers() {
        return ephemeris.covers();
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        if (!(target instanceof Body body) || site != home || !clock.strikes(at)) {
            return ephemeris.position(target, site, at);
        }
        int minute = clock.minuteOf(at);
        if (positions.get(body)[minute] == null) {
            remember(body, minute);
        }
        return positions.get(body)[minute];
    }

    private void remember(Body asked, int minute) {
        Instant at = clock.at(minute);
        if (asked == Body.MOON || together.contains(asked)) {
            appearance(Body.MOON, home, at);
            for (Body body : together) {
                positions.get(body)[minute] = ephemeris.position(body, home, at);
            }
        } else {
            positions.get(asked)[minute] = ephemeris.position(asked, home, at);
        }
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        if (site != home || !clock.strikes(at)) {
            return ephemeris.appearance(body, site, at);
        }
        int minute = clock.minuteOf(at);
        Appearance[] known = appearances.get(body);
        if (known[minute] == null) {
            known[minute] = ephemeris.appearance(body, home, at);
            positions.get(body)[minute] = known[minute].position();
        }
        return known[minute];
    }
}
