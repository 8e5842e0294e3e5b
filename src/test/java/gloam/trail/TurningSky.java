package gloam.trail;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Instant;

/**
 * A sky that only turns: stars stay at their coordinates, there is no air, and right ascension 0 stands on
 * the meridian of Greenwich at 2027-01-01 0 h.
 */
final class TurningSky implements Ephemeris {

    static final Instant ZERO = Instant.parse("2027-01-01T00:00:00Z");

    /**
     * Rotation of the Earth in rad/s: 2π in a sidereal day of 86164.0905 s (IERS Conventions 2010, table
     * 1.1).
     */
    static final double TURN_RAD_S = 7.292115e-5;

    @Override
    public Interval covers() {
        return new Interval(Instant.parse("2000-01-01T00:00:00Z"), Instant.parse("2060-01-01T00:00:00Z"));
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        Star star = (Star) target;
        double sinceS = at.getEpochSecond() - ZERO.getEpochSecond() + at.getNano() * 1e-9;
        double hourRad = TURN_RAD_S * sinceS + site.longitude().radians()
                - Math.toRadians(star.rightAscensionDeg());
        double declinationRad = Math.toRadians(star.declinationDeg());
        double latitudeRad = site.latitude().radians();
        double westward = Math.cos(declinationRad) * Math.sin(hourRad);
        double southward = Math.cos(declinationRad) * Math.cos(hourRad) * Math.sin(latitudeRad)
                - Math.sin(declinationRad) * Math.cos(latitudeRad);
        double up = Math.sin(latitudeRad) * Math.sin(declinationRad)
                + Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.cos(hourRad);
        Angle altitude = Angle.ofRadians(Math.atan2(up, Math.hypot(westward, southward)));
        Angle azimuth = Angle.ofRadians(Math.PI + Math.atan2(westward, southward)).positive();
        return new SkyPosition(azimuth, altitude, altitude, Angle.ofDegrees(star.rightAscensionDeg()),
                Angle.ofDegrees(star.declinationDeg()), Double.POSITIVE_INFINITY);
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        throw new UnsupportedOperationException("stars only");
    }
}
