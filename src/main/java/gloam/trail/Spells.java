package gloam.trail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * The spells of time in which a steady function is not negative.
 *
 * <p>Sampled at even steps; between them each approach to zero is followed to its extremum, so that short
 * spells and short breaks are found, and each change of sign is halved down to a tenth of a millisecond,
 * ending on the side that is not negative.
 */
final class Spells {

    private static final int LEAST_STEPS = 8;
    private static final double WITHIN_S = 1e-4;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final DoubleUnaryOperator function;
    private final double fromS;
    private final double toS;
    private final double stepS;

    private Spells(DoubleUnaryOperator function, double fromS, double toS, double stepS) {
        this.function = function;
        this.fromS = fromS;
        this.toS = toS;
        this.stepS = stepS;
    }

    /**
     * The spells between two moments, in order; steps at most as long as given, shorter than half the
     * function's waves.
     */
    static List<Spell> of(DoubleUnaryOperator function, double fromS, double toS, double stepS) {
        return new Spells(function, fromS, toS, stepS).find();
    }

    private List<Spell> find() {
        List<Double> knots = knots();
        List<Double> bounds = new ArrayList<>(List.of(fromS));
        boolean held = holds(fromS);
        int first = held ? 1 : 2;
        for (int i = 1; i < knots.size(); i++) {
            if (held != holds(knots.get(i))) {
                bounds.add(change(held, knots.get(i - 1), knots.get(i)));
                held = !held;
            }
        }
        bounds.add(toS);
        List<Spell> spells = new ArrayList<>();
        for (int i = first; i < bounds.size(); i += 2) {
            if (bounds.get(i) > bounds.get(i - 1)) {
                spells.add(new Spell(bounds.get(i - 1), bounds.get(i)));
            }
        }
        return spells;
    }

    /** Moments close enough together that between two neighbours the sign changes at most once. */
    private List<Double> knots() {
        int steps = Math.max(LEAST_STEPS, (int) Math.ceil((toS - fromS) / stepS));
        double[] atS = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> fromS + (toS - fromS) * i / steps).toArray();
        double[] values = Arrays.stream(atS).map(function).toArray();
        List<Double> knots = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            int before = Math.max(0, i - 1);
            int after = Math.min(steps, i + 1);
            knots.add(atS[i]);
            if (values[i] < 0 && values[i] >= Math.max(values[before], values[after])) {
                knots.add(highest(atS[before], atS[after], function));
            } else if (values[i] >= 0 && values[i] <= Math.min(values[before], values[after])) {
                knots.add(highest(atS[before], atS[after], s -> -function.applyAsDouble(s)));
            }
        }
        return knots.stream().sorted().toList();
    }

    /** Where a function with a single peak between two moments is highest, by golden section. */
    static double highest(double fromS, double toS, DoubleUnaryOperator height) {
        double a = fromS;
        double b = toS;
        double left = b - GOLDEN * (b - a);
        double right = a + GOLDEN * (b - a);
        double leftHeight = height.applyAsDouble(left);
        double rightHeight = height.applyAsDouble(right);
        while (b - a > WITHIN_S) {
            if (leftHeight < rightHeight) {
                a = left;
                left = right;
                leftHeight = rightHeight;
                right = a + GOLDEN * (b - a);
                rightHeight = height.applyAsDouble(right);
            } else {
                b = right;
                right = left;
                rightHeight = leftHeight;
                left = b - GOLDEN * (b - a);
                leftHeight = height.applyAsDouble(left);
            }
        }
        return (a + b) / 2;
    }

    private double change(boolean held, double from, double to) {
        double a = from;
        double b = to;
        while (b - a > WITHIN_S) {
            double middle = (a + b) / 2;
            if (holds(middle) == held) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return held ? a : b;
    }

    private boolean holds(double atS) {
        return function.applyAsDouble(atS) >= 0;
    }

    /**
     * One spell.
     *
     * @param fromS its start
     * @param toS   its end, later than the start
     */
    record Spell(double fromS, double toS) {
    }
}
