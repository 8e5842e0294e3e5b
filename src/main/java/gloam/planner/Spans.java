package gloam.planner;

import gloam.units.Interval;
import java.time.Instant;
import java.util.Optional;

/** Spans found in steps of time. */
final class Spans {

    private Spans() {
    }

    /** The part of a step in which something is not negative that goes straight from one value to another. */
    static Optional<Interval> notNegative(Interval step, double from, double to) {
        if (from < 0 && to < 0) {
            return Optional.empty();
        }
        Instant crossing = from < 0 != to < 0
                ? step.start().plusMillis(Math.round(1000 * step.seconds() * from / (from - to))) : step.start();
        Instant start = from < 0 ? crossing : step.start();
        Instant end = to < 0 ? crossing : step.endExclusive();
        return start.isBefore(end) ? Optional.of(new Interval(start, end)) : Optional.empty();
    }
}
