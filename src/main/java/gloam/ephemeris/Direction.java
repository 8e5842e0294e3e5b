package gloam.ephemeris;

import gloam.units.Angle;
import gloam.units.Range;

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

    /**
     * Declination of what is seen there from a latitude, -90° to 90°: the spherical triangle of pole, zenith and
     * star, as components along the pole and across it, exact at the poles of the sky too.
     */
    public Angle declination(Angle latitude) {
        double level = altitude.cos() * azimuth.cos();
        double toPole = latitude.sin() * altitude.sin() + latitude.cos() * level;
        double onMeridian = latitude.cos() * altitude.sin() - latitude.sin() * level;
        return Angle.ofRadians(Math.atan2(toPole, Math.hypot(onMeridian, altitude.cos() * azimuth.sin())));
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
