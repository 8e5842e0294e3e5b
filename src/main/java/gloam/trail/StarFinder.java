package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.units.Angle;
import java.time.Instant;

/**
 * Finds the place among the stars that stands in a direction without air at an instant, by turning the
 * ephemeris round.
 *
 * <p>A star is moved by what it misses, the sky taken as turned rigidly about the pole; precession and
 * aberration make each step fall short by less than a hundredth, so the step is repeated until nothing is
 * missed.
 */
final class StarFinder {

    private static final double WITHIN_RAD = 1e-10;
    private static final int MOST_STEPS = 20;

    private final Ephemeris ephemeris;
    private final Site site;

    StarFinder(Ephemeris ephemeris, Site site) {
        this.ephemeris = ephemeris;
        this.site = site;
    }

    Star at(SkyVector wanted, Instant at) {
        SkyVector star = new SkyVector(1, 0, 0);
        SkyPosition position = ephemeris.position(star(star), site, at);
        double siderealRad = siderealRad(position);
        SkyVector goal = toEquator(wanted, siderealRad);
        SkyVector hit = toEquator(airless(position), siderealRad);
        for (int step = 0; step < MOST_STEPS && hit.toRad(goal) > WITHIN_RAD; step++) {
            star = turned(star, hit, goal);
            hit = toEquator(airless(ephemeris.position(star(star), site, at)), siderealRad);
        }
        return star(star);
    }

    private static SkyVector airless(SkyPosition position) {
        return SkyVector.of(new Direction(position.azimuth(), position.airlessAltitude()));
    }

    /** Right ascension on the meridian, from that of a star and its hour angle. */
    private double siderealRad(SkyPosition position) {
        SkyVector fromMeridian = toEquator(airless(position), 0);
        return position.rightAscension().radians() - Math.atan2(fromMeridian.north(), fromMeridian.east());
    }

    /** From east, north, up at the site to equatorial axes: the equinox, a quarter turn on, the pole. */
    private SkyVector toEquator(SkyVector local, double siderealRad) {
        Angle latitude = site.latitude();
        double onMeridian = local.up() * latitude.cos() - local.north() * latitude.sin();
        double toPole = local.up() * latitude.sin() + local.north() * latitude.cos();
        double cos = Math.cos(siderealRad);
        double sin = Math.sin(siderealRad);
        return new SkyVector(cos * onMeridian - sin * local.east(), sin * onMeridian + cos * local.east(),
                toPole);
    }

    /** A vector turned as the shortest turn takes one direction to another (Rodrigues). */
    private static SkyVector turned(SkyVector vector, SkyVector from, SkyVector to) {
        SkyVector axis = from.cross(to);
        double cos = from.dot(to);
        if (axis.length() == 0) {
            return cos > 0 ? vector : vector.times(-1);
        }
        SkyVector swept = axis.cross(vector);
        SkyVector along = axis.times(axis.dot(vector) * (1 - cos) / axis.dot(axis));
        return vector.times(cos).plus(swept).plus(along).unit();
    }

    private static Star star(SkyVector equatorial) {
        Angle rightAscension = Angle.ofRadians(Math.atan2(equatorial.north(), equatorial.east())).positive();
        Angle declination = Angle.ofRadians(
                Math.atan2(equatorial.up(), Math.hypot(equatorial.east(), equatorial.north())));
        return Star.at("", rightAscension.degrees(), declination.degrees());
    }
}
