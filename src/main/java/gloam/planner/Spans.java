package gloam.planner;

import gloam.units.Interval;
import java.util.List;

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
}
