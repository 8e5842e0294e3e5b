package gloam.units;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How a function of time passes a level during a span.
 *
 * @param span       the span
 * @param startAbove whether it begins on the level or above it
 * @param all        the crossings in order of time, rising and falling by turns
 */
public record Crossings(Interval span, boolean startAbove, List<Crossing> all) {

    /** Copies the list. */
    public Crossings {
        all = List.copyOf(all);
    }

    /** When the function is above the level; none or the whole span where it never passes. */
    public List<Interval> above() {
        return spans(true);
    }

    /** When the function is below the level; none or the whole span where it never passes. */
    public List<Interval> below() {
        return spans(false);
    }

    private List<Interval> spans(boolean wanted) {
        List<Interval> spans = new ArrayList<>();
        Instant from = span.start();
        boolean above = startAbove;
        for (Crossing crossing : all) {
            add(spans, above == wanted, from, crossing.at());
            from = crossing.at();
            above = crossing.rising();
        }
        add(spans, above == wanted, from, span.endExclusive());
        return List.copyOf(spans);
    }

    private static void add(List<Interval> spans, boolean wanted, Instant from, Instant to) {
        if (wanted && from.isBefore(to)) {
            spans.add(new Interval(from, to));
        }
    }

    /**
     * A function passing a level.
     *
     * @param at     when
     * @param rising whether it comes from below
     */
    public record Crossing(Instant at, boolean rising) {
    }
}
