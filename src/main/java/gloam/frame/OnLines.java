package gloam.frame;

import java.util.List;
import org.hipparchus.special.Beta;

/**
 * How many of the predicted trails in a picture lie on its lines by more than half.
 *
 * @param on  so many
 * @param all out of all that run in the picture
 */
record OnLines(int on, int all) {

    /** None of none. */
    static final OnLines NONE = new OnLines(0, 0);

    private static final int LEAST_POINTS = 3;
    private static final double HALF = 0.5;

    static OnLines of(Ridges ridges, ImageMap map, List<PredictedTrail> trails) {
        OnLines found = NONE;
        for (PredictedTrail trail : trails) {
            int inside = (int) trail.directions().stream().filter(point ->
                    map.toImage(point).filter(map::contains).isPresent()).count();
            if (inside >= LEAST_POINTS) {
                boolean on = TrailAim.share(ridges, map, trail.directions(), TrailAim.NEAR_PX) > HALF;
                found = found.plus(new OnLines(on ? 1 : 0, 1));
            }
        }
        return found;
    }

    OnLines plus(OnLines other) {
        return new OnLines(on + other.on, all + other.all);
    }

    /** The chance of so many or more, where each has that of others: a binomial distribution. */
    double byChance(OnLines others) {
        double each = (others.on + 1.0) / (others.all + 2.0);
        return on == 0 ? 1 : Beta.regularizedBeta(each, on, all - on + 1);
    }
}
