package gloam.film;

import gloam.units.BadInput;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Reciprocity failure through published points: straight between them in log time against log time.
 *
 * <p>Every common law is straight or nearly so in these coordinates. Beyond the last point the last stretch
 * goes on, before the first the first one until it meets the metered time; the exponent of both is kept
 * from 1 to 2.
 *
 * @param points at least two; metered and corrected times both grow, none is shorter corrected than metered
 */
public record ReciprocityTable(List<Point> points) implements Reciprocity {

    /** Allowed metered and corrected times. */
    public static final Range TIME = new Range("reciprocity time", 1e-6, 1e7, "s");

    /** Sorts the points by metered time; refuses a table that shortens or falls with {@link BadInput}. */
    public ReciprocityTable {
        points = points.stream().sorted(Comparator.comparingDouble(Point::meteredS)).toList();
        List<String> problems = problems(points);
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
    }

    @Override
    public double correctedS(double meteredS) {
        Point from = points.get(lastNotAfter(meteredS, Point::meteredS));
        double slope = slope(meteredS, Point::meteredS);
        return Math.max(meteredS, from.correctedS * Math.pow(meteredS / from.meteredS, slope));
    }

    @Override
    public double meteredS(double correctedS) {
        Point from = points.get(lastNotAfter(correctedS, Point::correctedS));
        double slope = slope(correctedS, Point::correctedS);
        return Math.min(correctedS, from.meteredS * Math.pow(correctedS / from.correctedS, 1 / slope));
    }

    @Override
    public double exponentAt(double meteredS) {
        return meteredS < points.get(0).meteredS && correctedS(meteredS) == meteredS
                ? 1 : slope(meteredS, Point::meteredS);
    }

    @Override
    public double coveredToS() {
        return points.get(points.size() - 1).meteredS;
    }

    private int lastNotAfter(double timeS, ToDoubleFunction<Point> column) {
        int index = 0;
        while (index < points.size() - 1 && timeS >= column.applyAsDouble(points.get(index + 1))) {
            index++;
        }
        return index;
    }

    private double slope(double timeS, ToDoubleFunction<Point> column) {
        int segment = Math.min(lastNotAfter(timeS, column), points.size() - 2);
        Point start = points.get(segment);
        Point end = points.get(segment + 1);
        double slope = Math.log(end.correctedS / start.correctedS) / Math.log(end.meteredS / start.meteredS);
        boolean inside = timeS >= column.applyAsDouble(points.get(0))
                && timeS < column.applyAsDouble(points.get(points.size() - 1));
        return inside ? slope : Math.max(EXPONENT.least(), Math.min(EXPONENT.most(), slope));
    }

    private static List<String> problems(List<Point> points) {
        List<String> problems = new ArrayList<>();
        if (points.size() < 2) {
            problems.add("a reciprocity table needs at least 2 points, found " + points.size());
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            if (point.correctedS < point.meteredS) {
                problems.add(point + " shortens the metered time; a corrected time is never below it");
            }
            if (i > 0 && !(point.meteredS > points.get(i - 1).meteredS
                    && point.correctedS > points.get(i - 1).correctedS)) {
                problems.add(point + " does not grow after " + points.get(i - 1));
            }
        }
        return problems;
    }

    /**
     * One line of a published table.
     *
     * @param meteredS   metered time in s
     * @param correctedS time to give in s
     */
    public record Point(double meteredS, double correctedS) {

        /** Refuses times outside their range with {@link BadInput}. */
        public Point {
            TIME.check(meteredS);
            TIME.check(correctedS);
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "reciprocity point %s s -> %s s", meteredS, correctedS);
        }
    }
}
