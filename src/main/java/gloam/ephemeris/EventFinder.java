package gloam.ephemeris;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * Finds every moment at which a continuous function of time passes a level or turns.
 *
 * <p>The function is sampled once. Between two samples on one side of a level the turning point towards the level, if
 * there is one, is searched for, so that two crossings inside one step are not missed, however close. What must hold is
 * that the function turns at most once within two steps.
 */
public final class EventFinder {

    /** Ratio in which the search for a turning point cuts its span. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** A turning point is enclosed in this fraction of a step, a smooth one found a hundred times better. */
    private static final double TURN_TOLERANCE = 1e-3;
    /** A crossing is found to this. */
    private static final double CROSSING_TOLERANCE_S = 1e-5;
    private static final int MOST_ITERATIONS = 100;

    private final Interval span;
    private final DoubleUnaryOperator function;
    private final Node[] samples;

    private EventFinder(Interval span, DoubleUnaryOperator function, Node... samples) {
        this.span = span;
        this.function = function;
        this.samples = samples;
    }

    /** Looks at a function over a span, from its start to its end, at steps no longer than given. */
    public static EventFinder of(Interval span, Duration step, ToDoubleFunction<Instant> function) {
        return of(span, step.toNanos() * 1e-9, seconds -> function.applyAsDouble(after(span, seconds)));
    }

    /** The same for a function of seconds from the start of the span. */
    static EventFinder of(Interval span, double stepS, DoubleUnaryOperator function) {
        double lengthS = span.seconds();
        int steps = Math.max(2, (int) Math.ceil(lengthS / stepS));
        Node[] samples = new Node[steps + 1];
        for (int i = 0; i <= steps; i++) {
            samples[i] = node(function, lengthS * i / steps);
        }
        return new EventFinder(span, function, samples);
    }

    /** Every passage of a level, in order of time. */
    public Crossings crossings(double level) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i + 1 < samples.length; i++) {
            Node from = samples[i];
            Node to = samples[i + 1];
            boolean above = from.value >= level;
            if (above != to.value >= level) {
                found.add(crossing(from, to, level));
            } else if (mayTurn(i, above ? -1 : 1)) {
                Node turn = highest(from, to, above ? -1 : 1);
                if (above != turn.value >= level) {
                    found.add(crossing(from, turn, level));
                    found.add(crossing(turn, to, level));
                }
            }
        }
        return new Crossings(span, samples[0].value >= level, found);
    }

    /** Every highest and lowest point inside the span, in order of time; its ends are none. */
    public List<Extremum> extrema() {
        List<Extremum> found = new ArrayList<>();
        for (int i = 0; i + 1 < samples.length; i++) {
            for (int sense = -1; sense <= 1; sense += 2) {
                if (mayTurn(i, sense)) {
                    addTurn(found, samples[i], samples[i + 1], sense);
                }
            }
        }
        return List.copyOf(found);
    }

    private Crossing crossing(Node from, Node to, double level) {
        return new Crossing(after(span, root(from, to, level)), to.value >= level);
    }

    /** Whether the samples around leave room for a highest (sense 1) or lowest (sense -1) point between sample i and the next. */
    private boolean mayTurn(int i, int sense) {
        return (i == 0 || sense * (samples[i].value - samples[i - 1].value) >= 0)
                && (i + 2 == samples.length || sense * (samples[i + 1].value - samples[i + 2].value) >= 0);
    }

    private void addTurn(List<Extremum> found, Node from, Node to, int sense) {
        Node turn = highest(from, to, sense);
        if (sense * (turn.value - from.value) > 0 && sense * (turn.value - to.value) > 0) {
            found.add(new Extremum(after(span, turn.atS), turn.value, sense > 0));
        }
    }

    /** The highest (sense 1) or lowest (sense -1) point between two nodes, by golden section and a last parabola. */
    private Node highest(Node from, Node to, int sense) {
        double left = from.atS;
        double right = to.atS;
        double tolerance = (right - left) * TURN_TOLERANCE;
        Node lower = node(right - GOLDEN * (right - left));
        Node upper = node(left + GOLDEN * (right - left));
        Node beyond = from;
        while (right - left > tolerance) {
            if (sense * (lower.value - upper.value) > 0) {
                right = upper.atS;
                beyond = upper;
                upper = lower;
                lower = node(right - GOLDEN * (right - left));
            } else {
                left = lower.atS;
                beyond = lower;
                lower = upper;
                upper = node(left + GOLDEN * (right - left));
            }
        }
        return node(vertexS(lower, upper, beyond, left, right));
    }

    /** Where the parabola through three nodes turns, held between two times. */
    private static double vertexS(Node one, Node two, Node three, double leastS, double mostS) {
        double first = (two.atS - one.atS) * (two.value - three.value);
        double second = (two.atS - three.atS) * (two.value - one.value);
        double vertexS = two.atS
                - 0.5 * ((two.atS - one.atS) * first - (two.atS - three.atS) * second) / (first - second);
        return vertexS >= leastS && vertexS <= mostS ? vertexS : (leastS + mostS) / 2;
    }

    /**
     * Where the function passes the level between two nodes on either side of it: Ridders 1979, IEEE CAS 26,
     * 979.
     */
    private double root(Node from, Node to, double level) {
        Node left = from;
        Node right = to;
        double lastS = Double.NaN;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            Node middle = node((left.atS + right.atS) / 2);
            double leftOff = left.value - level;
            double rightOff = right.value - level;
            double middleOff = middle.value - level;
            double shiftS = (middle.atS - left.atS) * middleOff
                    / Math.sqrt(middleOff * middleOff - leftOff * rightOff);
            Node guess = node(middle.atS + (leftOff > rightOff ? shiftS : -shiftS));
            if (guess.value == level || Math.abs(guess.atS - lastS) < CROSSING_TOLERANCE_S) {
                return guess.atS;
            }
            lastS = guess.atS;
            Node first = middle.atS < guess.atS ? middle : guess;
            Node second = first == middle ? guess : middle;
            if (left.value >= level != first.value >= level) {
                right = first;
            } else if (first.value >= level != second.value >= level) {
                left = first;
                right = second;
            } else {
                left = second;
            }
        }
        return lastS;
    }

    private Node node(double atS) {
        return node(function, atS);
    }

    private static Node node(DoubleUnaryOperator function, double atS) {
        return new Node(atS, function.applyAsDouble(atS));
    }

    private static Instant after(Interval span, double seconds) {
        return span.start().plusNanos(Math.round(seconds * 1e9));
    }

    private record Node(double atS, double value) {
    }

    /**
     * A function passing a level.
     *
     * @param at     when
     * @param rising whether it comes from below
     */
    public record Crossing(Instant at, boolean rising) {
    }

    /**
     * A function turning.
     *
     * @param at      when
     * @param value   what the function is then
     * @param highest whether it is a highest point, else a lowest
     */
    public record Extremum(Instant at, double value, boolean highest) {
    }
}
