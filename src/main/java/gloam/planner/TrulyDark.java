package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.units.Interval;
import java.time.Instant;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds when a night is truly dark: with the Sun below -18° and moonlight adding less than 0.2 mag at the
 * zenith; common practice, no source.
 */
final class TrulyDark {

    private static final double STEP_S = 1200;

    private final Map<Site, SkyLight> lights = new IdentityHashMap<>();

    /** For nights at the very sites given: their light is set up once, not each night. */
    TrulyDark(Ephemeris ephemeris, List<Site> sites) {
        sites.forEach(site -> lights.put(site, new SkyLight(ephemeris, site)));
    }

    /** When it is dark and the Moon adds hardly any light. */
    List<Interval> of(Night night) {
        List<Interval> parts = new ArrayList<>(night.moonlessDarkness());
        parts.addAll(faintlyMoonlit(night));
        return Interval.union(parts);
    }

    /**
     * Darkness with the Moon up but adding hardly any light, in steps from both ends: in between the Moon
     * climbs and sinks once, and its light with it.
     */
    private List<Interval> faintlyMoonlit(Night night) {
        SkyLight light = lights.get(night.site());
        SkyLight.Patch zenith = light.patch(Direction.ZENITH);
        List<Interval> faint = new ArrayList<>();
        for (Interval span : Interval.intersect(night.darkness(), night.moonUp())) {
            int steps = (int) Math.max(1, Math.round(span.seconds() / STEP_S));
            long stepNanos = span.lasts().toNanos() / steps;
            int first = 0;
            while (first < steps && faint(light, zenith,
                    span.start().plusNanos(stepNanos * first + stepNanos / 2))) {
                first++;
            }
            int last = steps;
            while (last > first && faint(light, zenith,
                    span.start().plusNanos(stepNanos * last - stepNanos / 2))) {
                last--;
            }
            if (first == steps) {
                faint.add(span);
                continue;
            }
            if (first > 0) {
                faint.add(new Interval(span.start(), span.start().plusNanos(stepNanos * first)));
            }
            if (last < steps) {
                faint.add(new Interval(span.start().plusNanos(stepNanos * last), span.endExclusive()));
            }
        }
        return faint;
    }

    private static boolean faint(SkyLight light, SkyLight.Patch zenith, Instant at) {
        return light.moment(at).at(zenith).moonlightMag() < SkyLight.DARK_MOONLIGHT_MAG;
    }
}
