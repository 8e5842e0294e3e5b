package gloam.frame;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.util.Pair;

/**
 * Where the camera of a sheet pointed by the trails on its straightened picture.
 *
 * <p><b>Model.</b> Predicted trails are laid over the ridges of the picture ({@link Ridges}) at every aim
 * within three degrees of the one noted and every roll within three, coarsely; where
 * most of them lies on ridges the camera is turned by least squares (Levenberg and Marquardt) until the
 * ridges lie under the trails, and along the trails, about the pole of the sky, until these begin and end
 * where the lines do ({@link TrailEnds}). It is believed where ends are seen and where more of the trails
 * lie on ridges than those of another sheet would at any of the aims tried, by how many do at others.
 * <b>Valid.</b> Some trails of which some begin or end in the picture. <b>Error.</b> A tenth of a degree.
 * <b>Departures.</b> The shutter opened and closed when it was said to have: a clock that is wrong turns the
 * camera about the pole.
 *
 * @param map       which direction falls where on the straightened picture
 * @param onRidges  share of the predicted trails that lies on ridges
 * @param endsSeen  share of the ends in the picture that are seen as ends, to half a degree of the sky's turn
 * @param rmsPx     how far the ridges lie from the trails, in the mean, in pixels of the straightened picture
 */
public record TrailAim(ImageMap map, double onRidges, double endsSeen, double rmsPx) {

    static final double WITHIN_DEG = 3;
    /** Trails that slide along others may end far from where they were looked for. */
    private static final double FARTHEST_RAD = Math.sqrt(2) * Math.toRadians(WITHIN_DEG);
    private static final double STEP_SHARE = 0.75;
    private static final int BEST = 6;
    private static final int[] REACH_PX = {10, 5, 3};
    /** So near to where it is the camera is held along the trails, where only their ends speak. */
    private static final double HELD_RAD = Math.toRadians(0.3);
    static final double NEAR_PX = 2;
    private static final int FREE = 4;
    private static final double LENS = 0.02;
    private static final double STEP = 1e-5;
    private static final double ENOUGH = 1e-9;
    private static final int MOST_ROUNDS = 30;
    private static final double LEAST_SHARE = 0.4;
    /** So many points are enough to tell where to look closer. */
    private static final int COARSE_POINTS = 150;
    private static final int CHANCE_LOOKS = 200;
    /** So many aims and rolls are told apart within a coarse look. */
    private static final double FINER = Math.pow(Ridges.WIDE_PX / 2.0, 3);
    /** The chance that trails of another sheet fit as well as is believed. */
    private static final double BY_CHANCE = 1e-3;

    /** A way of looking: the camera turned about up, right and ahead in degrees. */
    private record Look(double yaw, double pitch, double roll, double share) {

        ImageMap of(ImageMap noted) {
            return noted.moved(new Vector3D(Math.toRadians(pitch), Math.toRadians(yaw), Math.toRadians(roll)),
                    0, noted.distortion());
        }
    }

    /**
     * Finds the aim.
     *
     * @param picture the picture, straightened
     * @param noted   the map of the aim that was noted
     * @param all     what is predicted
     * @param pole    the direction of the pole of the sky
     * @return empty where the trails are not those of the picture
     */
    public static Optional<TrailAim> of(LightImage picture, ImageMap noted, List<PredictedTrail> all,
            Vector3D pole) {
        return new Search(new Ridges(picture), noted, all, pole, WITHIN_DEG).found();
    }

    /** A search of a picture's aim: where to look is known at once, the aim on request. */
    static final class Search {

        private final Ridges ridges;
        private final ImageMap noted;
        private final List<PredictedTrail> trails;
        private final List<Vector3D> points;
        private final Vector3D pole;
        private final List<Look> looks;

        Search(Ridges ridges, ImageMap noted, List<PredictedTrail> all, Vector3D pole, double withinDeg) {
            double farthest = noted.halfDiagonalRad() + 2 * Math.toRadians(withinDeg);
            this.ridges = ridges;
            this.noted = noted;
            this.trails = all.stream().filter(trail -> trail.directions().stream().anyMatch(point ->
                    Vector3D.angle(point, noted.axes().ahead()) < farthest)).toList();
            this.points = directions(trails);
            this.pole = pole;
            this.looks = looks(ridges, noted, thinned(points, COARSE_POINTS), withinDeg);
        }

        /** How much more of the trails lies on lines at the best aim than at others. */
        double promise() {
            double[] shares = looks.stream().mapToDouble(Look::share).toArray();
            return StatUtils.max(shares) - StatUtils.mean(shares);
        }

        /** The aim, if it is believed. */
        Optional<TrailAim> found() {
            OnLines elsewhere = thinned(looks.stream().filter(look -> Math.hypot(look.yaw, look.pitch)
                    > WITHIN_DEG / 2).toList(), CHANCE_LOOKS).stream().map(look ->
                    OnLines.of(ridges, look.of(noted), trails)).reduce(OnLines.NONE, OnLines::plus);
            return Optional.of(best()).filter(aim -> aim.endsSeen > LEAST_SHARE && better(aim.map, elsewhere)
                    && Vector3D.angle(aim.map.axes().ahead(), noted.axes().ahead()) < FARTHEST_RAD);
        }

        /** The aim that lays most of the trails on lines, believed or not. */
        TrailAim best() {
            return looks.stream().sorted((a, b) -> Double.compare(b.share, a.share)).limit(BEST)
                    .map(look -> fitted(ridges, look.of(noted), trails, pole))
                    .max((a, b) -> Double.compare(a.onRidges, b.onRidges)).orElseThrow();
        }

        /** Whether more of the trails lie on lines by a map than chance has it where others map them. */
        boolean better(ImageMap map, ImageMap other) {
            return better(map, OnLines.of(ridges, other, trails));
        }

        /** Whether more of the trails lie on lines than by chance where others have so many on them. */
        private boolean better(ImageMap map, OnLines others) {
            return looks.size() * FINER * OnLines.of(ridges, map, trails).byChance(others) < BY_CHANCE;
        }
    }

    /** Every so many of a list, so that about as many are left as asked for. */
    private static <T> List<T> thinned(List<T> all, int most) {
        int every = Math.max(1, all.size() / most);
        return IntStream.range(0, (all.size() + every - 1) / every).mapToObj(i -> all.get(i * every))
                .toList();
    }

    private static List<Vector3D> directions(List<PredictedTrail> trails) {
        return trails.stream().flatMap(trail -> trail.directions().stream()).toList();
    }

    private static List<Look> looks(Ridges ridges, ImageMap noted, List<Vector3D> points, double withinDeg) {
        double stepDeg = Math.toDegrees(STEP_SHARE * 2 * Ridges.WIDE_PX / noted.pixelsARadian());
        int steps = (int) Math.ceil(withinDeg / stepDeg);
        double rollDeg = Math.toDegrees(STEP_SHARE * 2 * Ridges.WIDE_PX / (noted.width() / 2.0));
        int rolls = (int) Math.ceil(withinDeg / rollDeg);
        return IntStream.rangeClosed(-steps, steps).boxed().flatMap(yaw ->
                IntStream.rangeClosed(-steps, steps).boxed().flatMap(pitch ->
                IntStream.rangeClosed(-rolls, rolls).mapToObj(roll -> {
                    Look look = new Look(yaw * stepDeg, pitch * stepDeg, roll * rollDeg, 0);
                    return new Look(look.yaw, look.pitch, look.roll,
                            share(ridges, look.of(noted), points, Ridges.WIDE_PX));
                }))).toList();
    }

    /** The share of some directions in the picture that lie so near to ridges. */
    static double share(Ridges ridges, ImageMap map, List<Vector3D> points, double withinPx) {
        int on = 0;
        int all = 0;
        for (Vector3D point : points) {
            Optional<double[]> place = map.toImage(point).filter(map::contains);
            if (place.isPresent()) {
                all++;
                on += ridges.awayPx(place.get()[0], place.get()[1]) <= withinPx ? 1 : 0;
            }
        }
        return all == 0 ? 0 : (double) on / all;
    }

    /** The map turned about the pole, along the trails, so that they begin and end where the lines do. */
    private static ImageMap slid(Ridges ridges, ImageMap map, List<PredictedTrail> trails, Vector3D pole) {
        Vector3D inCamera = new Vector3D(pole.dotProduct(map.axes().right()),
                pole.dotProduct(map.axes().up()), pole.dotProduct(map.axes().ahead()));
        return map.moved(inCamera.scalarMultiply(Math.toRadians(
                TrailEnds.of(ridges, map, trails).laterDeg())), 0, map.distortion());
    }

    private static TrailAim fitted(Ridges ridges, ImageMap start, List<PredictedTrail> trails,
            Vector3D pole) {
        ImageMap map = start;
        double rms = Double.NaN;
        for (int reach : REACH_PX) {
            List<Across> across = Across.of(ridges, map, trails, reach);
            if (across.size() <= FREE) {
                break;
            }
            LeastSquaresOptimizer.Optimum best;
            try {
                best = solved(map, across);
            } catch (MathIllegalStateException withoutEnd) {
                break;
            }
            map = moved(map, best.getPoint());
            map = slid(ridges, map, trails, pole);
            rms = Math.sqrt(best.getResiduals().dotProduct(best.getResiduals()) / across.size());
        }
        return new TrailAim(map, share(ridges, map, directions(trails), NEAR_PX),
                TrailEnds.of(ridges, map, trails).seenShare(), rms);
    }

    private static LeastSquaresOptimizer.Optimum solved(ImageMap map, List<Across> across) {
        double[] target = new double[across.size() + FREE];
        for (int i = 0; i < across.size(); i++) {
            target[i] = across.get(i).found();
        }
        return new LevenbergMarquardtOptimizer().optimize(new LeastSquaresBuilder().start(new double[FREE])
                .target(target).model(point -> model(map, across, point)).lazyEvaluation(false)
                .maxEvaluations(10 * MOST_ROUNDS).maxIterations(MOST_ROUNDS)
                .checker((round, before, now) -> round >= MOST_ROUNDS - 1
                        || before.getPoint().getDistance(now.getPoint()) < ENOUGH).build());
    }

    private static Pair<RealVector, RealMatrix> model(ImageMap map, List<Across> across, RealVector point) {
        double[] here = places(map, across, point);
        RealMatrix slopes = new Array2DRowRealMatrix(here.length, FREE);
        for (int free = 0; free < FREE; free++) {
            RealVector aside = point.copy();
            aside.addToEntry(free, STEP);
            double[] there = places(map, across, aside);
            for (int i = 0; i < here.length; i++) {
                slopes.setEntry(i, free, (there[i] - here[i]) / STEP);
            }
        }
        return new Pair<>(new ArrayRealVector(here, false), slopes);
    }

    private static double[] places(ImageMap map, List<Across> across, RealVector point) {
        ImageMap moved = moved(map, point);
        double[] places = new double[across.size() + FREE];
        for (int i = 0; i < across.size(); i++) {
            places[i] = across.get(i).along(moved);
        }
        for (int free = 0; free < FREE; free++) {
            places[across.size() + free] = point.getEntry(free) / (free < 3 ? HELD_RAD : LENS);
        }
        return places;
    }

    private static ImageMap moved(ImageMap map, RealVector point) {
        return map.moved(new Vector3D(point.getEntry(0), point.getEntry(1), point.getEntry(2)),
                point.getEntry(3), map.distortion());
    }
}
