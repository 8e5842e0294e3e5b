package gloam.units;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * A function of time over a span: when it passes a level, when it is above one, where it turns.
 *
 * <p>The function is sampled once. Between two samples on one side of a level the turning point towards the
 * level, if there is one, is searched for, so that two crossings inside one step are not missed, however
 * close. What must hold is that the function turns at most once within two steps, and runs within one at most
 * at twice the pace of the fastest of it and its neighbours. Crossings are found by a bracketing Brent method
 * of order 5, turning points by Brent's method for minima.
 */
public final class FunctionOfTime {

    /** A crossing is found to this. */
    private static final double CROSSING_WITHIN_S = 1e-5;
    /** A turning point is found to this, as far as the function's own rounding lets it be seen. */
    private static final double TURN_WITHIN_S = 1e-3;
    private static final double ROUNDING = 1e-14;
    private static final double NANOS = 1e9;
    private static final int SOLVER_ORDER = 5;
    private static final int MOST_EVALUATIONS = 1000;
    private static final int LEAST_STEPS = 2;
    /** How much faster than from sample to sample it may run in between. */
    private static final double PACE = 2;

    private final Interval span;
    private final DoubleUnaryOperator function;
    private final Node[] samples;
    private final BracketingNthOrderBrentSolver solver =
            new BracketingNthOrderBrentSolver(ROUNDING, CROSSING_WITHIN_S, 0, SOLVER_ORDER);

    private FunctionOfTime(Interval span, DoubleUnaryOperator function, Node... samples) {
        this.span = span;
        this.function = function;
        this.samples = samples;
    }

    /** Looks at a function over a span, from its start to its end, at steps no longer than given. */
    public static FunctionOfTime of(Interval span, Duration step, ToDoubleFunction<Instant> function) {
        return ofSeconds(span, step.toNanos() * 1e-9,
                seconds -> function.applyAsDouble(after(span, seconds)));
    }

    /** The same for a function of seconds from the start of the span. */
    public static FunctionOfTime ofSeconds(Interval span, double stepS, DoubleUnaryOperator function) {
        double lengthS = span.seconds();
        int steps = Math.max(LEAST_STEPS, (int) Math.ceil(lengthS / stepS));
        Node[] samples = new Node[steps + 1];
        for (int i = 0; i <= steps; i++) {
            double atS = lengthS * i / steps;
            samples[i] = new Node(atS, function.applyAsDouble(atS));
        }
        return new FunctionOfTime(span, function, samples);
    }

    /** Every passage of a level, in order of time; at each the function is on the level or just above it. */
    public Crossings crossings(double level) {
        List<Crossings.Crossing> found = new ArrayList<>();
        for (int i = 0; i + 1 < samples.length; i++) {
            Node from = samples[i];
            Node to = samples[i + 1];
            boolean above = from.value >= level;
            if (above != to.value >= level) {
                found.add(crossing(from, to, level));
            } else if (near(i, level) && mayTurn(i, above ? -1 : 1)) {
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

    /** The instant at which the function is highest in the span, its ends included; the first of equals. */
    public Instant highest() {
        Node best = samples[0];
        for (int i = 0; i + 1 < samples.length; i++) {
            Node turn = mayTurn(i, 1) ? highest(samples[i], samples[i + 1], 1) : samples[i];
            for (Node node : List.of(turn, samples[i + 1])) {
                best = node.value > best.value ? node : best;
            }
        }
        return after(span, best.atS);
    }

    private Crossings.Crossing crossing(Node from, Node to, double level) {
        double rootS = solver.solve(MOST_EVALUATIONS, atS -> function.applyAsDouble(atS) - level, from.atS,
                to.atS, AllowedSolution.ABOVE_SIDE);
        boolean rising = to.value >= level;
        double nanos = rising ? Math.ceil(rootS * NANOS) : Math.floor(rootS * NANOS);
        return new Crossings.Crossing(span.start().plusNanos((long) nanos), rising);
    }

    /**
     * Whether the function, at twice its pace between the samples around, gets to a level between i and the
     * next.
     */
    private boolean near(int i, double level) {
        double mostStep = 0;
        for (int j = Math.max(0, i - 1); j < Math.min(samples.length - 1, i + 2); j++) {
            mostStep = Math.max(mostStep, Math.abs(samples[j + 1].value - samples[j].value));
        }
        return Math.min(Math.abs(samples[i].value - level), Math.abs(samples[i + 1].value - level))
                <= PACE * mostStep;
    }

    /**
     * Whether the samples around leave room for a highest (sense 1) or lowest (sense -1) point between sample
     * i and the next: the one of them that lies further that way is not outdone by the sample beyond it.
     */
    private boolean mayTurn(int i, int sense) {
        boolean growing = sense * (samples[i + 1].value - samples[i].value) >= 0;
        int further = growing ? i + 1 : i;
        int beyond = growing ? i + 2 : i - 1;
        return beyond < 0 || beyond >= samples.length
                || sense * (samples[further].value - samples[beyond].value) >= 0;
    }

    private void addTurn(List<Extremum> found, Node from, Node to, int sense) {
        Node turn = highest(from, to, sense);
        if (sense * (turn.value - from.value) > 0 && sense * (turn.value - to.value) > 0) {
            found.add(new Extremum(after(span, turn.atS), turn.value, sense > 0));
        }
    }

    /** The highest (sense 1) or lowest (sense -1) point between two nodes. */
    private Node highest(Node from, Node to, int sense) {
        UnivariatePointValuePair best = new BrentOptimizer(ROUNDING, TURN_WITHIN_S).optimize(
                new UnivariateObjectiveFunction(function::applyAsDouble),
                sense > 0 ? GoalType.MAXIMIZE : GoalType.MINIMIZE,
                new SearchInterval(from.atS, to.atS), new MaxEval(MOST_EVALUATIONS));
        return new Node(best.getPoint(), best.getValue());
    }

    private static Instant after(Interval span, double seconds) {
        return span.start().plusNanos(Math.round(seconds * NANOS));
    }

    private record Node(double atS, double value) {
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
