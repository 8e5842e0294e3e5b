package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Instant;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The stars that stand in a frame, over the terrain, at an instant.
 *
 * <p>Placed by one rotation from the stars' frame to the horizon's, found at two points of the frame:
 * refraction that changes over the frame moves stars near its edge by some arcminutes.
 *
 * @param centre    the place among the stars that stands at the frame's centre
 * @param leastAhead cosine of the greatest angle from there that a star in the frame can have
 * @param toHorizon from the stars' frame to the horizon's
 * @param toCamera  and to the camera's
 */
record FrameStars(Site site, Framing framing, Vector3D centre, double leastAhead, Rotation toHorizon,
        Rotation toCamera) {

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

    /**
     * A star that stands in a frame.
     *
     * @param star         its number in the catalogue
     * @param magnitude    its magnitude, dimmed by the air and by the lens's fall-off
     * @param octavesSlower the speed of its image, in octaves below that of the equator at the frame's centre
     */
    record Seen(int star, float magnitude, float octavesSlower) {
    }

    /** What a framing shows at a site at an instant. */
    static FrameStars of(TrailEstimator trails, Site site, Framing framing, Instant at) {
        Camera camera = framing.camera();
        double aboveMm = Math.min(camera.frame().heightMm() / 4, WITHIN_SIGHT * camera.lens()
                .imageDistanceMm());
        Interval about = new Interval(at.minusSeconds(1), at.plusSeconds(1));
        Vector3D centre = trails.starAt(framing, 0, 0, about).place();
        Vector3D above = trails.starAt(framing, 0, aboveMm, about).place();
        return new FrameStars(site, framing, centre, framing.radius().cos(),
                new Rotation(centre, above, framing.aim().vector(), framing.toSky(0, aboveMm).vector()),
                new Rotation(centre, above, Vector3D.PLUS_K, Vector3D.PLUS_J));
    }

    /** The same when the sky has turned on, about the pole of J2000.0: to within half a degree. */
    FrameStars turnedBy(Angle angle) {
        Rotation turn = new Rotation(Vector3D.PLUS_K, angle.radians(), RotationConvention.VECTOR_OPERATOR);
        Rotation back = turn.revert();
        return new FrameStars(site, framing, turn.applyTo(centre), leastAhead,
                toHorizon.compose(back, RotationConvention.VECTOR_OPERATOR),
                toCamera.compose(back, RotationConvention.VECTOR_OPERATOR));
    }

    /** A star if it stands in it, else null. */
    Seen seen(StarField.Placed star) {
        double ahead = star.place().dotProduct(centre);
        if (ahead < leastAhead) {
            return null;
        }
        Camera camera = framing.camera();
        Vector3D onSheet = onSheet(camera, toCamera.applyTo(star.place()));
        if (onSheet == null || !camera.frame().contains(onSheet.getX(), onSheet.getY())) {
            return null;
        }
        Direction direction = Direction.of(toHorizon.applyTo(star.place()));
        if (NightSky.clearanceDeg(site, direction) < 0) {
            return null;
        }
        Vector3D next = onSheet(camera, toCamera.applyTo(LATER.applyTo(star.place())));
        double speedMmS = next == null ? 0 : next.distance(onSheet) / SPEED_OVER_S;
        double share = speedMmS / Equipment.equatorMmS(camera);
        Angle offAxis = Angle.ofRadians(Math.acos(Math.min(1, ahead)));
        double lossMag = Atmosphere.lossMag(site.extinctionMag(), direction.altitude())
                - 2.5 * Math.log10(Math.max(LEAST_SHARE,
                offAxis.cos() * camera.lens().mountShare(offAxis, camera.lens().fNumbers().get(0))));
        return new Seen(star.number(), (float) (star.magnitude() + lossMag), octavesSlower(share));
    }

    private static float octavesSlower(double share) {
        return (float) Stops.between(Math.max(LEAST_SPEED_SHARE, share), 1);
    }

    /**
     * By how many octaves the image of a star is slower than that of one on the equator at the frame's
     * centre, at most: neither a projection nor refraction shortens its way to less than half.
     */
    static float mostOctavesSlower(Vector3D place) {
        return octavesSlower(Math.cos(place.getDelta()) / 2);
    }

    /** By how much a place among the stars lies inside the frame and over the terrain; negative outside. */
    double insideMm(Vector3D place) {
        Camera camera = framing.camera();
        double clearMm = camera.lens().imageDistanceMm() * Math.toRadians(
                NightSky.clearanceDeg(site, Direction.of(toHorizon.applyTo(place))));
        Vector3D onSheet = onSheet(camera, toCamera.applyTo(place));
        return onSheet == null ? -camera.frame().widthMm() : Math.min(clearMm,
                Math.min(camera.frame().widthMm() / 2 - Math.abs(onSheet.getX()),
                camera.frame().heightMm() / 2 - Math.abs(onSheet.getY())));
    }

    /**
     * Where a direction given in the camera, left (x), up (y), ahead (z), falls on the sheet; null behind it.
     */
    private static Vector3D onSheet(Camera camera, Vector3D parts) {
        if (parts.getZ() <= 0) {
            return null;
        }
        double sine = Math.sqrt(parts.getX() * parts.getX() + parts.getY() * parts.getY());
        double stretchMm = sine == 0 ? 0 : camera.lens().imageDistanceMm() / sine
                * camera.lens().projection().radius(Angle.ofRadians(Math.atan2(sine, parts.getZ())));
        return new Vector3D(stretchMm * parts.getX(), stretchMm * parts.getY(), 0);
    }
}
