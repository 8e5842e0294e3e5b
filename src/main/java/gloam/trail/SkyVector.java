package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.units.Angle;

/**
 * A vector over a site; of length 1 where it stands for a direction.
 *
 * @param east  towards the east point of the horizon
 * @param north towards the north point of the horizon
 * @param up    towards the zenith
 */
record SkyVector(double east, double north, double up) {

    static SkyVector of(Direction direction) {
        Angle azimuth = direction.azimuth();
        Angle altitude = direction.altitude();
        return new SkyVector(azimuth.sin() * altitude.cos(), azimuth.cos() * altitude.cos(), altitude.sin());
    }

    Direction direction() {
        return new Direction(Angle.ofRadians(Math.atan2(east, north)), altitude());
    }

    Angle altitude() {
        return Angle.ofRadians(Math.atan2(up, level()));
    }

    /** The direction of that altitude in the same azimuth. */
    SkyVector atAltitude(Angle altitude) {
        double level = level();
        double share = level == 0 ? 0 : altitude.cos() / level;
        return new SkyVector(share * east, share * north, altitude.sin());
    }

    private double level() {
        return Math.sqrt(east * east + north * north);
    }

    double dot(SkyVector other) {
        return east * other.east + north * other.north + up * other.up;
    }

    SkyVector cross(SkyVector other) {
        return new SkyVector(north * other.up - up * other.north, up * other.east - east * other.up,
                east * other.north - north * other.east);
    }

    SkyVector plus(SkyVector other) {
        return new SkyVector(east + other.east, north + other.north, up + other.up);
    }

    SkyVector times(double factor) {
        return new SkyVector(factor * east, factor * north, factor * up);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    SkyVector unit() {
        return times(1 / length());
    }

    /** The angle to another vector, 0 to π, exact for small angles too. */
    double toRad(SkyVector other) {
        return Math.atan2(cross(other).length(), dot(other));
    }
}
