package gloam.ephemeris.orekit;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.RotationOrder;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * How the Earth stands among the stars at one time.
 *
 * @param ttS       the time in seconds of terrestrial time from J2000.0
 * @param fromEarth turns vectors of the Earth's own axes into those of the celestial reference system
 * @param pole      the celestial intermediate pole in the celestial reference system
 */
record EarthAttitude(double ttS, Rotation fromEarth, Vector3D pole) {

    /**
     * The attitude of an Earth turned about the pole and displaced in it.
     *
     * @param intermediate     turns vectors of the celestial intermediate system into celestial ones
     * @param rotationAngleRad Earth rotation angle
     * @param xPoleRad         the pole's place in the Earth, along the meridian of Greenwich
     * @param yPoleRad         and along 90° west
     */
    static EarthAttitude of(double ttS, Rotation intermediate, double rotationAngleRad, double xPoleRad,
                            double yPoleRad) {
        Rotation displaced =
                new Rotation(RotationOrder.XYZ, RotationConvention.VECTOR_OPERATOR, -yPoleRad, -xPoleRad, 0);
        Rotation turned = new Rotation(Vector3D.PLUS_K, rotationAngleRad, RotationConvention.VECTOR_OPERATOR);
        Rotation inIntermediate = turned.compose(displaced, RotationConvention.VECTOR_OPERATOR);
        return new EarthAttitude(ttS,
                intermediate.compose(inIntermediate, RotationConvention.VECTOR_OPERATOR),
                intermediate.applyTo(Vector3D.PLUS_K));
    }
}
