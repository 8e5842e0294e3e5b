package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.gear.Camera;
import gloam.gear.Projection;
import gloam.units.Angle;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A framing as three axes of length 1, at right angles.
 *
 * @param right  the frame's +x
 * @param up     the frame's +y
 * @param ahead  the lens's axis
 * @param camera what stands on it
 */
public record FrameAxes(Vector3D right, Vector3D up, Vector3D ahead, Camera camera) {

    static final Angle RIM = Angle.ofRadians(Math.PI / 2);
    /** How far behind the rim a direction is still taken to stand on it, in radians, against rounding. */
    private static final double RIM_WITHIN_RAD = 1e-12;

    /** The axes of a framing. */
    public static FrameAxes of(Framing framing) {
        Angle azimuth = framing.aim().azimuth();
        Angle altitude = framing.aim().altitude();
        Angle roll = framing.roll();
        Vector3D level = new Vector3D(azimuth.cos(), -azimuth.sin(), 0);
        Vector3D rising = new Vector3D(-azimuth.sin() * altitude.sin(), -azimuth.cos() * altitude.sin(),
                altitude.cos());
        return new FrameAxes(level.scalarMultiply(roll.cos()).add(rising.scalarMultiply(-roll.sin())),
                rising.scalarMultiply(roll.cos()).add(level.scalarMultiply(roll.sin())),
                framing.aim().vector(), framing.camera());
    }

    /** The framing that has these axes. */
    public Framing framing() {
        Direction aim = Direction.of(ahead);
        FrameAxes level = of(Framing.level(aim, camera));
        return new Framing(aim, Angle.ofRadians(Math.atan2(-right.dotProduct(level.up),
                right.dotProduct(level.right))), camera);
    }

    /** Where a direction falls; empty behind the camera, whence no lens gets light. */
    public Optional<Framing.Point> toFrame(Vector3D direction) {
        if (insideRim(direction) < -RIM_WITHIN_RAD) {
            return Optional.empty();
        }
        double alongX = direction.dotProduct(right);
        double alongY = direction.dotProduct(up);
        double offAxisSine = Math.sqrt(alongX * alongX + alongY * alongY);
        Angle offAxis = Angle.ofRadians(Math.atan2(offAxisSine, direction.dotProduct(ahead)));
        double radiusMm = projection().radius(offAxis) * scaleMm();
        if (Double.isInfinite(radiusMm)) {
            return Optional.empty();
        }
        double stretchMm = offAxisSine == 0 ? 0 : radiusMm / offAxisSine;
        return Optional.of(new Framing.Point(stretchMm * alongX, stretchMm * alongY));
    }

    /** Whether a point of the sheet lies inside the lens's image circle. */
    boolean images(Framing.Point point) {
        double radius = Math.hypot(point.xMm(), point.yMm()) / scaleMm();
        return radius < projection().radius(RIM);
    }

    /** The direction that falls on a point; beyond the image circle one behind the camera. */
    public Vector3D toSky(double xMm, double yMm) {
        double radiusMm = Math.hypot(xMm, yMm);
        if (radiusMm == 0) {
            return ahead;
        }
        Angle offAxis = projection().offAxis(radiusMm / scaleMm());
        Vector3D outward = right.scalarMultiply(xMm / radiusMm).add(up.scalarMultiply(yMm / radiusMm));
        return ahead.scalarMultiply(offAxis.cos()).add(outward.scalarMultiply(offAxis.sin()));
    }

    /**
     * How far inside all edges of the frame and the rim of what the lens sees a direction falls, negative
     * outside; steady in the direction, so that its zeros can be searched for.
     */
    double inside(Vector3D direction) {
        double least = scaleMm() * insideRim(direction);
        for (Trail.Edge edge : Trail.Edge.values()) {
            least = Math.min(least, inside(direction, edge));
        }
        return least;
    }

    /**
     * The edge of the frame that a direction on it crosses; empty where it is the rim of what the lens sees.
     */
    Optional<Trail.Edge> crossed(Vector3D direction) {
        return Stream.of(Trail.Edge.values())
                .min(Comparator.comparingDouble(edge -> inside(direction, edge)))
                .filter(edge -> inside(direction, edge) < scaleMm() * insideRim(direction));
    }

    private double insideRim(Vector3D direction) {
        return direction.dotProduct(ahead);
    }

    /** How far inside one edge a direction falls, negative outside; steady behind the camera too. */
    double inside(Vector3D direction, Trail.Edge edge) {
        double halfMm = (edge.alongX() ? camera.frame().widthMm() : camera.frame().heightMm()) / 2;
        double along = edge.sign() * direction.dotProduct(edge.alongX() ? right : up);
        if (projection() == Projection.RECTILINEAR) {
            return halfMm * direction.dotProduct(ahead) - scaleMm() * along;
        }
        double sine = direction.crossProduct(ahead).getNorm();
        double radiusMm = scaleMm() * projection().radius(Angle.ofRadians(Vector3D.angle(direction, ahead)));
        return halfMm - (sine == 0 ? 0 : radiusMm / sine * along);
    }

    /** The frame's shorter side as an angle through its centre, as far as the lens sees. */
    double shorterSideRad() {
        double halfMm = Math.min(camera.frame().widthMm(), camera.frame().heightMm()) / 2;
        return halfMm / scaleMm() < projection().radius(RIM) ? 2 * projection().offAxis(halfMm / scaleMm())
                .radians() : 2 * RIM.radians();
    }

    private Projection projection() {
        return camera.lens().projection();
    }

    private double scaleMm() {
        return camera.lens().imageDistanceMm();
    }
}
