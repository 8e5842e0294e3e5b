package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.units.Angle;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Turns a camera so that a wanted direction falls on a wanted point.
 *
 * <p>The point's direction is fixed in the camera. Tilting the camera to the altitude h lifts it to
 * {@code sin altitude = rising cos h + ahead sin h}, which is solved for h; then the azimuth follows.
 *
 * @param level  the point's direction along the level line across the lens's axis
 * @param rising along the line at right angles to it and to the axis, upwards
 * @param ahead  along the axis
 */
record Aiming(double level, double rising, double ahead) {

    static Aiming of(Framing framing, double xMm, double yMm) {
        Vector3D point = framing.axes().toSky(xMm, yMm);
        FrameAxes unrolled = Framing.level(framing.aim(), framing.camera()).axes();
        return new Aiming(point.dotProduct(unrolled.right()), point.dotProduct(unrolled.up()),
                point.dotProduct(unrolled.ahead()));
    }

    Optional<Direction> at(Direction wanted) {
        double inTilt = Math.hypot(rising, ahead);
        double sine = wanted.altitude().sin() / inTilt;
        if (!(Math.abs(sine) <= 1)) {
            return Optional.empty();
        }
        double offsetRad = Math.atan2(rising, ahead);
        return DoubleStream.of(Math.asin(sine) - offsetRad, Math.PI - Math.asin(sine) - offsetRad)
                .mapToObj(tiltRad -> Angle.ofRadians(tiltRad).signed())
                .filter(tilt -> Math.abs(tilt.radians()) <= Math.PI / 2)
                .min((a, b) -> Double.compare(Math.abs(a.radians()), Math.abs(b.radians())))
                .map(tilt -> new Direction(wanted.azimuth().minus(aside(tilt)), tilt));
    }

    /** How far right of the aim the point lies in azimuth. */
    private Angle aside(Angle tilt) {
        return Angle.ofRadians(Math.atan2(level, ahead * tilt.cos() - rising * tilt.sin()));
    }
}
