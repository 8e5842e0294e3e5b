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
 * <p>The function is sampled once, then every turning point between samples is searched for, so that from
 * node to node it only rises or only falls: two crossings inside one step are not missed, however close. What
 * must hold is that the function turns at most once within two steps.
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
    private final List<Node> nodes;

    private EventFinder(Interval span, DoubleUnaryOperator function, List<Node> nodes) {
        this.span = span;
        this.function = function;
        this.nodes = nodes;
    }

    /** Looks at a function over a span, from its start to its end, at steps no longer than given. */
    public static EventFinder of(Interval span, Duration step, ToDoubleFunction<Instant> function) {
        return of(span, step.toNanos() * 1e-9, seconds -> function.applyAsDouble(after(span, seconds)));
    }

    /** The same for a function of seconds from the start of the span. */
    static EventFinder of(Interval span, double stepS, DoubleUnaryOperator function) {
        int steps = Math.max(2, (int) Math.ceil(span.seconds() / stepS));
        Node[] samples = new Node[steps + 1];
        for (int i = 0; i <= steps; i++) {
            samples[i] = node(function, span.seconds() * i / steps);
        }
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            nodes.add(samples[i]);
            addTurn(function, samples, i, nodes);
        }
        nodes.add(samples[steps]);
        return new EventFinder(span, function, List.copyOf(nodes));
    }

    /** Every passage of a level, in order of time. */
    public Crossings crossings(double level) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 1; i < nodes.size(); i++) {
            boolean above = nodes.get(i).value >= level;
            if (above != nodes.get(i - 1).value >= level) {
                found.add(new Crossing(after(span, root(nodes.get(i - 1), nodes.get(i), level)), above));
            }
        }
        return new Crossings(span, nodes.get(0).value >= level, found);
    }

    /** Every highest and lowest point inside the span, in order of time; its ends are none. */
    public List<Extremum> extrema() {
        List<Extremum> found = new ArrayList<>();
        for (int i = 1; i < nodes.size() - 1; i++) {
            Node node = nodes.get(i);
            if (node.turn) {
                boolean highest = node.value >= nodes.get(i - 1).value;
                found.add(new Extremum(after(span, node.atS), node.value, highest));
            }
        }
        return List.copyOf(found);
    }

    /** Adds the turning point between sample i and the next, if the samples around do not rule one out. */
    private static void addTurn(DoubleUnaryOperator function, Node[] samples, int i, List<Node> nodes) {
        for (int sense = -1; sense <= 1; sense += 2) {
            boolean fromBelow = i == 0 || sense * (samples[i].value - samples[i - 1].value) >= 0;
            boolean toBelow = i + 2 == samples.length
                    || sense * (samples[i + 1].value - samples[i + 2].value) >= 0;
            if (fromBelow && toBelow) {
                Node turn = highest(function, samples[i], samples[i + 1], sense);
                if (turn.turn) {
                    nodes.add(turn);
                    return;
                }
            }
        }
    }

    /**
     * The highest (sense 1) or lowest (sense -1) point strictly between two nodes, by golden section and a
     * last parabola; no turn when it is one of them.
     */
    private static Node highest(DoubleUnaryOperator function, Node from, Node to, int sense) {
        double left = from.atS;
        double right = to.atS;
        double tolerance = (right - left) * TURN_TOLERANCE;
        Node lower = node(function, right - GOLDEN * (right - left));
        Node upper = node(function, left + GOLDEN * (right - left));
        Node beyond = from;
        while (right - left > tolerance) {
            if (sense * (lower.value - upper.value) > 0) {
                right = upper.atS;
                beyond = upper;
                upper = lower;
                lower = node(function, right - GOLDEN * (right - left));
            } else {
                left = lower.atS;
                beyond = lower;
                lower = upper;
                upper = node(function, left + GOLDEN * (right - left));
            }
        }
        Node best = node(function, vertexS(lower, upper, beyond, left, right));
        boolean inside = sense * (best.value - from.value) > 0 && sense * (best.value - to.value) > 0;
        return new Node(best.atS, best.value, inside);
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
        return new Node(atS, function.applyAsDouble(atS), false);
    }

    private static Instant after(Interval span, double seconds) {
        return span.start().plusNanos(Math.round(seconds * 1e9));
    }

    private record Node(double atS, double value, boolean turn) {
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
