package gloam.frame;

import gloam.units.Median;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a trail stands over what is beside it on a scan.
 *
 * <p><b>Model.</b> Along the trail, pixel by pixel, its level less the mean of those on both sides; the
 * median of all, so that dust and crossing trails count little. <b>Valid.</b> Trails longer than some
 * pixels. <b>Error.</b> The scatter along the trail, points that share their smoothing counted once.
 * <b>Departures.</b> Trails closer together than their width.
 *
 * @param level  by which share of white its level is higher, coded as sRGB
 * @param error  one standard deviation of that
 * @param sky    the level beside it
 * @param points how many points of the picture it was measured at
 */
public record TrailRise(double level, double error, double sky, int points) {

    private static final double STANDS_OUT = 3;
    /** A trail that differs from its sky by less than a hundredth of white is not seen. */
    private static final double LEAST_LEVEL = 0.01;
    private static final double SMOOTH_PX = 5;
    private static final double OF_MEDIAN = Math.sqrt(Math.PI / 2);

    static TrailRise of(Ridges ridges, List<List<double[]>> stretches) {
        List<double[]> found = new ArrayList<>();
        stretches.forEach(places -> add(found, ridges, places));
        if (found.isEmpty()) {
            return new TrailRise(0, 1, 0, 0);
        }
        double[] rises = found.stream().mapToDouble(at -> at[0]).toArray();
        double level = Median.of(rises);
        return new TrailRise(level, OF_MEDIAN * Median.scatter(rises, level)
                / Math.sqrt(Math.max(1, rises.length / SMOOTH_PX)),
                Median.of(found.stream().mapToDouble(at -> at[1]).toArray()), rises.length);
    }

    private static void add(List<double[]> found, Ridges ridges, List<double[]> places) {
        for (int i = 0; i + 1 < places.size(); i++) {
            double[] from = places.get(i);
            double[] to = places.get(i + 1);
            int steps = (int) Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]));
            for (int step = 0; step < steps; step++) {
                double share = (step + 0.5) / steps;
                double[] rise = ridges.rise(new double[] {from[0] + share * (to[0] - from[0]),
                    from[1] + share * (to[1] - from[1])}, to);
                if (!Double.isNaN(rise[0])) {
                    found.add(rise);
                }
            }
        }
    }

    /** Whether it can be told from the sky. */
    public boolean seen() {
        return level > Math.max(LEAST_LEVEL, STANDS_OUT * error);
    }
}
