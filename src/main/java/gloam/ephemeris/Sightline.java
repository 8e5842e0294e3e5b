package gloam.ephemeris;

import gloam.units.Angle;

/**
 * The airless apparent direction of a target over a site, as a unit vector, and how far away it is.
 *
 * @param east       share towards east
 * @param north      share towards north
 * @param up         share towards the zenith: the sine of the airless altitude
 * @param distanceKm from the site, in km; infinite for a star
 */
public record Sightline(double east, double north, double up, double distanceKm) {

    /** The angle to another direction over the same site, 0° to 180°, exact for small angles too. */
    public Angle to(Sightline other) {
        double x = north * other.up - up * other.north;
        double y = up * other.east - east * other.up;
        double z = east * other.north - north * other.east;
        return Angle.ofRadians(Math.atan2(Math.sqrt(x * x + y * y + z * z),
                east * other.east + north * other.north + up * other.up));
    }
}
