package gloam.planner;

import gloam.units.Angle;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Stars that may come into a frame as the sky turns, the brightest first. */
final class NearStars {

    private final double leastDeclinationRad;
    private final double mostDeclinationRad;
    private final List<StarField.Placed> stars;
    private final float mostOctavesSlower;

    private NearStars(double leastDeclinationRad, double mostDeclinationRad, List<StarField.Placed> stars) {
        this.leastDeclinationRad = leastDeclinationRad;
        this.mostDeclinationRad = mostDeclinationRad;
        this.stars = stars;
        this.mostOctavesSlower = (float) stars.stream().mapToDouble(StarField.Placed::octavesSlower).max()
                .orElse(0);
    }

    /**
     * Those of a field that may come into frames round a place.
     *
     * @param radius how far from a frame's centre its corners are
     * @param about  how far the centre may move in declination
     */
    static NearStars of(StarField field, Vector3D centre, Angle radius, Angle about) {
        double declinationRad = centre.getDelta();
        double reachRad = radius.plus(about).radians();
        return new NearStars(declinationRad - about.radians(), declinationRad + about.radians(),
                field.between(declinationRad - reachRad, declinationRad + reachRad));
    }

    /** Whether they are all those for a frame about another centre. */
    boolean near(Vector3D centre) {
        return centre.getDelta() >= leastDeclinationRad && centre.getDelta() <= mostDeclinationRad;
    }

    /**
     * Says how bright a star is, by its number, as if it were one on the equator; infinite out of the frame.
     */
    interface Weighing {

        float magnitude(int number);
    }

    /**
     * Magnitudes of those that are easiest to record, growing; none is weighed that cannot be among them.
     *
     * @param most  how many at most
     * @param slope by which they are told apart, see {@link StarLimit}
     */
    float[] easiest(int most, int slope, Weighing weighing) {
        EasiestStars easiest = new EasiestStars(most);
        for (int number = 0; number < stars.size(); number++) {
            StarField.Placed star = stars.get(number);
            if (!easiest.takes(StarLimit.weighed(star.magnitude(), mostOctavesSlower, slope))) {
                break;
            }
            if (easiest.takes(StarLimit.weighed(star.magnitude(), star.octavesSlower(), slope))) {
                easiest.add(weighing.magnitude(number));
            }
        }
        return easiest.magnitudes();
    }

    StarField.Placed get(int number) {
        return stars.get(number);
    }

    int size() {
        return stars.size();
    }
}
