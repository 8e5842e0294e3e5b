package gloam.trail;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.units.Angle;
import java.time.Instant;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Finds the place among the stars that stands in a direction without air at an instant, by turning the
 * ephemeris round.
 *
 * <p>Two stars show how the sky as a whole is turned; aberration makes that fall short by less than a
 * thousandth, so the star found is turned by what it misses until nothing is missed.
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

    Star at(Vector3D wanted, Instant at) {
        Rotation toStars = new Rotation(seen(Vector3D.PLUS_I, at), seen(Vector3D.PLUS_K, at),
                Vector3D.PLUS_I, Vector3D.PLUS_K);
        Vector3D goal = toStars.applyTo(wanted);
        Vector3D star = goal;
        Vector3D hit = toStars.applyTo(seen(star, at));
        for (int step = 0; step < MOST_STEPS && Vector3D.angle(hit, goal) > WITHIN_RAD; step++) {
            star = new Rotation(hit, goal).applyTo(star);
            hit = toStars.applyTo(seen(star, at));
        }
        return star(star);
    }

    private Vector3D seen(Vector3D star, Instant at) {
        return ephemeris.sightline(star(star), site, at).direction();
    }

    private static Star star(Vector3D place) {
        double declinationRad = Math.atan2(place.getZ(), Math.hypot(place.getX(), place.getY()));
        return Star.at("", Angle.ofRadians(place.getAlpha()).positive().degrees(),
                Math.toDegrees(declinationRad));
    }
}
