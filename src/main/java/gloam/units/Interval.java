package gloam.units;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A span of time, its start in it and its end not.
 *
 * @param start        the first instant of the span
 * @param endExclusive the first instant after the span, later than {@code start}
 */
public record Interval(Instant start, Instant endExclusive) {

    private static final Comparator<Interval> BY_START = Comparator.comparing(Interval::start);

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

    /** From the start of the first to the end of the last of some spans in order of time, at least one. */
    public static Interval span(List<Interval> spans) {
        return new Interval(spans.get(0).start, spans.get(spans.size() - 1).endExclusive);
    }

    /** The longest of some spans, at least one; of equals the first. */
    public static Interval longest(List<Interval> spans) {
        return spans.stream().max(Comparator.comparing(Interval::lasts)).orElseThrow();
    }

    /** The same spans in order of their starts. */
    public static List<Interval> sorted(List<Interval> spans) {
        List<Interval> sorted = new ArrayList<>(spans);
        sorted.sort(BY_START);
        return sorted;
    }

    /** The first span of a list that starts before the one ahead of it has ended; empty where none does. */
    public static Optional<Interval> overlapping(List<Interval> spans) {
        return IntStream.range(1, spans.size())
                .filter(i -> spans.get(i).start.isBefore(spans.get(i - 1).endExclusive)).mapToObj(spans::get)
                .findFirst();
    }

    /** What lies in any of some spans, in order of time: those that overlap or touch become one. */
    public static List<Interval> union(List<Interval> spans) {
        List<Interval> union = new ArrayList<>();
        for (Interval next : sorted(spans)) {
            int last = union.size() - 1;
            if (last < 0 || union.get(last).endExclusive.isBefore(next.start)) {
                union.add(next);
            } else if (union.get(last).endExclusive.isBefore(next.endExclusive)) {
                union.set(last, new Interval(union.get(last).start, next.endExclusive));
            }
        }
        return List.copyOf(union);
    }

    /** The summed length of spans that do not overlap, in seconds. */
    public static double seconds(List<Interval> spans) {
        return spans.stream().mapToDouble(Interval::seconds).sum();
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
