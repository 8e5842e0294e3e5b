package gloam.planner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds how exactly the times of an exposure are to be kept. For one thread at a time. */
final class SlackSearch {

    /** Times that need not be kept to the minute are rounded to it. */
    private static final int ROUND_MIN = 5;
    /** Tones are told to a tenth of a stop. */
    private static final double TOLD_STOPS = 0.1;

    private final WishNight night;
    private final NightClock clock;
    private final MinuteRun planned;
    private final MinuteRun free;
    private final int number;
    private final double toneStops;

    /**
     * The times of an exposure that was chosen.
     *
     * @param planned from opening to closing
     * @param free    from when to when the camera is free for it
     */
    SlackSearch(WishNight night, NightClock clock, MinuteRun planned, MinuteRun free) {
        this.night = night;
        this.clock = clock;
        this.planned = planned;
        this.free = free;
        this.number = ExposureSearch.bestFNumber(night, planned.first(), planned.last());
        this.toneStops = night.light().toneStops(number, planned.first(), planned.last());
    }

    /**
     * The same exposure at times of five minutes of the clock where there is slack enough, with the same
     * chance to come out as wished; as planned where none has it.
     */
    MinuteRun rounded() {
        Slack slack = slack(0);
        if (!slack.easy()) {
            return planned;
        }
        List<Integer> closings = slack.closesToTheMinute() ? List.of(planned.last()) : around(planned.last());
        MinuteRun best = planned;
        for (int openMin : slack.opensToTheMinute() ? List.of(planned.first()) : around(planned.first())) {
            for (int closeMin : closings) {
                MinuteRun other = new MinuteRun(openMin, Math.max(openMin, closeMin));
                if (moved(other) < moved(best) && asGood(other)) {
                    best = other;
                }
            }
        }
        return best;
    }

    /** A minute and the times of five minutes next to it. */
    private List<Integer> around(int minute) {
        int overMin = overFive(minute);
        return List.of(minute, minute - overMin, minute - overMin + ROUND_MIN);
    }

    private int overFive(int minute) {
        return Math.floorMod(clock.at(minute).getEpochSecond() / 60, ROUND_MIN);
    }

    /** How far from what is wanted: ends that are no times of five minutes, then another length. */
    private int moved(MinuteRun other) {
        int openMin = other.first() - planned.first();
        int closeMin = other.last() - planned.last();
        int uneven = Math.min(1, overFive(other.first())) + Math.min(1, overFive(other.last()));
        return 100 * uneven + ROUND_MIN * Math.abs(closeMin - openMin) + Math.abs(openMin)
                + Math.abs(closeMin);
    }

    private boolean asGood(MinuteRun other) {
        boolean middle = night.aiming().fixed() || (other.last() - other.first()) % 2 == 0;
        return middle && same(other.first(), other.last())
                && ExposureSearch.bestFNumber(night, other.first(), other.last()) == number
                && night.hundredths(number, other.first(), other.last())
                == night.hundredths(number, planned.first(), planned.last());
    }

    /**
     * The slack of the exposure.
     *
     * @param nextMin how many minutes late the next sheet may be opened, where this one is opened late
     */
    Slack slack(int nextMin) {
        return new Slack(clock.at(last(planned.first(), -1, this::opens)),
                clock.at(last(planned.first(), 1, this::opens)),
                clock.at(last(planned.last(), -1, this::closes)),
                clock.at(last(planned.last(), 1, this::closes)),
                astray(planned.first() - Slack.ASTRAY_MIN, planned.last()),
                astray(planned.first(), planned.last() + Slack.ASTRAY_MIN),
                Slack.LATE_MIN.stream().map(min -> new Slack.LateOpening(min,
                        late(planned.first() + min, 0).or(() -> late(planned.first() + min, nextMin))))
                .toList());
    }

    private static int last(int minute, int stepMin, IntPredicate good) {
        int last = minute;
        while (good.test(last + stepMin)) {
            last += stepMin;
        }
        return last;
    }

    private boolean opens(int openMin) {
        return same(openMin, planned.last());
    }

    private boolean closes(int closeMin) {
        return same(planned.first(), closeMin);
    }

    private boolean same(int openMin, int closeMin) {
        return openMin >= free.first() && closeMin <= free.last() && allowed(openMin, closeMin)
                && missStops(openMin, closeMin) <= Slack.SAME_TONE_STOPS;
    }

    /** Whether every limit holds. */
    private boolean allowed(int openMin, int closeMin) {
        int durationMin = closeMin - openMin;
        return durationMin >= DurationLimits.shortestMin(night.wish())
                && durationMin <= DurationLimits.longestMin(night.wish())
                && night.allows(openMin, closeMin) && night.hundredths(number, openMin, closeMin) > 0;
    }

    private OptionalDouble astray(int openMin, int closeMin) {
        int firstBad = openMin < 0 ? openMin : night.moments().throughout().nextClearBit(openMin);
        return firstBad <= closeMin ? OptionalDouble.empty()
                : OptionalDouble.of(night.light().toneStops(number, openMin, closeMin) - toneStops);
    }

    /** The first closing whose tone is as near to the planned one as it gets, as finely as tones are told. */
    private Optional<Slack.Close> late(int openMin, int nextMin) {
        int lastMin = Math.min(free.last() + nextMin, openMin + DurationLimits.longestMin(night.wish()));
        List<Integer> closings = IntStream.rangeClosed(openMin + 1, lastMin)
                .filter(closeMin -> allowed(openMin, closeMin)).boxed().toList();
        double least = closings.stream().mapToDouble(closeMin -> missStops(openMin, closeMin)).min()
                .orElse(0);
        return closings.stream().filter(closeMin -> missStops(openMin, closeMin) <= least + TOLD_STOPS)
                .findFirst().map(closeMin -> new Slack.Close(clock.at(closeMin),
                        night.light().toneStops(number, openMin, closeMin),
                        night.aiming().direction(openMin + (closeMin - openMin) / 2)));
    }

    /** By how much the tone misses the planned one. */
    private double missStops(int openMin, int closeMin) {
        return Math.abs(night.light().toneStops(number, openMin, closeMin) - toneStops);
    }
}
