package gloam.ephemeris;

import gloam.units.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The airless apparent direction of a target over a site, and how far away it is.
 *
 * @param direction  unit vector towards east (x), north (y) and the zenith (z)
 * @param distanceKm from the site, in km; infinite for a star
 */
public record Sightline(Vector3D direction, double distanceKm) {

    /** Share of the direction towards the zenith: the sine of the airless altitude. */
    public double up() {
        return direction.getZ();
    }

    /** The angle to another direction over the same site, 0° to 180°, exact for small angles too. */
    public Angle to(Sightline other) {
        return Angle.ofRadians(Vector3D.angle(direction, other.direction));
    }
}
