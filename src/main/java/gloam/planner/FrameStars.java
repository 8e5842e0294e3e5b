package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.light.Atmosphere;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The catalogue stars that stand in a frame, over the terrain, at an instant.
 *
 * <p>Placed by one rotation from the stars' frame to the horizon's, found at two points of the frame:
 * refraction that changes over the frame moves stars near its edge by some arcminutes.
 *
 * @param stars         their numbers in the field
 * @param magnitudes    their magnitudes, dimmed by the air and by the lens's fall-off
 * @param octavesSlower the speeds of their images, in octaves below that of the equator at the frame's centre
 */
record FrameStars(int[] stars, float[] magnitudes, float[] octavesSlower) {

    /** Of the image distance: so far out every lens sees. */
    private static final double WITHIN_SIGHT = 1;
    /**
     * An image is taken to move no slower than a star so near the pole, as a share of the equator's speed.
     */
    private static final double LEAST_SPEED_SHARE = 0.02;
    private static final double SPEED_OVER_S = 60;
    /** The sky turns by so little while the speed of an image is taken. */
    private static final Rotation LATER = new Rotation(Vector3D.PLUS_K, EarthTurn.RAD_S * SPEED_OVER_S,
            RotationConvention.VECTOR_OPERATOR);
    private static final double LEAST_SHARE = 1e-9;

    /** The stars of a frame at a minute of the night. */
    static FrameStars of(NightSky sky, Framing framing, int minute, StarField field) {
        Camera camera = framing.camera();
        Placing placing = Placing.of(sky, framing, minute);
        double radiusRad = framing.radius().radians();
        List<StarField.Placed> near = field.aroundDeclinationOf(placing.centre, radiusRad);
        double leastAhead = Math.cos(radiusRad);
        int[] stars = new int[near.size()];
        float[] magnitudes = new float[near.size()];
        float[] octavesSlower = new float[near.size()];
        FNumber widest = camera.lens().fNumbers().get(0);
        int seen = 0;
        for (StarField.Placed star : near) {
            double ahead = star.place().dotProduct(placing.centre);
            if (ahead < leastAhead) {
                continue;
            }
            Vector3D onSheet = onSheet(camera, placing.toCamera.applyTo(star.place()));
            if (onSheet == null || !camera.frame().contains(onSheet.getX(), onSheet.getY())) {
                continue;
            }
            Direction direction = Direction.of(placing.toHorizon.applyTo(star.place()));
            if (sky.clearanceDeg(direction) >= 0) {
                Vector3D next = onSheet(camera, placing.toCamera.applyTo(LATER.applyTo(star.place())));
                double speedMmS = next == null ? 0 : next.distance(onSheet) / SPEED_OVER_S;
                double share = speedMmS / Equipment.equatorMmS(camera);
                Angle offAxis = Angle.ofRadians(Math.acos(Math.min(1, ahead)));
                stars[seen] = star.number();
                magnitudes[seen] = (float) (star.magnitude()
                        + Atmosphere.lossMag(sky.site().extinctionMag(), direction.altitude())
                        - 2.5 * Math.log10(Math.max(LEAST_SHARE, offAxis.cos() * camera.lens()
                        .mountShare(offAxis, widest))));
                octavesSlower[seen++] = (float) Stops.between(Math.max(LEAST_SPEED_SHARE, share), 1);
            }
        }
        return new FrameStars(Arrays.copyOf(stars, seen), Arrays.copyOf(magnitudes, seen),
                Arrays.copyOf(octavesSlower, seen));
    }

    /** From the stars' frame to the horizon's and the camera's. */
    private record Placing(Vector3D centre, Rotation toHorizon, Rotation toCamera) {

        static Placing of(NightSky sky, Framing framing, int minute) {
            Camera camera = framing.camera();
            double aboveMm = Math.min(camera.frame().heightMm() / 4, WITHIN_SIGHT * camera.lens()
                    .imageDistanceMm());
            Interval about = sky.clock().span(minute - 1, minute + 1);
            Vector3D centre = sky.trails().starAt(framing, 0, 0, about).place();
            Vector3D above = sky.trails().starAt(framing, 0, aboveMm, about).place();
            return new Placing(centre, new Rotation(centre, above, framing.aim().vector(),
                    framing.toSky(0, aboveMm).vector()),
                    new Rotation(centre, above, Vector3D.PLUS_K, Vector3D.PLUS_J));
        }
    }

    /**
     * Where a direction given in the camera, left (x), up (y), ahead (z), falls on the sheet; null behind it.
     */
    private static Vector3D onSheet(Camera camera, Vector3D parts) {
        if (parts.getZ() <= 0) {
            return null;
        }
        double sine = Math.hypot(parts.getX(), parts.getY());
        double stretchMm = sine == 0 ? 0 : camera.lens().imageDistanceMm() / sine
                * camera.lens().projection().radius(Angle.ofRadians(Math.atan2(sine, parts.getZ())));
        return new Vector3D(stretchMm * parts.getX(), stretchMm * parts.getY(), 0);
    }
}
