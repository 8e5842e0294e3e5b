package gloam.ephemeris;

import gloam.units.Interval;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function of time as the polynomial through its values at the Chebyshev points of a span.
 *
 * <p>A function that the Earth's rotation makes rise and fall once a day is met over a day to 1e-8 of its
 * range by 16 points, which spares hundreds of positions.
 */
final class ChebyshevCurve implements DoubleUnaryOperator {

    /** A day with one hour put in: up to here the points of a day do. */
    private static final double LONG_DAY_S = 25 * 3600;
    /** Cosines of a whole turn in steps of half the angle between points, by the number of points. */
    private static final Map<Integer, double[]> COSINES = new ConcurrentHashMap<>();

    private final double spanS;
    private final double[] coefficients;

    /** The curve over a span through the values at its {@link #instants}. */
    ChebyshevCurve(Interval span, double[] values) {
        this.spanS = span.seconds();
        int count = values.length;
        this.coefficients = new double[count];
        double[] cosines = cosines(count);
        for (int k = 0; k < count; k++) {
            coefficients[k] = (k == 0 ? 1 : 2) * sum(values, cosines, k) / count;
        }
    }

    /**
     * The values weighed by the polynomial of degree k, whose argument's angle grows by twice k halves from
     * point to point.
     */
    private static double sum(double[] values, double[] cosines, int k) {
        double sum = 0;
        int half = k;
        for (double value : values) {
            sum += value * cosines[half];
            half += half + 2 * k < cosines.length ? 2 * k : 2 * k - cosines.length;
        }
        return sum;
    }

    /**
     * The instants at which a curve needs values, in the order in which it needs them; more of them for
     * longer spans.
     */
    static List<Instant> instants(Interval span, int pointsADay) {
        int count = (int) Math.ceil(pointsADay * Math.max(1, span.seconds() / LONG_DAY_S));
        double[] cosines = cosines(count);
        double spanNanos = span.seconds() * 1e9;
        List<Instant> instants = new ArrayList<>(count);
        for (int j = 0; j < count; j++) {
            instants.add(span.start().plusNanos(Math.round(spanNanos * (1 + cosines[2 * j + 1]) / 2)));
        }
        return instants;
    }

    private static double[] cosines(int count) {
        double[] known = COSINES.get(count);
        if (known != null) {
            return known;
        }
        double[] cosines = new double[4 * count];
        for (int half = 0; half < cosines.length; half++) {
            cosines[half] = Math.cos(Math.PI * half / (2 * count));
        }
        COSINES.put(count, cosines);
        return cosines;
    }

    /** The value at a time in seconds from the start of the span. */
    @Override
    public double applyAsDouble(double seconds) {
        double x = 2 * seconds / spanS - 1;
        double next = 0;
        double afterNext = 0;
        for (int k = coefficients.length - 1; k > 0; k--) {
            double here = 2 * x * next - afterNext + coefficients[k];
            afterNext = next;
            next = here;
        }
        return x * next - afterNext + coefficients[0];
    }
}
