package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.gear.Camera;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The catalogue stars that stand in a frame, over the terrain, at the middle of an exposure.
 *
 * <p>Placed by one rotation from the stars' frame to the horizon's, found at two points of the frame: refraction that
 * changes over the frame moves stars near its edge by some arcminutes.
 */
final class FrameStars {

    /** Nearer to the pole than this share of the equator's speed an image is taken to move no slower. */
    static final double LEAST_SPEED_SHARE = 0.02;
    /** Of the image distance: so far out every lens sees. */
    private static final double WITHIN_SIGHT = 1;

    private final double[] magnitudes;
    private final double[] octavesSlower;

    /**
     * Stars in a frame.
     *
     * @param magnitudes    their magnitudes, dimmed by the air
     * @param octavesSlower the speeds of their images, in octaves below the equator's
     */
    private FrameStars(double[] magnitudes, double[] octavesSlower) {
        this.magnitudes = magnitudes;
        this.octavesSlower = octavesSlower;
    }

    /** The stars of a frame. */
    static FrameStars of(NightSky sky, Framing framing, Interval open, StarField field) {
        Camera camera = framing.camera();
        double highMm = camera.frame().heightMm() / 2;
        double radiusRad = framing.radius().radians();
        Vector3D centre = StarField.vector(sky.trails().starAt(framing, 0, 0, open));
        double aboveMm = Math.min(highMm / 2, WITHIN_SIGHT * camera.lens().imageDistanceMm());
        Vector3D above = StarField.vector(sky.trails().starAt(framing, 0, aboveMm, open));
        Rotation toHorizon = new Rotation(centre, above, framing.aim().vector(),
                framing.toSky(0, aboveMm).vector());
        Rotation toCamera = new Rotation(centre, above, Vector3D.PLUS_K, Vector3D.PLUS_J);
        List<StarField.Placed> near = field.aroundDeclinationOf(centre, radiusRad);
        double leastAhead = Math.cos(radiusRad);
        double[] magnitudes = new double[near.size()];
        double[] octavesSlower = new double[near.size()];
        int seen = 0;
        for (StarField.Placed star : near) {
            if (star.place().dotProduct(centre) >= leastAhead && onSheet(camera, toCamera.applyTo(star.place()))) {
                Direction direction = Direction.of(toHorizon.applyTo(star.place()));
                if (sky.clearanceDeg(direction) >= 0) {
                    magnitudes[seen] = star.magnitude()
                            + Atmosphere.lossMag(sky.site().extinctionMag(), direction.altitude());
                    octavesSlower[seen++] = Stops.between(Math.max(LEAST_SPEED_SHARE, star.cosDeclination()), 1);
                }
            }
        }
        return new FrameStars(Arrays.copyOf(magnitudes, seen), Arrays.copyOf(octavesSlower, seen));
    }

    /** Whether a direction falls on the frame given in the camera: left (x), up (y), ahead (z); none behind it does. */
    private static boolean onSheet(Camera camera, Vector3D parts) {
        if (parts.getZ() <= 0) {
            return false;
        }
        double sine = Math.hypot(parts.getX(), parts.getY());
        double stretchMm = sine == 0 ? 0 : camera.lens().imageDistanceMm() / sine
                * camera.lens().projection().radius(Angle.ofRadians(Math.atan2(sine, parts.getZ())));
        return camera.frame().contains(stretchMm * parts.getX(), stretchMm * parts.getY());
    }

    /** Speed in mm/s of the image of a star on the celestial equator near the frame's centre. */
    static double equatorMmS(Lens lens) {
        return lens.imageDistanceMm() * EarthTurn.RAD_S;
    }

    /** How many there are. */
    int count() {
        return magnitudes.length;
    }

    /** How many of them leave a visible trail. */
    int recorded(LimitBySpeed limit) {
        int recorded = 0;
        for (int star = 0; star < magnitudes.length; star++) {
            recorded += magnitudes[star] <= limit.magnitude(octavesSlower[star]) ? 1 : 0;
        }
        return recorded;
    }

    /**
     * By how many magnitudes the limit would have to be deeper for so many to record, no more than there are; infinite
     * where there is no limit.
     */
    double shortfallMag(int trails, LimitBySpeed limit) {
        double[] least = new double[trails];
        int known = 0;
        for (int star = 0; star < magnitudes.length; star++) {
            double missing = magnitudes[star] - limit.magnitude(octavesSlower[star]);
            if (known < trails || missing < least[known - 1]) {
                known = Math.min(known + 1, trails);
                int place = known - 1;
                while (place > 0 && least[place - 1] > missing) {
                    least[place] = least[--place];
                }
                least[place] = missing;
            }
        }
        return least[trails - 1];
    }
}
