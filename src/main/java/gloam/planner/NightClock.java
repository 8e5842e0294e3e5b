package gloam.planner;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Whole minutes of a night, counted from its start, and nodes five minutes apart at which the sky is sampled.
 *
 * @param start   minute 0, a whole minute of the clock
 * @param minutes how many minutes the night has
 */
record NightClock(Instant start, int minutes) {

    /** Minutes from one node to the next. */
    static final int NODE_MIN = 5;

    private static final int SECONDS = 60;

    /** The clock of a span; a begun minute at its start is left out. */
    static NightClock of(Interval span) {
        Instant start = ceil(span.start());
        return new NightClock(start, (int) Duration.between(start, span.endExclusive()).toMinutes());
    }

    /** How many nodes there are at most, the one after the end of the night included. */
    int nodes() {
        return minutes / NODE_MIN + 3;
    }

    /** The instant of a minute. */
    Instant at(int minute) {
        return start.plusSeconds(minute * (long) SECONDS);
    }

    /** The span between two minutes, the second later. */
    Interval span(int openMin, int closeMin) {
        return new Interval(at(openMin), at(closeMin));
    }

    /**
     * The spans that minutes make, each as long as a shutter can be open in it; that of a lone minute is a
     * minute.
     */
    List<Interval> spans(BitSet during) {
        return MinuteRun.of(during).stream()
                .map(run -> span(run.first(), Math.max(run.first() + 1, run.last()))).toList();
    }

    /** The minutes in spans, both whole minutes at their ends lying inside. */
    BitSet during(List<Interval> spans) {
        BitSet during = new BitSet(minutes);
        for (Interval span : spans) {
            int first = Math.max(0, minuteOf(ceil(span.start())));
            int last = Math.min(minutes, minuteOf(span.endExclusive().truncatedTo(ChronoUnit.MINUTES)));
            if (first <= last) {
                during.set(first, last + 1);
            }
        }
        return during;
    }

    /** The minute of a whole-minute instant, negative before the night. */
    int minuteOf(Instant at) {
        return (int) ((at.getEpochSecond() - start.getEpochSecond()) / SECONDS);
    }

    /** Whether an instant is a whole minute of the night. */
    boolean strikes(Instant at) {
        long sinceS = at.getEpochSecond() - start.getEpochSecond();
        return at.getNano() == 0 && sinceS % SECONDS == 0 && sinceS >= 0
                && sinceS <= minutes * (long) SECONDS;
    }

    /**
     * The minutes out of some at which a margin is not negative.
     *
     * @param of     which minutes to look at
     * @param margin asked for at the nodes around those minutes, straight in between
     */
    BitSet where(BitSet of, IntToDoubleFunction margin) {
        BitSet where = new BitSet(minutes);
        int known = -1;
        double to = 0;
        for (int minute = of.nextSetBit(0); minute >= 0;) {
            int node = minute / NODE_MIN * NODE_MIN;
            int after = node + NODE_MIN;
            double from = node == known ? to : margin.applyAsDouble(node);
            if (of.previousSetBit(after - 1) == node) {
                where.set(node, from >= 0);
            } else {
                known = after;
                to = margin.applyAsDouble(after);
                markNotNegative(where, node, from, to);
            }
            minute = of.nextSetBit(after);
        }
        where.and(of);
        return where;
    }

    private static void markNotNegative(BitSet where, int node, double from, double to) {
        if (from >= 0 && to >= 0) {
            where.set(node, node + NODE_MIN);
        } else if (from >= 0 || to >= 0) {
            for (int minute = 0; minute < NODE_MIN; minute++) {
                where.set(node + minute, from + minute / (double) NODE_MIN * (to - from) >= 0);
            }
        }
    }

    private static Instant ceil(Instant at) {
        Instant whole = at.truncatedTo(ChronoUnit.MINUTES);
        return whole.equals(at) ? at : whole.plus(1, ChronoUnit.MINUTES);
    }
}
