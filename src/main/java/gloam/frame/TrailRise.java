package gloam.frame;

import gloam.units.Median;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far a trail stands over what is beside it on a scan.
 *
 * <p><b>Model.</b> Along the trail, pixel by pixel, its level less the mean of those on both sides, and the
 * same summed up across it; the median of all, so that dust and crossing trails count little.
 * <b>Valid.</b> Trails longer than some pixels. <b>Error.</b> The scatter along the trail, points that share
 * their smoothing counted once. <b>Departures.</b> Trails closer together than their width.
 *
 * @param level  by which share of white its level is higher, coded as sRGB
 * @param error  one standard deviation of that
 * @param sky    the level beside it
 * @param whole  how much of that there is across the trail, in levels times pixels; not a number for a trail
 *               along the rim
 */
public record TrailRise(double level, double error, double sky, double whole) {

    private static final double STANDS_OUT = 3;
    /** A trail that differs from its sky by less than a hundredth of white is not seen. */
    private static final double LEAST_LEVEL = 0.01;
    private static final double SMOOTH_PX = 5;

    static TrailRise of(Ridges ridges, List<List<double[]>> stretches) {
        List<double[]> found = new ArrayList<>();
        stretches.forEach(places -> add(found, ridges, places));
        if (found.isEmpty()) {
            return new TrailRise(0, 1, 0, Double.NaN);
        }
        double[] rises = found.stream().mapToDouble(at -> at[0]).toArray();
        double level = Median.of(rises);
        double[] whole = found.stream().mapToDouble(at -> at[2]).filter(Double::isFinite).toArray();
        return new TrailRise(level, Median.error(rises, level)
                * Math.sqrt(Math.min(rises.length, SMOOTH_PX)),
                Median.of(found.stream().mapToDouble(at -> at[1]).toArray()),
                whole.length == 0 ? Double.NaN : Median.of(whole));
    }

    private static void add(List<double[]> found, Ridges ridges, List<double[]> places) {
        for (int i = 0; i + 1 < places.size(); i++) {
            double[] from = places.get(i);
            double[] to = places.get(i + 1);
            int steps = (int) Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]));
            for (int step = 0; step < steps; step++) {
                double share = (step + 0.5) / steps;
                double[] here = {from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])};
                double[] rise = ridges.rise(here, to);
                if (!Double.isNaN(rise[0])) {
                    found.add(new double[] {rise[0], rise[1], ridges.whole(here, to)});
                }
            }
        }
    }

    /** What the trail adds to the density, in size; less than 0 where it is under what is beside it. */
    public double density(boolean negative) {
        return Math.signum(level) * Math.abs(Math.log10(light(sky + level, negative)
                / light(sky, negative)));
    }

    /** Density of the sky beside it over a border of that light. */
    public double skyDensity(double border, boolean negative) {
        return Math.log10(border / light(sky, negative));
    }

    private static double light(double level, boolean negative) {
        return SrgbCurve.light(Math.max(LEAST_LEVEL, Math.min(1, negative ? 1 - level : level)));
    }

    /** How wide trails are on a picture by those that are seen on it, in pixels; empty by none. */
    public static OptionalDouble widthPx(List<TrailRise> trails) {
        double[] widths = trails.stream().filter(TrailRise::seen).mapToDouble(trail ->
                trail.whole / trail.level).filter(Double::isFinite).toArray();
        return widths.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Median.of(widths));
    }

    /** Whether it can be told from the sky. */
    public boolean seen() {
        return level > Math.max(LEAST_LEVEL, STANDS_OUT * error);
    }
}
