package gloam.units;

import java.util.stream.IntStream;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * A smooth curve through points that never overshoots them: between two points it lies between their values.
 *
 * <p>Piecewise cubic (Hipparchus's own splines overshoot) with the slopes of Fritsch and Butland 1984, SIAM
 * J. Sci. Stat. Comput. 5, 300; straight beyond its ends.
 */
public final class SmoothCurve {

    private final double[] xs;
    private final double[] ys;
    private final double[] slopes;
    private final PolynomialSplineFunction cubics;

    /**
     * The curve through points.
     *
     * @param xs growing, at least two
     * @param ys as many
     */
    public SmoothCurve(double[] xs, double[] ys) {
        this.xs = xs.clone();
        this.ys = ys.clone();
        this.slopes = new double[xs.length];
        int last = xs.length - 1;
        slopes[0] = endSlope(0, Math.min(1, last - 1));
        slopes[last] = endSlope(last - 1, Math.max(0, last - 2));
        for (int i = 1; i < last; i++) {
            slopes[i] = slopeBetween(xs[i] - xs[i - 1], secant(i - 1), xs[i + 1] - xs[i], secant(i));
        }
        this.cubics = new PolynomialSplineFunction(this.xs,
                IntStream.range(0, last).mapToObj(this::cubic).toArray(PolynomialFunction[]::new));
    }

    /** The curve's value, at any x. */
    public double at(double x) {
        int last = xs.length - 1;
        if (x <= xs[0]) {
            return ys[0] + slopes[0] * (x - xs[0]);
        }
        if (x >= xs[last]) {
            return ys[last] + slopes[last] * (x - xs[last]);
        }
        return cubics.value(x);
    }

    /** The cubic of a stretch, in the distance from the stretch's start. */
    private PolynomialFunction cubic(int left) {
        double width = xs[left + 1] - xs[left];
        double secant = secant(left);
        return new PolynomialFunction(ys[left], slopes[left],
                (3 * secant - 2 * slopes[left] - slopes[left + 1]) / width,
                (slopes[left] + slopes[left + 1] - 2 * secant) / (width * width));
    }

    private double secant(int left) {
        return (ys[left + 1] - ys[left]) / (xs[left + 1] - xs[left]);
    }

    /** Slope at an end: of the parabola through the stretch there and the next, kept from overshooting. */
    private double endSlope(int stretch, int next) {
        double width = xs[stretch + 1] - xs[stretch];
        double share = width / (width + xs[next + 1] - xs[next]);
        double secant = secant(stretch);
        double slope = secant + share * (secant - secant(next));
        double most = 3 * Math.abs(secant);
        return slope * secant <= 0 ? 0 : Math.max(-most, Math.min(most, slope));
    }

    private static double slopeBetween(double before, double secantBefore, double after, double secantAfter) {
        if (secantBefore * secantAfter <= 0) {
            return 0;
        }
        double weightBefore = 2 * after + before;
        double weightAfter = after + 2 * before;
        return (weightBefore + weightAfter) / (weightBefore / secantBefore + weightAfter / secantAfter);
    }
}
