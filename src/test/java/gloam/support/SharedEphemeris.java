package gloam.support;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * An ephemeris that computes what bodies do at whole minutes only once, for many trips to the same places.
 */
public final class SharedEphemeris implements Ephemeris {

    private static final int SECONDS = 60;

    private final Ephemeris ephemeris = new AnalyticEphemeris();
    private final Map<Asked, Appearance> appearances = new ConcurrentHashMap<>();
    private final Map<Asked, SkyPosition> positions = new ConcurrentHashMap<>();

    private record Asked(Body body, String site, Instant at) {
    }

    @Override
    public Interval covers() {
        return ephemeris.covers();
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        return target instanceof Body body && wholeMinute(at)
                ? positions.computeIfAbsent(new Asked(body, site.name(), at),
                asked -> ephemeris.position(body, site, at)) : ephemeris.position(target, site, at);
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        return wholeMinute(at) ? appearances.computeIfAbsent(new Asked(body, site.name(), at),
                asked -> ephemeris.appearance(body, site, at)) : ephemeris.appearance(body, site, at);
    }

    private static boolean wholeMinute(Instant at) {
        return at.getNano() == 0 && at.getEpochSecond() % SECONDS == 0;
    }
}
