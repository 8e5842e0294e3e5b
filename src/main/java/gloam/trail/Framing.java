package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.units.Angle;
import gloam.units.Finite;
import java.util.Optional;

/**
 * Where a camera points and what it sees.
 *
 * <p>On the sheet x runs to the right and y up as seen in the scene, in mm from the frame's centre. The scale
 * is that of the lens as it is focused: the focal length at infinity, the longer image distance nearer. The
 * sheet is flat, the lens free of distortion.
 *
 * @param aim    the direction on the axis; its azimuth counts at the zenith too, where the frame's lower edge
 *               lies on that side
 * @param roll   the camera turned about its axis, 0 when its horizontal is level, clockwise as seen from
 *               behind
 * @param camera the camera
 */
public record Framing(Direction aim, Angle roll, Camera camera) {

    /** The framing of a level camera. */
    public static Framing level(Direction aim, Camera camera) {
        return new Framing(aim, Angle.ZERO, camera);
    }

    /** The same camera and roll with another aim. */
    public Framing withAim(Direction other) {
        return new Framing(other, roll, camera);
    }

    /**
     * Where on the sheet a direction falls, be it on the frame or beside it; empty where the lens does not
     * see: behind the camera.
     */
    public Optional<Point> toFrame(Direction direction) {
        return axes().toFrame(direction.vector());
    }

    /**
     * The direction that falls on a point of the sheet.
     *
     * <p>Beyond the image circle of a fisheye it is one behind the camera.
     */
    public Direction toSky(double xMm, double yMm) {
        return Direction.of(axes().toSky(xMm, yMm));
    }

    /**
     * The same camera and roll, aimed so that a direction falls on a point of the sheet.
     *
     * <p>Of two such aims it is the one nearer to the horizon.
     *
     * @return empty where no aim does it: beyond the image circle, and near the zenith or nadir for a point
     *         beside the frame's middle line
     */
    public Optional<Framing> placing(Direction direction, double xMm, double yMm) {
        return !images(new Point(xMm, yMm)) ? Optional.empty() : Aiming.of(this, xMm, yMm).at(direction)
                .map(this::withAim);
    }

    /** The angle from the axis to the frame's corners, or to the rim of an image circle inside them. */
    public Angle radius() {
        Point corner = new Point(camera.frame().widthMm() / 2, camera.frame().heightMm() / 2);
        return images(corner) ? toSky(corner.xMm, corner.yMm).to(aim) : FrameAxes.RIM;
    }

    /** Whether a point of the sheet lies inside the lens's image circle, where alone light falls. */
    public boolean images(Point point) {
        return axes().images(point);
    }

    /** Whether a direction falls on the frame, its edge included. */
    public boolean sees(Direction direction) {
        Frame frame = camera.frame();
        return toFrame(direction).filter(point -> frame.contains(point.xMm(), point.yMm())).isPresent();
    }

    /** The camera's axes, for many questions. */
    FrameAxes axes() {
        return FrameAxes.of(this);
    }

    /**
     * A point of the sheet.
     *
     * @param xMm to the right as seen in the scene, from the frame's centre
     * @param yMm up as seen in the scene, from the frame's centre
     */
    public record Point(double xMm, double yMm) {

        /** Refuses what is not finite. */
        public Point {
            Finite.check(xMm, "x in mm");
            Finite.check(yMm, "y in mm");
        }

        /** Straight distance to another point in mm. */
        public double distanceMm(Point other) {
            return Math.hypot(other.xMm - xMm, other.yMm - yMm);
        }
    }
}
