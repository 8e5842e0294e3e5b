package gloam.planner;

import gloam.planner.NightWays.Way;
import gloam.planner.WishCounts.Served;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.ToLongBiFunction;
import java.util.stream.IntStream;

/**
 * Searches the timetables that may be worth more than a first one: over time for what each night can come to
 * by itself, then over the nights for what they come to together.
 */
final class TimetableSearch {

    /**
     * More timetables up to a night are not followed: those are left out that lose most, what is urgent and
     * has been put off counted in.
     */
    private static final int MOST_TIMETABLES = 1024;
    /** So many first: the best of them tells how little may be lost of what is worth following. */
    private static final int FIRST_TIMETABLES = 128;
    /** So many last, for the earliest of those that gain the same. */
    private static final int EQUAL_TIMETABLES = 512;
    /**
     * Nights out that putting off a wish for its last night counts for, in the narrow search and the wide
     * ones: by trial, since either alone misses what the other finds.
     */
    private static final int URGENT_FIRST = 10;
    private static final int URGENT_AFTER = 1;
    /** Nor are more joined with what a night can serve. */
    private static final int MOST_JOINED = 60_000;
    /** In so many steps, so that what loses least comes first. */
    private static final int STEPS_OF_LOSS = 64;

    /** More than any timetable gains. */
    private static final long NO_TIME = Long.MAX_VALUE / 4;

    private final Timetable timetable;
    private final Prices prices;
    private final List<Timetable.Night> first;
    private final long mostLoss;
    private final WishCounts counts;

    /** A search with prices at which nothing gains anything; what gains less than the least is not sought. */
    TimetableSearch(Timetable timetable, Prices prices, List<Timetable.Night> first, long leastGain) {
        this.timetable = timetable;
        this.prices = prices;
        this.first = first;
        this.mostLoss = prices.bound() - Math.max(leastGain, gain(first));
        this.counts = new WishCounts(timetable.repeats(), timetable.sheets());
    }

    /**
     * A timetable up to some night: the last night of it on which something is exposed, and what came before.
     */
    private record UpTo(long gain, long over, long late, UpTo before, int night, Way way) {

        static final Comparator<UpTo> WORSE_FIRST = Comparator.comparingLong(UpTo::gain)
                .thenComparing(UpTo::late, Comparator.reverseOrder());

        static UpTo better(UpTo one, UpTo other) {
            return WORSE_FIRST.compare(other, one) > 0 ? other : one;
        }

        /** Whether it leads to what is as good, and as early, as another that has served no more does. */
        boolean asGood(UpTo other, boolean early) {
            return over > other.over || over == other.over && (!early || late <= other.late);
        }
    }

    /** The best timetable. */
    Timetable.Choice choose(List<List<List<Offer>>> offers) {
        List<NightWays> nights = IntStream.range(0, offers.size()).parallel()
                .mapToObj(night -> NightWays.of(timetable, counts, prices, offers.get(night), night,
                        mostLoss)).toList();
        Followed rough = follow(nights, new Reach(mostLoss, FIRST_TIMETABLES, true, URGENT_FIRST));
        Followed all = rough.complete ? rough
                : follow(nights, new Reach(mayLose(rough), MOST_TIMETABLES, false, URGENT_AFTER));
        boolean complete = all.complete && nights.stream().allMatch(NightWays::complete);
        UpTo best = all.best.gain <= rough.best.gain ? rough.best : UpTo.better(all.best,
                follow(nights, new Reach(mayLose(all), EQUAL_TIMETABLES, true, URGENT_AFTER)).best);
        List<Timetable.Night> found = best.gain < gain(first) ? first : traced(best, offers);
        double worth = new Timetable.Choice(found, 0).worth();
        return new Timetable.Choice(found, complete ? worth : Math.max(worth, Gain.worth(prices.bound())));
    }

    private long mayLose(Followed best) {
        return Math.min(mostLoss, prices.bound() - best.best.gain);
    }

    /** The best of the timetables followed, and whether those were all that may be better. */
    private record Followed(UpTo best, boolean complete) {
    }

    /**
     * How far timetables are followed.
     *
     * @param mayLose none is followed that loses more
     * @param most    nor more at a time
     * @param early   whether of those that gain the same the earliest is wanted
     * @param urgent  how urgent it is to serve a wish that has one night left, in nights out
     */
    private record Reach(long mayLose, int most, boolean early, int urgent) {
    }

    /** Follows timetables from night to night. */
    private Followed follow(List<NightWays> nights, Reach reach) {
        Map<Served, UpTo> all = new HashMap<>();
        UpTo nothing = new UpTo(0, 0, 0, null, -1, null);
        all.put(counts.nothing(), nothing);
        StillNeeded needed = new StillNeeded(counts, nights.stream()
                .map(night -> night.ways().stream().map(Way::served).toList()).toList(), prices,
                reach.mayLose);
        boolean complete = true;
        for (int night = 0; night < nights.size(); night++) {
            int after = night;
            BiPredicate<Served, UpTo> worth = (served, upTo) ->
                    upTo.over - needed.least(served, after) >= -reach.mayLose;
            complete &= add(all, nights.get(night).ways(), night, reach, worth);
            all.entrySet().removeIf(entry -> !worth.test(entry.getKey(), entry.getValue()));
            complete &= night == nights.size() - 1 || cut(all, reach,
                    (served, upTo) -> needed.urgency(served, after, reach.urgent) - upTo.over);
        }
        return new Followed(all.values().stream().max(UpTo.WORSE_FIRST).orElse(nothing),
                complete);
    }

    /**
     * Joins what a night can serve, by steps those first that lose less; whether that could be followed to
     * the end. Where sheets are scarce no timetable covers another, and no more are joined than are followed.
     */
    private boolean add(Map<Served, UpTo> all, List<Way> ways, int night, Reach reach,
            BiPredicate<Served, UpTo> worth) {
        int most = counts.scarce() ? reach.most : MOST_JOINED;
        List<Ordered> before = byLoss(all, (served, upTo) -> -upTo.over);
        int[] next = new int[ways.size()];
        int joined = 0;
        for (int step = 1; step <= STEPS_OF_LOSS; step++) {
            if (joined > most) {
                return false;
            }
            long mayLose = step == STEPS_OF_LOSS ? reach.mayLose : reach.mayLose / STEPS_OF_LOSS * step;
            for (int number = 0; number < next.length; number++) {
                Way way = ways.get(number);
                for (; next[number] < before.size(); next[number]++) {
                    Ordered some = before.get(next[number]);
                    if (some.upTo.over + way.over() < -mayLose) {
                        break;
                    } else if (counts.fit(some.served, way.served())) {
                        Served served = counts.sum(some.served, way.served());
                        UpTo upTo = joined(some.upTo, night, way);
                        joined += worth.test(served, upTo)
                                && all.merge(served, upTo, UpTo::better) == upTo ? 1 : 0;
                    }
                }
                if (joined > MOST_JOINED) {
                    return false;
                }
            }
        }
        return true;
    }

    private UpTo joined(UpTo before, int night, Way way) {
        long lost = before.way == null ? 0 : lost(before.night, before.way.site(), night, way.site());
        return new UpTo(before.gain + way.gain() - lost, before.over + way.over() - lost,
                before.late + way.late(), before, night, way);
    }

    /** What is lost by the way from one night to a later one: everything where there is no time for it. */
    private long lost(int night, int site, int later, int laterSite) {
        return timetable.moves().map(moves -> !moves.fit(night, site, later, laterSite) ? NO_TIME
                : moves.stays(night, site, later, laterSite) ? 0 : Gain.MOVE).orElse(0L);
    }

    /** What nights gain together. */
    private long gain(List<Timetable.Night> nights) {
        long gain = Timetable.Choice.gain(nights);
        int before = -1;
        for (int night = 0; night < nights.size() && timetable.moves().isPresent(); night++) {
            if (!nights.get(night).exposed().isEmpty()) {
                gain -= before < 0 ? 0 : lost(before, nights.get(before).site(), night,
                        nights.get(night).site());
                before = night;
            }
        }
        return gain;
    }

    /**
     * Leaves out what another that has served as much and more is as good as, and what cannot be followed;
     * whether nothing of that kind was left out.
     */
    private boolean cut(Map<Served, UpTo> all, Reach reach, ToLongBiFunction<Served, UpTo> loss) {
        List<Ordered> kept = new ArrayList<>();
        boolean complete = true;
        for (Ordered one : byLoss(all, loss)) {
            if (counts.scarce() || kept.stream().noneMatch(other -> counts.covers(other.served, one.served)
                    && other.upTo.asGood(one.upTo, reach.early))) {
                complete = kept.size() < reach.most;
                if (!complete) {
                    break;
                }
                kept.add(one);
            }
        }
        all.clear();
        kept.forEach(one -> all.put(one.served, one.upTo));
        return complete;
    }

    /** What has been served up to a night, how, and what that loses. */
    private record Ordered(Served served, UpTo upTo, long loss) {
    }

    /** What loses least first, of equals what has served most. */
    private static List<Ordered> byLoss(Map<Served, UpTo> all, ToLongBiFunction<Served, UpTo> loss) {
        return all.entrySet().stream().map(one -> new Ordered(one.getKey(), one.getValue(),
                        loss.applyAsLong(one.getKey(), one.getValue())))
                .sorted(Comparator.comparingLong(Ordered::loss)
                        .thenComparing(one -> -one.served.sheets())).toList();
    }

    private List<Timetable.Night> traced(UpTo best, List<List<List<Offer>>> offers) {
        List<Timetable.Night> nights =
                new ArrayList<>(Collections.nCopies(offers.size(), Timetable.Night.NOTHING));
        for (UpTo at = best; at.before != null; at = at.before) {
            WishCounts within = counts.upTo(at.way.served());
            nights.set(at.night, new Timetable.Night(at.way.site(),
                    new CameraSchedules(within, offers.get(at.night).get(at.way.site()),
                            timetable.changeoverMin(), prices, -at.way.over() - Gain.NIGHT_OUT)
                            .exposures(within.all())));
        }
        return nights;
    }
}
