package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one night at one site can serve: every count of wishes that its exposures can come to, and the most
 * each gains.
 *
 * <p>A schedule of exposures is known by what it has served, when the camera is free again and what it gains;
 * of two that have served the same, one that is free no later and gains no less makes the other needless. So
 * from the empty one on every schedule is lengthened by every wish, opened as soon as it can. Those that lose
 * too much against their prices cannot be part of a best timetable.
 */
final class NightSchedules {

    /**
     * So many schedules of equally many sheets are lengthened by a wish each; those that lose most are left
     * out.
     */
    private static final int MOST_LENGTHENED = 20_000;

    private final WishCounts counts;
    private final int changeoverMin;
    private final Prices prices;
    private final long mostLoss;
    private final List<List<Offer>> byWish = new ArrayList<>();
    private final Next[][][] next;
    private final Map<Served, Schedule> all = new HashMap<>();
    private boolean complete = true;

    /** A schedule so far; others that have served the same are free later and worth more. */
    private static final class Schedule {
        private final int freeMin;
        private final long gain;
        private final long over;
        private final Next last;
        private final Schedule before;
        private Schedule also;

        Schedule(int freeMin, long gain, long over, Next last, Schedule before) {
            this.freeMin = freeMin;
            this.gain = gain;
            this.over = over;
            this.last = last;
            this.before = before;
        }

        Schedule most() {
            Schedule most = this;
            while (most.also != null) {
                most = most.also;
            }
            return most;
        }
    }

    /** The next exposure of a wish. */
    private record Next(Offer offer, int openMin) {

        int closeMin() {
            return openMin + offer.durationMin();
        }
    }

    /**
     * The schedules of a night.
     *
     * @param mostLoss what a schedule may lose against the prices, at most
     */
    NightSchedules(WishCounts counts, List<Offer> offers, int changeoverMin, Prices prices, long mostLoss) {
        this.counts = counts;
        this.changeoverMin = changeoverMin;
        this.prices = prices;
        this.mostLoss = mostLoss;
        int latestMin = 0;
        for (int wish = 0; wish < counts.wishes(); wish++) {
            byWish.add(new ArrayList<>());
        }
        for (Offer offer : offers) {
            if (prices.over(offer.wish(), offer.gain()) >= -mostLoss) {
                byWish.get(offer.wish()).add(offer);
                latestMin = Math.max(latestMin, offer.lastOpenMin());
            }
        }
        this.next = new Next[counts.wishes()][latestMin + 1][];
        Map<Served, Schedule> longest = Map.of(counts.nothing(), new Schedule(0, 0, 0, null, null));
        while (!longest.isEmpty()) {
            Map<Served, Schedule> longer = new HashMap<>();
            for (Map.Entry<Served, Schedule> entry : best(longest)) {
                for (Schedule from = entry.getValue(); from != null; from = from.also) {
                    lengthen(entry.getKey(), from, longer);
                }
            }
            all.putAll(longer);
            longest = longer;
        }
    }

    private List<Map.Entry<Served, Schedule>> best(Map<Served, Schedule> schedules) {
        List<Map.Entry<Served, Schedule>> best = new ArrayList<>(schedules.entrySet());
        int most = MOST_LENGTHENED / counts.wishes();
        if (best.size() > most) {
            complete = false;
            best.sort(Comparator.comparingLong(entry -> -entry.getValue().most().over));
            best = best.subList(0, most);
        }
        return best;
    }

    /** Whether all schedules were followed that may be part of a best timetable. */
    boolean complete() {
        return complete;
    }

    /** What can be served, at least one wish, and the most that each gains. */
    Map<Served, Long> gains() {
        Map<Served, Long> gains = new HashMap<>();
        all.forEach((served, first) -> gains.put(served, first.most().gain));
        return gains;
    }

    /** When the last sheet of those exposures is done that serve something and gain most, at the earliest. */
    int endMin(Served served) {
        return all.get(served).most().freeMin - changeoverMin;
    }

    /**
     * The exposures, in order of time, that serve something and gain most; of equals those that end first.
     */
    List<Timetable.Exposed> exposures(Served served) {
        List<Timetable.Exposed> exposed = new ArrayList<>();
        for (Schedule at = all.get(served).most(); at.last != null; at = at.before) {
            exposed.add(Timetable.Exposed.of(at.last.offer, at.last.openMin));
        }
        Collections.reverse(exposed);
        return exposed;
    }

    private void lengthen(Served served, Schedule from, Map<Served, Schedule> longer) {
        for (int wish = 0; wish < counts.wishes(); wish++) {
            if (counts.often(served, wish) > 0 || !counts.open(served, wish)
                    || from.freeMin >= next[wish].length) {
                continue;
            }
            Served then = null;
            for (Next exposure : next(wish, from.freeMin)) {
                long gain = exposure.offer.gain();
                long over = from.over + prices.over(wish, gain);
                if (over >= -mostLoss) {
                    then = then == null ? counts.more(served, wish) : then;
                    add(longer, then, new Schedule(exposure.closeMin() + changeoverMin, from.gain + gain,
                            over, exposure, from));
                }
            }
        }
    }

    /** Keeps schedules in order of the time they are free, each worth more than those before. */
    private static void add(Map<Served, Schedule> schedules, Served served, Schedule added) {
        Schedule before = null;
        Schedule after = schedules.get(served);
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
            schedules.put(served, added);
        } else {
            before.also = added;
        }
    }

    /**
     * The exposures of a wish that open no earlier than a minute, in order of closing, each worth more than
     * those before.
     */
    private Next[] next(int wish, int fromMin) {
        if (next[wish][fromMin] == null) {
            List<Next> after = new ArrayList<>();
            for (Offer offer : byWish.get(wish)) {
                if (offer.lastOpenMin() >= fromMin) {
                    after.add(new Next(offer, Math.max(fromMin, offer.firstOpenMin())));
                }
            }
            after.sort(Comparator.comparingInt(Next::closeMin).thenComparingLong(one -> -one.offer.gain()));
            List<Next> better = new ArrayList<>();
            for (Next one : after) {
                if (better.isEmpty() || one.offer.gain() > better.get(better.size() - 1).offer.gain()) {
                    better.add(one);
                }
            }
            next[wish][fromMin] = better.toArray(Next[]::new);
        }
        return next[wish][fromMin];
    }
}
