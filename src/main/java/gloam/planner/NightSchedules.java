package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * What one night at one site can serve: every count of wishes that its exposures can come to, and the most each gains.
 *
 * <p>A schedule of exposures is known by what it has served, when the camera is free again and what it gains; of two that
 * have served the same, one that is free no later and gains no less makes the other needless. So from the empty one on
 * every schedule is lengthened by every wish, opened as soon as it can.
 */
final class NightSchedules {

    /** The gain of counts that cannot be reached. */
    static final long UNREACHED = Long.MIN_VALUE / 2;

    private final WishCounts counts;
    private final int changeoverMin;
    private final List<List<Offer>> byWish = new ArrayList<>();
    private final Next[][][] next;
    private final Schedule[] schedules;

    /**
     * A schedule so far.
     *
     * @param freeMin when the camera is free again
     * @param also    another one that has served the same, free later and worth more; null for none
     */
    private static final class Schedule {
        private final int freeMin;
        private final long gain;
        private final Next last;
        private final Schedule before;
        private Schedule also;

        Schedule(int freeMin, long gain, Next last, Schedule before) {
            this.freeMin = freeMin;
            this.gain = gain;
            this.last = last;
            this.before = before;
        }
    }

    /** The next exposure of a wish. */
    private record Next(Offer offer, int openMin) {

        int closeMin() {
            return openMin + offer.durationMin();
        }
    }

    private NightSchedules(WishCounts counts, List<Offer> offers, int changeoverMin) {
        this.counts = counts;
        this.changeoverMin = changeoverMin;
        int latestMin = 0;
        for (int wish = 0; wish < counts.wishes(); wish++) {
            byWish.add(new ArrayList<>());
        }
        for (Offer offer : offers) {
            byWish.get(offer.wish()).add(offer);
            latestMin = Math.max(latestMin, offer.lastOpenMin());
        }
        this.next = new Next[counts.wishes()][latestMin + 1][];
        this.schedules = new Schedule[counts.size()];
        schedules[0] = new Schedule(0, 0, null, null);
        for (int count = 0; count < schedules.length; count++) {
            for (Schedule from = schedules[count]; from != null; from = from.also) {
                lengthen(count, from);
            }
        }
    }

    /** The most that every count gains which a night can come to, {@link #UNREACHED} of the others. */
    static long[] gains(WishCounts counts, List<Offer> offers, int changeoverMin) {
        NightSchedules night = new NightSchedules(counts, offers, changeoverMin);
        return Arrays.stream(night.schedules).mapToLong(some -> some == null ? UNREACHED : most(some).gain).toArray();
    }

    /** The exposures, in order of time, that come to a count and gain most; of equals those that end first. */
    static List<Timetable.Exposed> exposures(WishCounts counts, List<Offer> offers, int changeoverMin, int comeTo) {
        NightSchedules night = new NightSchedules(counts.upTo(comeTo), offers.stream()
                .filter(offer -> counts.often(comeTo, offer.wish()) > 0).toList(), changeoverMin);
        List<Timetable.Exposed> exposed = new ArrayList<>();
        for (Schedule at = most(night.schedules[night.schedules.length - 1]); at.last != null; at = at.before) {
            Offer offer = at.last.offer;
            exposed.add(new Timetable.Exposed(offer.wish(), at.last.openMin, at.last.closeMin(), offer.gain()));
        }
        Collections.reverse(exposed);
        return exposed;
    }

    private static Schedule most(Schedule first) {
        Schedule most = first;
        while (most.also != null) {
            most = most.also;
        }
        return most;
    }

    private void lengthen(int count, Schedule from) {
        for (int wish = 0; wish < counts.wishes(); wish++) {
            if (!counts.open(count, wish) || from.freeMin >= next[wish].length) {
                continue;
            }
            long lost = counts.often(count, wish) > 0 ? Gain.AGAIN : 0;
            for (Next exposure : next(wish, from.freeMin)) {
                add(count + counts.stride(wish), new Schedule(exposure.closeMin() + changeoverMin,
                        from.gain + exposure.offer.gain() - lost, exposure, from));
            }
        }
    }

    /** Keeps schedules in order of the time they are free, each worth more than those before. */
    private void add(int count, Schedule added) {
        Schedule before = null;
        Schedule after = schedules[count];
        while (after != null && after.freeMin <= added.freeMin) {
            if (after.gain >= added.gain) {
                return;
            }
            before = after.freeMin < added.freeMin ? after : before;
            after = after.also;
        }
        while (after != null && after.gain <= added.gain) {
            after = after.also;
        }
        added.also = after;
        if (before == null) {
            schedules[count] = added;
        } else {
            before.also = added;
        }
    }

    /** The exposures of a wish that open no earlier than a minute, in order of closing, each worth more than those before. */
    private Next[] next(int wish, int fromMin) {
        if (next[wish][fromMin] == null) {
            List<Next> all = new ArrayList<>();
            for (Offer offer : byWish.get(wish)) {
                if (offer.lastOpenMin() >= fromMin) {
                    all.add(new Next(offer, Math.max(fromMin, offer.firstOpenMin())));
                }
            }
            all.sort((one, other) -> one.closeMin() != other.closeMin() ? Integer.compare(one.closeMin(), other.closeMin())
                    : Long.compare(other.offer.gain(), one.offer.gain()));
            List<Next> better = new ArrayList<>();
            for (Next one : all) {
                if (better.isEmpty() || one.offer.gain() > better.get(better.size() - 1).offer.gain()) {
                    better.add(one);
                }
            }
            next[wish][fromMin] = better.toArray(Next[]::new);
        }
        return next[wish][fromMin];
    }
}
