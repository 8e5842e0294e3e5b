package gloam.ephemeris.orekit;

import gloam.ephemeris.orekit.CelestialPole.Pole;
import gloam.ephemeris.orekit.JplEphemeris.Item;
import gloam.ephemeris.orekit.JplEphemeris.State;

/**
 * A site at one instant, as it moves among the stars: what every place computed for that instant shares.
 *
 * <p>All vectors stand in the celestial reference system; the last three are unit vectors.
 *
 * @param tdbS        the instant in seconds from J2000.0
 * @param positionKm  the site from the solar system's barycentre
 * @param velocityC   its motion in units of the speed of light
 * @param sunKm       the Sun from the solar system's barycentre
 * @param east        the site's east
 * @param north       the site's north
 * @param up          the vertical of its ellipsoid
 */
record Observer(double tdbS, Vector positionKm, Vector velocityC, Vector sunKm, Vector east, Vector north,
                Vector up) {

    /** The speed of light. */
    static final double LIGHT_KM_S = 299_792.458;

    /** 2 GM/c² of the Sun, from the IAU 2015 nominal solar mass parameter. */
    private static final double SUN_GRAVITY_KM = 2.953250;
    /** Keeps the bending finite inside the Sun's disc. */
    private static final double LEAST_OPENING = 1e-5;

    /** A ground point carried by the Earth. */
    static Observer of(GroundPoint ground, EarthTurn turn, JplEphemeris planets) {
        State earth = planets.earth(turn.tdbS());
        GroundPoint.Axes axes = ground.at(turn);
        Pole pole = turn.pole();
        Vector positionKm = earth.positionKm().plus(pole.toCelestial(axes.positionKm()));
        Vector velocityKmS = earth.velocityKmS().plus(pole.toCelestial(axes.velocityKmS()));
        return new Observer(turn.tdbS(), positionKm, velocityKmS.times(1 / LIGHT_KM_S),
                planets.positionKm(Item.SUN, turn.tdbS()), pole.toCelestial(axes.east()),
                pole.toCelestial(axes.north()), pole.toCelestial(axes.up()));
    }

    /**
     * Bends a direction by the gravity of the Sun.
     *
     * <p><b>Model.</b> Klioner 2003, AJ 125, 1580, eq. 70. <b>Valid.</b> Outside the Sun's disc.
     * <b>Error.</b> Below 0.001″. <b>Departures.</b> The Sun alone.
     *
     * @param direction unit vector from here
     * @param sunToBody unit vector from the Sun to what is seen; the direction itself for a star
     */
    Vector bent(Vector direction, Vector sunToBody) {
        Vector fromSun = positionKm.minus(sunKm);
        double sunDistanceKm = fromSun.length();
        Vector sunToSite = fromSun.times(1 / sunDistanceKm);
        double opening = Math.max(LEAST_OPENING, 1 + sunToBody.dot(sunToSite));
        Vector pull = sunToSite.times(direction.dot(sunToBody))
                .plusTimes(-direction.dot(sunToSite), sunToBody);
        return direction.plusTimes(SUN_GRAVITY_KM / sunDistanceKm / opening, pull).unit();
    }

    /** Shifts a direction by the aberration of the site's motion, after the special theory of relativity. */
    Vector aberrated(Vector direction) {
        double inverseGamma = Math.sqrt(1 - velocityC.dot(velocityC));
        double along = direction.dot(velocityC);
        return direction.times(inverseGamma).plusTimes(1 + along / (1 + inverseGamma), velocityC).unit();
    }
}
