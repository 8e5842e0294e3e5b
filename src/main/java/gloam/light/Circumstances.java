package gloam.light;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import java.time.Instant;

/**
 * What lights the sky over a site at an instant, looked up once for all sources and directions.
 *
 * @param ephemeris for whatever else a source asks
 * @param site      the site
 * @param at        when
 * @param sun       where the Sun stands
 * @param moon      where the Moon stands and how it is lit
 * @param stars     how the stars stand over the horizon
 */
record Circumstances(Ephemeris ephemeris, Site site, Instant at, SkyPosition sun, Appearance moon,
        CelestialFrame stars) {

    static Circumstances of(Ephemeris ephemeris, Site site, Instant at) {
        return new Circumstances(ephemeris, site, at, ephemeris.position(Body.SUN, site, at),
                ephemeris.appearance(Body.MOON, site, at), CelestialFrame.of(ephemeris, site, at));
    }

    /** How far the Sun's centre stands below the horizon without air, in degrees; negative above it. */
    double sunDepressionDeg() {
        return -sun.airlessAltitude().degrees();
    }

    /** Where the Sun's centre would stand without air. */
    Direction airlessSun() {
        return new Direction(sun.azimuth(), sun.airlessAltitude());
    }
}
