package gloam.frame;

import gloam.gear.Camera;
import gloam.gear.Lens;
import gloam.trail.FrameAxes;
import gloam.trail.Framing;
import gloam.units.Angle;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Which direction falls on which pixel.
 *
 * @param axes       where the camera points
 * @param distortion by which share of its distance from the middle a point in the corner lies farther out
 *                   than the projection has it; between, that share grows with the square of the distance
 * @param width      pixels across
 * @param height     pixels down
 */
public record ImageMap(FrameAxes axes, double distortion, int width, int height) {

    private static final int ROUNDS = 8;

    /** The map of a framing without distortion. */
    public static ImageMap of(Framing framing, LightImage image) {
        return new ImageMap(FrameAxes.of(framing), 0, image.width(), image.height());
    }

    /** The map of a camera that looks north, level. */
    static ImageMap unaimed(Camera camera, int width, int height) {
        return new ImageMap(new FrameAxes(Vector3D.PLUS_I, Vector3D.PLUS_K, Vector3D.PLUS_J, camera), 0,
                width, height);
    }

    private double pixelMm() {
        return axes.camera().frame().widthMm() / width;
    }

    private double halfDiagonalMm() {
        return axes.camera().frame().halfDiagonalMm();
    }

    /** The direction that falls on a place in pixels. */
    Vector3D toSky(double x, double y) {
        double xMm = (x - width / 2.0) * pixelMm();
        double yMm = (height / 2.0 - y) * pixelMm();
        double stretch = 1;
        for (int round = 0; round < ROUNDS && distortion != 0; round++) {
            double share = Math.hypot(xMm, yMm) / stretch / halfDiagonalMm();
            stretch = 1 + distortion * share * share;
        }
        return axes.toSky(xMm / stretch, yMm / stretch);
    }

    /** The angle of a place in pixels from the lens's axis. */
    Angle offAxis(double x, double y) {
        return Angle.ofRadians(Vector3D.angle(toSky(x, y), axes.ahead()));
    }

    /** The place in pixels, x then y, on which a direction falls, be it in the image or beside it. */
    Optional<double[]> toImage(Vector3D direction) {
        return axes.toFrame(direction).map(point -> {
            double share = distortion == 0 ? 0 : Math.hypot(point.xMm(), point.yMm()) / halfDiagonalMm();
            double stretch = 1 + distortion * share * share;
            return new double[] {width / 2.0 + stretch * point.xMm() / pixelMm(),
                height / 2.0 - stretch * point.yMm() / pixelMm()};
        });
    }

    /** Whether a place lies in the image. */
    boolean contains(double[] place) {
        return place[0] >= 0 && place[0] <= width && place[1] >= 0 && place[1] <= height;
    }

    /** Pixels to a radian in the middle of the image. */
    double pixelsARadian() {
        return axes.camera().lens().imageDistanceMm() / pixelMm();
    }

    /** The angle from the middle to a corner. */
    double halfDiagonalRad() {
        return offAxis(0, 0).radians();
    }

    /**
     * The map of the camera turned and its lens longer.
     *
     * @param turn       about its right, up and ahead, in radians
     * @param longer     logarithm of the focal length over what it was
     * @param distortion the distortion
     */
    ImageMap moved(Vector3D turn, double longer, double distortion) {
        Vector3D axis = axes.right().scalarMultiply(turn.getX()).add(axes.up().scalarMultiply(turn.getY()))
                .add(axes.ahead().scalarMultiply(turn.getZ()));
        Rotation by = turn.getNorm() == 0 ? Rotation.IDENTITY
                : new Rotation(axis, turn.getNorm(), RotationConvention.VECTOR_OPERATOR);
        return new ImageMap(new FrameAxes(by.applyTo(axes.right()), by.applyTo(axes.up()),
                by.applyTo(axes.ahead()), longer(axes.camera(), Math.exp(longer))), distortion, width,
                height);
    }

    /** The map of a camera that looked north, level, with the sky turned before it. */
    ImageMap turned(Rotation skyToCamera) {
        return new ImageMap(new FrameAxes(skyToCamera.applyInverseTo(Vector3D.PLUS_I),
                skyToCamera.applyInverseTo(Vector3D.PLUS_K), skyToCamera.applyInverseTo(Vector3D.PLUS_J),
                axes.camera()), distortion, width, height);
    }

    private static Camera longer(Camera camera, double times) {
        Lens lens = camera.lens();
        return new Camera(camera.name(), new Lens(lens.focalLengthMm() * times, lens.fNumbers(),
                lens.transmittance(), lens.focusM(), lens.spotUm(), lens.filterStops(), lens.projection(),
                lens.vignetting()), camera.frame(), camera.changeover());
    }
}
