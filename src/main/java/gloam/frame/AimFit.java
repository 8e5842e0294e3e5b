package gloam.frame;

import gloam.frame.StarAim.Matched;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Sets aim, roll, focal length and distortion so that stars fall where they were found: least squares
 * (Levenberg and Marquardt) over pairs that are made anew, ever closer; what the lens is marked with counts
 * to 2 % of its focal length, and its distortion as 0 ± 2 % in the corner (common practice, no source).
 */
final class AimFit {

    private static final double[] WITHIN_DEG = {0.9, 0.45, 0.3, 0.22, StarMatch.WITHIN_DEG,
        StarMatch.WITHIN_DEG};
    private static final int[] OF_BRIGHTEST = {40, 60, 60, 60, 60, 1000};
    private static final int FREE = 5;
    private static final double LENS = 0.02;
    private static final double STEP = 1e-5;
    private static final double ENOUGH = 1e-9;
    private static final int MOST_ROUNDS = 40;
    private static final double LEAST_RMS_PX = 0.2;
    private static final int LEAST_PAIRS = 3;

    private AimFit() {
    }

    /** The best map near another; empty where too few stars fall on what was found. */
    static Optional<StarAim> of(ImageMap near, List<SkyStar> stars, List<Detection> detections) {
        ImageMap map = near;
        List<Matched> pairs = List.of();
        LeastSquaresOptimizer.Optimum best = null;
        for (int round = 0; round < WITHIN_DEG.length; round++) {
            pairs = pairs(map, stars, detections, WITHIN_DEG[round], OF_BRIGHTEST[round]);
            if (pairs.size() < LEAST_PAIRS) {
                return Optional.empty();
            }
            try {
                best = fitted(map, pairs);
            } catch (MathIllegalStateException withoutEnd) {
                return Optional.empty();
            }
            RealVector point = best.getPoint();
            map = map.moved(turn(point), point.getEntry(3), point.getEntry(4));
        }
        double rmsPx = Math.sqrt(square(map, pairs) / pairs.size());
        RealVector sigma = best.getSigma(0);
        double errorRad = Math.max(LEAST_RMS_PX, rmsPx) * Math.max(sigma.getEntry(2),
                Math.hypot(sigma.getEntry(0), sigma.getEntry(1)));
        return Optional.of(new StarAim(map, pairs, Math.toDegrees(rmsPx / map.pixelsARadian()),
                Math.toDegrees(errorRad)));
    }

    /** Each star with the nearest thing found, the brightest star first, within an angle. */
    static List<Matched> pairs(ImageMap map, List<SkyStar> stars, List<Detection> detections,
            double withinDeg, int most) {
        double withinPx = Math.toRadians(withinDeg) * map.pixelsARadian();
        boolean[] used = new boolean[detections.size()];
        int seen = Math.min(most, used.length);
        int looked = 0;
        List<Matched> pairs = new ArrayList<>();
        for (SkyStar star : stars) {
            Optional<double[]> place = map.toImage(star.direction()).filter(map::contains);
            if (place.isEmpty()) {
                continue;
            }
            if (looked++ == most) {
                break;
            }
            int best = -1;
            double bestPx = withinPx;
            for (int i = 0; i < seen; i++) {
                double apart = Math.hypot(detections.get(i).x() - place.get()[0],
                        detections.get(i).y() - place.get()[1]);
                if (!used[i] && apart < bestPx) {
                    best = i;
                    bestPx = apart;
                }
            }
            if (best >= 0) {
                used[best] = true;
                pairs.add(new Matched(star, detections.get(best)));
            }
        }
        return pairs;
    }

    private static LeastSquaresOptimizer.Optimum fitted(ImageMap map, List<Matched> pairs) {
        double[] target = new double[2 * pairs.size() + 2];
        for (int i = 0; i < pairs.size(); i++) {
            target[2 * i] = pairs.get(i).detection().x();
            target[2 * i + 1] = pairs.get(i).detection().y();
        }
        double[] start = new double[FREE];
        start[4] = map.distortion();
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder().start(start).target(target)
                .model(point -> model(map, pairs, point)).lazyEvaluation(false)
                .maxEvaluations(10 * MOST_ROUNDS).maxIterations(MOST_ROUNDS)
                .checker((round, before, now) -> round >= MOST_ROUNDS - 1
                        || before.getPoint().getDistance(now.getPoint()) < ENOUGH).build());
    }

    private static Pair<RealVector, RealMatrix> model(ImageMap map, List<Matched> pairs, RealVector point) {
        double[] here = places(map, pairs, point);
        RealMatrix slopes = new Array2DRowRealMatrix(here.length, FREE);
        for (int free = 0; free < FREE; free++) {
            RealVector aside = point.copy();
            aside.addToEntry(free, STEP);
            double[] there = places(map, pairs, aside);
            for (int i = 0; i < here.length; i++) {
                slopes.setEntry(i, free, (there[i] - here[i]) / STEP);
            }
        }
        return new Pair<>(new ArrayRealVector(here, false), slopes);
    }

    /** Where the stars fall, then the lens as it is marked, all in pixels or so many times its error. */
    private static double[] places(ImageMap map, List<Matched> pairs, RealVector point) {
        ImageMap moved = map.moved(turn(point), point.getEntry(3), point.getEntry(4));
        double[] places = new double[2 * pairs.size() + 2];
        for (int i = 0; i < pairs.size(); i++) {
            double[] place = moved.toImage(pairs.get(i).star().direction())
                    .orElse(new double[] {0, 0});
            System.arraycopy(place, 0, places, 2 * i, 2);
        }
        places[places.length - 2] = point.getEntry(3) / LENS;
        places[places.length - 1] = point.getEntry(4) / LENS;
        return places;
    }

    private static Vector3D turn(RealVector point) {
        return new Vector3D(point.getEntry(0), point.getEntry(1), point.getEntry(2));
    }

    private static double square(ImageMap map, List<Matched> pairs) {
        double[] there = places(map, pairs, new ArrayRealVector(new double[] {0, 0, 0, 0, map.distortion()}));
        double[] apart = new double[pairs.size()];
        Arrays.setAll(apart, i -> Math.pow(there[2 * i] - pairs.get(i).detection().x(), 2)
                + Math.pow(there[2 * i + 1] - pairs.get(i).detection().y(), 2));
        return Arrays.stream(apart).sum();
    }
}
