package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.Samples;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SmoothCurveTest {

    record Points(double[] xs, double[] ys) {
    }

    static Stream<Named<Points>> points() {
        return Samples.of(100, random -> {
            int count = random.nextInt(2, 12);
            return new Points(growing(random, count), random.doubles(count, -3, 3).toArray());
        });
    }

    @ParameterizedTest
    @MethodSource("points")
    void passesThroughItsPointsAndStaysBetweenThem(Points points) {
        SmoothCurve curve = new SmoothCurve(points.xs, points.ys);
        for (int i = 0; i + 1 < points.xs.length; i++) {
            assertEquals(points.ys[i], curve.at(points.xs[i]), 1e-12); // rounding
            double least = Math.min(points.ys[i], points.ys[i + 1]) - 1e-12;
            double most = Math.max(points.ys[i], points.ys[i + 1]) + 1e-12;
            for (double share = 0; share < 1; share += 0.02) {
                double value = curve.at(points.xs[i] + share * (points.xs[i + 1] - points.xs[i]));
                assertTrue(value >= least && value <= most, value + " between " + least + " and " + most);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("points")
    void hasNeitherStepsNorCorners(Points points) {
        SmoothCurve curve = new SmoothCurve(points.xs, points.ys);
        for (double x : points.xs) {
            double h = 1e-6;
            double before = (curve.at(x) - curve.at(x - h)) / h;
            double after = (curve.at(x + h) - curve.at(x)) / h;
            // second differences of a cubic through points 0.1 apart and 6 high are below 1e4
            assertEquals(before, after, 1e4 * h);
        }
    }

    @Test
    void straightLinesStayStraight() {
        SmoothCurve line = new SmoothCurve(new double[] {0, 1, 3, 4}, new double[] {1, 3, 7, 9});
        for (double x = -2; x < 6; x += 0.25) {
            assertEquals(1 + 2 * x, line.at(x), 1e-12); // rounding
        }
        assertEquals(2, new SmoothCurve(new double[] {0, 1}, new double[] {1, 3}).at(0.5), 1e-12);
    }

    @Test
    void fillsInASmoothFunction() {
        double[] xs = IntStream.rangeClosed(0, 20).mapToDouble(i -> i / 10.0).toArray();
        SmoothCurve curve = new SmoothCurve(xs, IntStream.range(0,
                21).mapToDouble(i -> Math.exp(xs[i])).toArray());
        for (double x = 0; x < 2; x += 0.01) {
            assertEquals(Math.exp(x), curve.at(x), 0.001 * Math.exp(x)); // third order in steps of 0.1
        }
    }

    private static double[] growing(RandomGenerator random, int count) {
        double[] xs = new double[count];
        for (int i = 1; i < count; i++) {
            xs[i] = xs[i - 1] + random.nextDouble(0.1, 2);
        }
        return xs;
    }
}
