package gloam.ephemeris.orekit;

import gloam.gear.Site;

/** A site on the turning Earth, by the WGS 84 ellipsoid; vectors stand in the Earth's own axes. */
final class GroundPoint {

    /**
     * Place from the Earth's centre in km, motion by its rotation in km/s, and unit vectors to the east, to
     * the north and up along the vertical, all by the true equator and its pole.
     */
    record Axes(Vector positionKm, Vector velocityKmS, Vector east, Vector north, Vector up) {
    }

    /** Equatorial radius of the WGS 84 ellipsoid (NIMA TR8350.2). */
    private static final double EQUATOR_KM = 6378.137;
    /** Its flattening. */
    private static final double FLATTENING = 1 / 298.257223563;
    /** Rate of the Earth rotation angle, rad/s (IAU Resolution B1.8 of 2000). */
    private static final double TURN_RAD_S = 1.00273781191135448 * 2 * Math.PI / 86400;

    private final Vector positionKm;
    private final Vector east;
    private final Vector north;
    private final Vector up;

    GroundPoint(Site site) {
        double longitudeRad = site.longitude().radians();
        double sinLatitude = site.latitude().sin();
        double cosLatitude = site.latitude().cos();
        double squash = (1 - FLATTENING) * (1 - FLATTENING);
        double radiusKm = EQUATOR_KM / Math.sqrt(cosLatitude * cosLatitude
                + squash * sinLatitude * sinLatitude);
        double heightKm = site.heightM() / 1000;
        double fromAxisKm = (radiusKm + heightKm) * cosLatitude;
        this.east = new Vector(-Math.sin(longitudeRad), Math.cos(longitudeRad), 0);
        this.up = Vector.ofAngles(longitudeRad, site.latitude().radians());
        this.north = up.cross(east);
        this.positionKm = new Vector(fromAxisKm * Math.cos(longitudeRad), fromAxisKm * Math.sin(longitudeRad),
                (squash * radiusKm + heightKm) * sinLatitude);
    }

    /** The site as the Earth stands: turned by its rotation, tilted by the wandering of its pole. */
    Axes at(EarthTurn turn) {
        Vector place = turn.fromEarth(positionKm);
        return new Axes(place, new Vector(-TURN_RAD_S * place.y(), TURN_RAD_S * place.x(), 0),
                turn.fromEarth(east), turn.fromEarth(north), turn.fromEarth(up));
    }
}
