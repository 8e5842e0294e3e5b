package gloam.ephemeris;

import gloam.units.Angle;
import gloam.units.Range;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A direction over a site, as it is seen: refraction included.
 *
 * @param azimuth  from north through east, 0 (included) to 360° (left out)
 * @param altitude apparent altitude over the level horizon, -90° to 90°
 */
public record Direction(Angle azimuth, Angle altitude) {

    /** Allowed azimuths. */
    public static final Range AZIMUTH = new Range("azimuth", 0, 360, "deg");
    /** Allowed altitudes. */
    public static final Range ALTITUDE = new Range("altitude", -90, 90, "deg");
    /** Straight up. */
    public static final Direction ZENITH = ofDegrees(0, 90);

    /**
     * Brings the azimuth into its range; refuses an altitude outside its own with {@link
     * gloam.units.BadInput}.
     */
    public Direction {
        ALTITUDE.check(altitude.degrees());
        azimuth = azimuth.positive();
    }

    /** The direction of an azimuth and an altitude in degrees. */
    public static Direction ofDegrees(double azimuthDeg, double altitudeDeg) {
        return new Direction(Angle.ofDegrees(azimuthDeg), Angle.ofDegrees(altitudeDeg));
    }

    /** The direction of a vector towards east (x), north (y) and the zenith (z), of any length but zero. */
    public static Direction of(Vector3D vector) {
        return new Direction(Angle.ofRadians(Math.atan2(vector.getX(), vector.getY())),
                Angle.ofRadians(Math.atan2(vector.getZ(), Math.hypot(vector.getX(), vector.getY()))));
    }

    /** The unit vector towards east (x), north (y) and the zenith (z). */
    public Vector3D vector() {
        return new Vector3D(azimuth.sin() * altitude.cos(), azimuth.cos() * altitude.cos(), altitude.sin());
    }

    /** Declination of what is seen there from a latitude, -90° to 90°: exact at the poles of the sky too. */
    public Angle declination(Angle latitude) {
        Vector3D pole = new Vector3D(0, latitude.cos(), latitude.sin());
        return Angle.ofRadians(Math.PI / 2 - Vector3D.angle(vector(), pole));
    }

    /** The angle between this direction and another, 0° to 180°, exact for small angles too. */
    public Angle to(Direction other) {
        double halfAltitude = other.altitude.minus(altitude).radians() / 2;
        double halfAzimuth = other.azimuth.minus(azimuth).radians() / 2;
        double haversine = Math.sin(halfAltitude) * Math.sin(halfAltitude)
                + altitude.cos() * other.altitude.cos() * Math.sin(halfAzimuth) * Math.sin(halfAzimuth);
        return Angle.ofRadians(2 * Math.asin(Math.sqrt(Math.min(1, haversine))));
    }
}
