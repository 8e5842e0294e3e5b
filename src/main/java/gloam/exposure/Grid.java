package gloam.exposure;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.function.ToDoubleFunction;

/**
 * Instants at even steps over a span, both ends included.
 *
 * @param start the first instant
 * @param stepS the step in s
 * @param steps how many, at least 1
 */
record Grid(Instant start, double stepS, int steps) {

    /** The grid over a span with the given step, or a bit shorter so that it ends where the span does. */
    static Grid over(Interval span, Duration step) {
        int steps = (int) Math.max(1, Math.ceil(span.seconds() * 1000 / step.toMillis()));
        return new Grid(span.start(), span.seconds() / steps, steps);
    }

    /** Values of a function at every instant. */
    double[] sample(ToDoubleFunction<Instant> function) {
        double[] values = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            values[i] = function.applyAsDouble(at(i));
        }
        return values;
    }

    /** The instant that many steps after the start. */
    Instant at(double step) {
        return start.plusNanos(Math.round(step * stepS * 1e9));
    }

    /** How many steps after the start an instant lies, cut to the grid. */
    double stepOf(Instant at) {
        Duration since = Duration.between(start, at);
        double seconds = since.getSeconds() + since.getNano() * 1e-9;
        return Math.max(0, Math.min(steps, seconds / stepS));
    }

    /** The panel of a step count: the greatest whole number not above it that still has a panel after it. */
    int panelOf(double step) {
        return (int) Math.min(steps - 1, Math.floor(step));
    }
}
