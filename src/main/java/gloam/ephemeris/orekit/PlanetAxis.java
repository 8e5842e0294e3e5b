package gloam.ephemeris.orekit;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * How a planet's globe stands among the stars, for what its brightness depends on.
 *
 * <p><b>Model.</b> Orekit's, of the IAU Working Group on Cartographic Coordinates and Rotational Elements,
 * report of 2009 (Archinal et al. 2011, Celest. Mech. Dyn. Astr. 109, 101). <b>Valid.</b> 1900 to 2100.
 * <b>Error.</b> Below 0.1°. <b>Departures.</b> None for Mars, Saturn and Uranus.
 *
 * @param toAxes turns celestial vectors into those of the globe: prime meridian, 90° east, north pole
 */
record PlanetAxis(Rotation toAxes) {

    /** Of Uranus, the only one whose brightness needs it; same report. */
    private static final double URANUS_FLATTENING = 0.02293;

    /**
     * West longitude of the point of the globe below what stands in a direction from its centre, 0 to 360.
     */
    double westDeg(Vector3D outward) {
        double westDeg = -Math.toDegrees(toAxes.applyTo(outward).getAlpha());
        return westDeg < 0 ? westDeg + 360 : westDeg;
    }

    /** Latitude of that point as seen from the planet's centre. */
    double centricDeg(Vector3D outward) {
        return Math.toDegrees(toAxes.applyTo(outward).getDelta());
    }

    /** Latitude of that point by the vertical of Uranus's flattened globe. */
    double uranographicDeg(Vector3D outward) {
        double round = 1 - URANUS_FLATTENING;
        return Math.toDegrees(Math.atan(Math.tan(Math.toRadians(centricDeg(outward))) / (round * round)));
    }
}
