package gloam.support;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Instant;

/**
 * A sky that stands still, without air: Sun and Moon where they were put.
 *
 * @param sun        where the Sun stands
 * @param moon       where the Moon stands
 * @param moonKm     how far it is from the site
 * @param moonPhase  its phase angle, 0 for full
 */
public record StandingSky(Direction sun, Direction moon, double moonKm,
        Angle moonPhase) implements Ephemeris {

    private static final double AU_KM = 149_597_870.7;

    @Override
    public Interval covers() {
        return new Interval(Instant.parse("2000-01-01T00:00:00Z"), Instant.parse("2060-01-01T00:00:00Z"));
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        Direction there = target instanceof Star star ? placed(star) : target == Body.SUN ? sun : moon;
        return new SkyPosition(there.azimuth(), there.altitude(), there.altitude(), Angle.ZERO, Angle.ZERO,
                target == Body.SUN ? AU_KM : moonKm);
    }

    /** The stars' own poles and equator stand as the site's zenith and horizon do. */
    private static Direction placed(Star star) {
        return Direction.ofDegrees(star.rightAscensionDeg(), star.declinationDeg());
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        double lit = (1 + moonPhase.cos()) / 2;
        return new Appearance(body, position(body, site, at), moonPhase, lit, -12.7, Angle.ofDegrees(0.26));
    }
}
