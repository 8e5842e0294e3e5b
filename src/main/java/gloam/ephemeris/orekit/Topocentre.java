package gloam.ephemeris.orekit;

import gloam.ephemeris.Body;
import gloam.ephemeris.EarthTurn;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.utils.Constants;
import org.orekit.utils.PVCoordinates;

/**
 * A site at one instant, as it moves among the stars: what every place computed for that instant shares.
 *
 * <p>All vectors stand in the celestial reference system; the last three are unit vectors.
 *
 * @param ttS        the instant in seconds of terrestrial time from J2000.0
 * @param positionKm the site from the solar system's barycentre
 * @param velocityC  its motion in units of the speed of light
 * @param sunKm      the Sun from the solar system's barycentre
 * @param east       the site's east
 * @param north      the site's north
 * @param up         the vertical of its ellipsoid
 */
record Topocentre(double ttS, Vector3D positionKm, Vector3D velocityC, Vector3D sunKm, Vector3D east,
                  Vector3D north, Vector3D up) {

    static final double LIGHT_KM_S = Constants.SPEED_OF_LIGHT / 1000;

    /** 2 GM/c² of the Sun. */
    private static final double SUN_GRAVITY_KM = 2 * Constants.IAU_2015_NOMINAL_SUN_GM
            / (Constants.SPEED_OF_LIGHT * Constants.SPEED_OF_LIGHT) / 1000;
    /** Keeps the bending finite inside the Sun's disc. */
    private static final double LEAST_OPENING = 1e-5;

    /** A point of the ground carried by the Earth. */
    static Topocentre of(Ground ground, EarthAttitude attitude, SolarSystem solarSystem) {
        PVCoordinates earth = solarSystem.earthKm(attitude.ttS());
        Vector3D fromCentreKm = attitude.fromEarth().applyTo(ground.positionKm());
        Vector3D velocityKmS = earth.getVelocity()
                .add(EarthTurn.RAD_S, attitude.pole().crossProduct(fromCentreKm));
        return new Topocentre(attitude.ttS(), earth.getPosition().add(fromCentreKm),
                velocityKmS.scalarMultiply(1 / LIGHT_KM_S),
                solarSystem.positionKm(Body.SUN, attitude.ttS()), attitude.fromEarth().applyTo(ground.east()),
                attitude.fromEarth().applyTo(ground.north()), attitude.fromEarth().applyTo(ground.up()));
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
    Vector3D bent(Vector3D direction, Vector3D sunToBody) {
        Vector3D fromSun = positionKm.subtract(sunKm);
        double sunDistanceKm = fromSun.getNorm();
        Vector3D sunToSite = fromSun.scalarMultiply(1 / sunDistanceKm);
        double opening = Math.max(LEAST_OPENING, 1 + sunToBody.dotProduct(sunToSite));
        Vector3D pull = new Vector3D(direction.dotProduct(sunToBody), sunToSite,
                -direction.dotProduct(sunToSite), sunToBody);
        return direction.add(SUN_GRAVITY_KM / sunDistanceKm / opening, pull).normalize();
    }

    /** Shifts a direction by the aberration of the site's motion, after the special theory of relativity. */
    Vector3D aberrated(Vector3D direction) {
        double inverseGamma = Math.sqrt(1 - velocityC.getNormSq());
        double along = direction.dotProduct(velocityC);
        return new Vector3D(inverseGamma, direction, 1 + along / (1 + inverseGamma), velocityC).normalize();
    }
}
