package gloam.frame;

import gloam.units.BadInput;
import gloam.units.Median;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;

/**
 * A grey step wedge that lies beside a sheet on its scan: equal steps of known density in a row, which show
 * what curve the scan is coded by.
 *
 * <p><b>Model.</b> The median of the middle of each step; density is linear between two steps over the
 * logarithm of the light that the scan shows, and goes on evenly before the first and after the last step
 * that the scan tells from the one before. <b>Valid.</b> Scans whose curve is the same all over.
 * <b>Error.</b> That of the densities. <b>Departures.</b> Stray light of the scanner.
 *
 * @param densities of its steps, the lightest first, at least three
 */
public record StepWedge(List<Double> densities) {

    /** Allowed densities. */
    public static final Range DENSITY = new Range("density of a step", 0, 5, "");

    private static final int LEAST_STEPS = 3;
    private static final int MOST_STEPS = 64;
    /** So much of a step counts, in its middle. */
    private static final double MIDDLE = 0.5;
    private static final int LEAST_PX = 4;
    /** Steps whose logarithms of light differ by less are not told apart. */
    private static final double APART = 0.01;
    private static final double LEAST_LIGHT = 1e-5;

    /** Refuses densities that are too few or do not grow with {@link BadInput}. */
    public StepWedge {
        densities = List.copyOf(densities);
        densities.forEach(DENSITY::check);
        new Range("number of the wedge's steps", LEAST_STEPS, MOST_STEPS, "").check(densities.size());
        if (!densities.stream().sorted().distinct().toList().equals(densities)) {
            throw new BadInput("the wedge's densities do not grow from step to step; give the lightest "
                    + "first, such as 0.05,0.20,0.35");
        }
    }

    /** The wedge whose densities a text such as {@code 0.05,0.20,0.35} means. */
    public static StepWedge of(String text) {
        try {
            return new StepWedge(Arrays.stream(text.split(",", -1)).map(String::strip).map(Double::valueOf)
                    .toList());
        } catch (NumberFormatException noNumber) {
            throw new BadInput("\"" + text + "\" is no list of densities; give those of all steps, the "
                    + "lightest first, such as 0.05,0.20,0.35");
        }
    }

    /**
     * A scan as its sheet reflects or lets through light, by what the scan shows of the wedge.
     *
     * @param corners of the wedge in pixels, clockwise from the upper left, upright
     */
    public LightImage light(LightImage scan, double[][] corners) {
        UnivariateFunction density = density(steps(scan, corners));
        LightImage light = new LightImage(scan.width(), scan.height());
        for (int y = 0; y < scan.height(); y++) {
            for (int x = 0; x < scan.width(); x++) {
                light.add(x, y, (float) Math.pow(10, -density.value(-Math.log10(
                        Math.max(LEAST_LIGHT, scan.light(x, y))))));
            }
        }
        return light;
    }

    /** Density over minus the logarithm of the scan's light. */
    private UnivariateFunction density(List<Double> steps) {
        int told = 1;
        while (told < steps.size() && steps.get(told) - steps.get(told - 1) > APART) {
            told++;
        }
        if (told < LEAST_STEPS) {
            throw new BadInput("the wedge's steps do not grow darker one by one; check --wedge X,Y,W,H and "
                    + "the number of densities, " + densities.size());
        }
        double[] scanned = steps.stream().limit(told).mapToDouble(Double::doubleValue).toArray();
        double[] known = densities.stream().limit(told).mapToDouble(Double::doubleValue).toArray();
        UnivariateFunction between = new LinearInterpolator().interpolate(scanned, known);
        double first = scanned[0];
        double last = scanned[told - 1];
        double slope = (known[told - 1] - known[0]) / (last - first);
        return at -> at < first ? known[0] + slope * (at - first) : at > last
                ? known[known.length - 1] + slope * (at - last) : between.value(at);
    }

    /** Minus the logarithm of each step's light, the lightest first. */
    private List<Double> steps(LightImage scan, double[][] corners) {
        double left = corners[0][0];
        double top = corners[0][1];
        double wide = corners[1][0] - left;
        double high = corners[2][1] - top;
        int many = densities.size();
        List<Double> steps = new ArrayList<>();
        for (int step = 0; step < many; step++) {
            double from = step + (1 - MIDDLE) / 2;
            steps.add(wide >= high ? darkness(scan, left + wide * from / many, top + high * (1 - MIDDLE) / 2,
                    wide * MIDDLE / many, high * MIDDLE) : darkness(scan, left + wide * (1 - MIDDLE) / 2,
                    top + high * from / many, wide * MIDDLE, high * MIDDLE / many));
        }
        if (steps.get(0) > steps.get(many - 1)) {
            Collections.reverse(steps);
        }
        return steps;
    }

    private static double darkness(LightImage scan, double left, double top, double wide, double high) {
        if (wide < LEAST_PX || high < LEAST_PX) {
            throw new BadInput("a step of the wedge is " + (int) (Math.min(wide, high) / MIDDLE)
                    + " pixels wide, less than " + (int) (LEAST_PX / MIDDLE)
                    + "; scan it finer, or check --wedge");
        }
        List<Double> lights = new ArrayList<>();
        for (int y = (int) top; y < top + high; y++) {
            for (int x = (int) left; x < left + wide; x++) {
                lights.add((double) scan.light(x, y));
            }
        }
        return -Math.log10(Math.max(LEAST_LIGHT, Median.of(lights.stream().mapToDouble(Double::doubleValue)
                .toArray())));
    }
}
