package gloam.planner;

import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Spans put together from steps in order of time. */
final class Spans {

    private Spans() {
    }

    /** Adds a span that starts no earlier than those before end; where it goes on from the last one, the two become one. */
    static void add(List<Interval> spans, Interval next) {
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).endExclusive().equals(next.start())) {
            spans.set(last, new Interval(spans.get(last).start(), next.endExclusive()));
        } else {
            spans.add(next);
        }
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
