package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole minutes of a night: where they lie, and in which of them something holds. */
class NightClockTest {

    private static final Instant NOON = Instant.parse("2027-02-08T11:00:00Z");

    private static NightClock clock() {
        return NightClock.of(Interval.lasting(NOON, Duration.ofDays(1)));
    }

    private static BitSet minutes(int... some) {
        return IntStream.of(some).collect(BitSet::new, BitSet::set, BitSet::or);
    }

    private static BitSet range(int first, int last) {
        BitSet range = new BitSet();
        range.set(first, last + 1);
        return range;
    }

    @Test
    void aBegunMinuteIsLeftOut() {
        NightClock clock = NightClock.of(new Interval(NOON.plusMillis(1), NOON.plusSeconds(600)));
        assertEquals(NOON.plusSeconds(60), clock.start());
        assertEquals(9, clock.minutes());
        assertEquals(10, NightClock.of(new Interval(NOON, NOON.plusSeconds(659))).minutes());
    }

    @Test
    void minutesCountFromTheStart() {
        assertEquals(1440, clock().minutes());
        assertEquals(NOON.plusSeconds(90 * 60), clock().at(90));
        assertEquals(90, clock().minuteOf(NOON.plusSeconds(90 * 60)));
        assertEquals(-2, clock().minuteOf(NOON.minusSeconds(120)));
        assertEquals(new Interval(NOON.plusSeconds(60), NOON.plusSeconds(180)), clock().span(1, 3));
    }

    @Test
    void aMinuteStrikesOnTheMinute() {
        assertTrue(clock().strikes(NOON));
        assertTrue(clock().strikes(NOON.plus(Duration.ofDays(1))));
        assertFalse(clock().strikes(NOON.minusSeconds(60)));
        assertFalse(clock().strikes(NOON.plus(Duration.ofDays(1)).plusSeconds(60)));
        assertFalse(clock().strikes(NOON.plusSeconds(59)));
        assertFalse(clock().strikes(NOON.plusNanos(1)));
    }

    /** A shutter is open from the first to the last minute of a run; a lone minute is one to the next. */
    @Test
    void runsOfMinutesAreSpans() {
        BitSet some = range(10, 12);
        some.set(20);
        assertEquals(List.of(clock().span(10, 12), clock().span(20, 21)), clock().spans(some));
        assertEquals(List.of(), clock().spans(new BitSet()));
    }

    @Test
    void minutesOfSpansLieInsideThem() {
        Interval inside = new Interval(NOON.plusSeconds(61), NOON.plusSeconds(299));
        assertEquals(range(2, 4), clock().during(List.of(inside)));
        assertEquals(range(1, 5), clock().during(List.of(new Interval(NOON.plusSeconds(60),
                NOON.plusSeconds(300)))));
        assertEquals(minutes(), clock().during(List.of(new Interval(NOON.plusSeconds(61),
                NOON.plusSeconds(119)))));
        assertEquals(range(0, 1), clock().during(List.of(new Interval(NOON.minusSeconds(600),
                NOON.plusSeconds(60)))));
        Instant end = NOON.plus(Duration.ofDays(1));
        assertEquals(range(1439, 1440), clock()
                .during(List.of(new Interval(end.minusSeconds(60), end.plusSeconds(600)))));
    }

    /** A margin that is straight between its looks is known to the minute. */
    @Test
    void aStraightMarginIsKnownToTheMinute() {
        NightClock clock = clock();
        BitSet all = range(0, clock.minutes());
        assertEquals(range(0, 700), clock.where(all, minute -> 700 - minute));
        assertEquals(range(701, 1440), clock.where(all, minute -> minute - 700.5));
        assertEquals(all, clock.where(all, minute -> 0));
        assertEquals(minutes(), clock.where(all, minute -> -1e-9));
        assertEquals(minutes(3, 900), clock.where(minutes(3, 900, 901), minute -> 900.5 - minute));
    }

    static Stream<Named<Integer>> waves() {
        return Samples.of(50, random -> random.nextInt(60, 400));
    }

    /** Looked at every five minutes, a slow wave holds where it does; few minutes are as in all of them. */
    @ParameterizedTest
    @MethodSource("waves")
    void aWaveHoldsWhereItDoes(int periodMin) {
        IntToDoubleFunction wave = minute -> Math.sin(2 * Math.PI * (minute + 7.3) / periodMin) + 0.1;
        BitSet all = range(0, 1440);
        BitSet fine = clock().where(all, wave);
        Random random = new Random(periodMin);
        BitSet few = random.ints(200, 0, 1441).collect(BitSet::new, BitSet::set, BitSet::or);
        BitSet ofAll = (BitSet) fine.clone();
        ofAll.and(few);
        assertEquals(ofAll, clock().where(few, wave));
        for (int minute = 0; minute < 1440; minute++) {
            // the wave bends between two looks by (π 5/60)²/2 at most
            if (Math.abs(wave.applyAsDouble(minute)) > 0.035) {
                assertEquals(wave.applyAsDouble(minute) >= 0, fine.get(minute), "minute " + minute);
            }
        }
    }

    /** Every minute looked at has its nodes, the last one's too. */
    @Test
    void thereAreNodesForEveryLook() {
        assertTrue(clock().nodes() * NightClock.NODE_MIN > 1440 + 5);
    }
}
