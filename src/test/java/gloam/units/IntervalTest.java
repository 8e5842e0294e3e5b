package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class IntervalTest {

    private static final Instant NOON = Instant.parse("2027-02-06T12:00:00Z");

    private static Interval hours(double from, double to) {
        return new Interval(at(from), at(to));
    }

    private static Instant at(double hours) {
        return NOON.plusMillis(Math.round(hours * 3_600_000));
    }

    @Test
    void itsStartIsInItAndItsEndIsNot() {
        Interval span = hours(1, 2);
        assertTrue(span.contains(at(1)));
        assertTrue(span.contains(at(2).minusNanos(1)));
        assertFalse(span.contains(at(2)));
        assertFalse(span.contains(at(1).minusNanos(1)));
    }

    @Test
    void refusesNothingAndTheReverse() {
        assertThrows(IllegalArgumentException.class, () -> hours(1, 1));
        assertThrows(IllegalArgumentException.class, () -> hours(2, 1));
        assertThrows(IllegalArgumentException.class, () -> Interval.lasting(NOON, Duration.ZERO));
    }

    @Test
    void knowsLengthAndMiddle() {
        Interval span = Interval.lasting(NOON, Duration.ofMillis(1500));
        assertEquals(Duration.ofMillis(1500), span.lasts());
        assertEquals(1.5, span.seconds());
        assertEquals(NOON.plusMillis(750), span.middle());
    }

    @Test
    void touchingSpansHaveNothingInCommon() {
        assertEquals(Optional.empty(), hours(0, 1).intersect(hours(1, 2)));
        assertEquals(Optional.of(hours(1, 2)), hours(0, 2).intersect(hours(1, 3)));
        assertEquals(List.of(), Interval.intersect(List.of(hours(0, 1)), List.of(hours(1, 2))));
    }

    @Test
    void cutsListsWithEachOther() {
        List<Interval> some = List.of(hours(0, 3), hours(4, 6), hours(7, 8));
        List<Interval> others = List.of(hours(1, 2), hours(2.5, 5), hours(5.5, 9));
        assertEquals(List.of(hours(1, 2), hours(2.5, 3), hours(4, 5), hours(5.5, 6), hours(7, 8)),
                Interval.intersect(some, others));
    }

    @Test
    void leavesOutHoles() {
        Interval span = hours(0, 6);
        assertEquals(List.of(span), span.without(List.of()));
        assertEquals(List.of(), span.without(List.of(hours(-1, 7))));
        assertEquals(List.of(hours(1, 2), hours(3, 5)),
                span.without(List.of(hours(-1, 1), hours(2, 3), hours(5, 9))));
        assertEquals(List.of(span), span.without(List.of(hours(-3, -1), hours(6, 7))));
    }

    @Test
    void addsUp() {
        assertEquals(Duration.ZERO, Interval.total(List.of()));
        assertEquals(Duration.ofHours(3), Interval.total(List.of(hours(0, 1), hours(2, 4))));
    }

    @Test
    void spansFromTheFirstToTheLast() {
        assertEquals(hours(1, 9), Interval.span(List.of(hours(1, 2), hours(4, 5), hours(8, 9))));
        assertEquals(hours(1, 2), Interval.span(List.of(hours(1, 2))));
    }

    @Test
    void takesTheFirstOfTheLongest() {
        assertEquals(hours(4, 6), Interval.longest(List.of(hours(1, 2), hours(4, 6), hours(8, 10))));
    }

    @Test
    void joinsWhatOverlapsOrTouches() {
        assertEquals(List.of(hours(1, 4), hours(5, 9)), Interval.union(
                List.of(hours(5, 9), hours(1, 2), hours(2, 3), hours(2.5, 4), hours(6, 7))));
        assertEquals(List.of(), Interval.union(List.of()));
    }

    @Test
    void findsTheFirstThatStartsTooEarly() {
        assertEquals(Optional.empty(), Interval.overlapping(List.of(hours(1, 2), hours(2, 3), hours(4, 5))));
        assertEquals(Optional.of(hours(2, 3)),
                Interval.overlapping(List.of(hours(1, 2.5), hours(2, 3), hours(2.9, 5))));
    }

    @Test
    void sumsSeconds() {
        assertEquals(1.5 * 3600, Interval.seconds(List.of(hours(1, 2), hours(4, 4.5))));
        assertEquals(0, Interval.seconds(List.of()));
    }
}
