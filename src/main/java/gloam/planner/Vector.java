package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.units.Angle;

/** A unit vector in right-handed axes: north, west, up over a site, or right ascension 0, 6 h and the pole. */
record Vector(double x, double y, double z) {

    static Vector of(Direction direction) {
        return polar(-direction.azimuth().radians(), direction.altitude().radians());
    }

    static Vector of(Star star) {
        return polar(Math.toRadians(star.rightAscensionDeg()), Math.toRadians(star.declinationDeg()));
    }

    private static Vector polar(double longitudeRad, double latitudeRad) {
        return new Vector(Math.cos(latitudeRad) * Math.cos(longitudeRad), Math.cos(latitudeRad) * Math.sin(longitudeRad),
                Math.sin(latitudeRad));
    }

    /** The direction over the site. */
    Direction direction() {
        return new Direction(Angle.ofRadians(-Math.atan2(y, x)), Angle.ofRadians(Math.atan2(z, Math.hypot(x, y))));
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    Vector unit() {
        return times(1 / Math.sqrt(dot(this)));
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }
}
