package gloam.units;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A span of time, its start in it and its end not.
 *
 * @param start        the first instant of the span
 * @param endExclusive the first instant after the span, later than {@code start}
 */
public record Interval(Instant start, Instant endExclusive) {

    /** Refuses an empty or reversed span. */
    public Interval {
        if (!start.isBefore(endExclusive)) {
            throw new IllegalArgumentException("span is empty or reversed: " + start + " to " + endExclusive);
        }
    }

    /** The span that opens at an instant and lasts for a positive duration. */
    public static Interval lasting(Instant start, Duration duration) {
        return new Interval(start, start.plus(duration));
    }

    /** How long the span lasts, always positive. */
    public Duration lasts() {
        return Duration.between(start, endExclusive);
    }

    /** How long the span lasts, in seconds. */
    public double seconds() {
        Duration lasts = lasts();
        return lasts.getSeconds() + lasts.getNano() * 1e-9;
    }

    /** The instant half-way through. */
    public Instant middle() {
        return start.plusNanos(lasts().toNanos() / 2);
    }

    /** Whether an instant lies in the span. */
    public boolean contains(Instant at) {
        return !at.isBefore(start) && at.isBefore(endExclusive);
    }

    /** Whether the whole of another span lies in this one. */
    public boolean contains(Interval other) {
        return !other.start.isBefore(start) && !other.endExclusive.isAfter(endExclusive);
    }

    /** What this span and another have in common, empty when they only touch. */
    public Optional<Interval> intersect(Interval other) {
        Instant from = start.isAfter(other.start) ? start : other.start;
        Instant to = endExclusive.isBefore(other.endExclusive) ? endExclusive : other.endExclusive;
        return from.isBefore(to) ? Optional.of(new Interval(from, to)) : Optional.empty();
    }

    /** The instants that lie in both of two lists, each sorted and without overlaps; so is the result. */
    public static List<Interval> intersect(List<Interval> some, List<Interval> others) {
        List<Interval> common = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < some.size() && j < others.size()) {
            Optional<Interval> both = some.get(i).intersect(others.get(j));
            if (both.isPresent()) {
                common.add(both.get());
            }
            if (some.get(i).endExclusive.isBefore(others.get(j).endExclusive)) {
                i++;
            } else {
                j++;
            }
        }
        return List.copyOf(common);
    }

    /** What is left of this span outside a list of spans, sorted and without overlaps; so is the result. */
    public List<Interval> without(List<Interval> holes) {
        List<Interval> left = new ArrayList<>();
        Instant from = start;
        for (Interval hole : holes) {
            Instant to = hole.start.isBefore(endExclusive) ? hole.start : endExclusive;
            if (from.isBefore(to)) {
                left.add(new Interval(from, to));
            }
            if (hole.endExclusive.isAfter(from)) {
                from = hole.endExclusive;
            }
        }
        if (from.isBefore(endExclusive)) {
            left.add(new Interval(from, endExclusive));
        }
        return List.copyOf(left);
    }

    /** The summed length of spans that do not overlap, zero for none. */
    public static Duration total(List<Interval> spans) {
        Duration total = Duration.ZERO;
        for (Interval span : spans) {
            total = total.plus(span.lasts());
        }
        return total;
    }
}
