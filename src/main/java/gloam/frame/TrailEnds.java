package gloam.frame;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.stat.StatUtils;

/**
 * Where trails begin and end in a picture, beside where they should by a map.
 *
 * <p><b>Model.</b> Along each trail, around an end of it, the contrast of the line steps up or down; the end
 * is where the two sides differ most (least squares of one step). <b>Valid.</b> Ends inside the picture.
 * <b>Error.</b> A pixel or two for each end; the median is taken. <b>Departures.</b> Beginnings and ends
 * count alike, so that an exposure that was longer at both ends does not move the camera.
 *
 * @param beginsDeg by how many degrees of the sky's turn each trail begins later than it should
 * @param endsDeg   the same of ends
 * @param inPicture how many there should be in the picture
 */
record TrailEnds(double[] beginsDeg, double[] endsDeg, int inPicture) {

    private static final int LEAST_POINTS = 4;
    private static final double SEEN_DEG = 0.5;
    private static final double MEDIAN = 50;

    static TrailEnds of(Ridges ridges, ImageMap map, List<PredictedTrail> trails) {
        return new TrailEnds(trails.stream().mapToDouble(trail -> trail.everyDeg()
                * later(ridges, map, trail.begin(), 1)).filter(Double::isFinite).toArray(),
                trails.stream().mapToDouble(trail -> trail.everyDeg() * later(ridges, map, trail.end(), -1))
                .filter(Double::isFinite).toArray(),
                (int) trails.stream().mapToLong(trail -> (whole(map, trail.begin()) ? 1 : 0)
                + (whole(map, trail.end()) ? 1 : 0)).sum());
    }

    private static boolean whole(ImageMap map, List<Vector3D> points) {
        return points.size() >= 2 * LEAST_POINTS && points.stream().allMatch(point ->
                map.toImage(point).filter(map::contains).isPresent());
    }

    /**
     * By how many points a line begins (sense 1) or ends (sense -1) later; not a number where it does not.
     */
    private static double later(Ridges ridges, ImageMap map, List<Vector3D> points, int sense) {
        if (!whole(map, points)) {
            return Double.NaN;
        }
        int count = points.size();
        double[] sums = new double[count + 1];
        for (int i = 0; i < count; i++) {
            Optional<double[]> next = map.toImage(points.get(i + 1 < count ? i + 1 : i - 1));
            sums[i + 1] = sums[i] + ridges.contrast(map.toImage(points.get(i)).orElseThrow(),
                    next.orElseThrow());
        }
        double most = ridges.least() / 2;
        double found = Double.NaN;
        for (int i = LEAST_POINTS; i <= count - LEAST_POINTS; i++) {
            double step = sense * ((sums[count] - sums[i]) / (count - i) - sums[i] / i);
            double gain = step * Math.sqrt((double) i * (count - i)) / count;
            if (gain > most) {
                most = gain;
                found = i - count / 2.0;
            }
        }
        return found;
    }

    /** By how many degrees of the sky's turn trails lie later than they should; 0 where no end is seen. */
    double laterDeg() {
        double[] medians = DoubleStream.of(median(beginsDeg), median(endsDeg)).filter(Double::isFinite)
                .toArray();
        return medians.length == 0 ? 0 : StatUtils.mean(medians);
    }

    private static double median(double[] values) {
        return values.length == 0 ? Double.NaN : StatUtils.percentile(values, MEDIAN);
    }

    /** Share of the ends in the picture that are seen where they should be. */
    double seenShare() {
        long seen = DoubleStream.concat(DoubleStream.of(beginsDeg), DoubleStream.of(endsDeg))
                .filter(deg -> Math.abs(deg) < SEEN_DEG).count();
        return inPicture == 0 ? 0 : (double) seen / inPicture;
    }
}
