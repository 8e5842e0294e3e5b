package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Searches the timetables that may be worth more than a first one: over time for what each night can come to
 * by itself, then over the nights for what they come to together.
 */
final class TimetableSearch {

    /** Of what a night can serve no more is looked at: what loses most is left out. */
    private static final int MOST_WAYS = 16_384;
    /** More timetables up to a night are not followed: those that lose most are left out. */
    private static final int MOST_TIMETABLES = 4096;
    /** So many first: the best of them tells how little may be lost of what is worth following. */
    private static final int FIRST_TIMETABLES = 128;
    /** So many last, for the earliest of those that gain the same. */
    private static final int EQUAL_TIMETABLES = 512;
    /** Nor are more joined with what a night can serve. */
    private static final int MOST_JOINED = 500_000;

    /** More than any timetable gains. */
    private static final long NO_TIME = Long.MAX_VALUE / 4;
    private static final int MOST_SITES = 64;

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
     * What one night can serve, what that gains and gains over its prices, and how late it gets, at the site
     * at which that is best.
     */
    private record Way(Served served, long gain, long over, long late, int site) {

        static Way better(Way one, Way other) {
            return other.gain > one.gain || other.gain == one.gain && other.late < one.late ? other : one;
        }
    }

    /** What one night can serve. */
    private record Ways(List<Way> ways, boolean complete) {
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

        /** Whether it leads to what is as good as what another leads to that has served no more. */
        boolean asGood(UpTo other) {
            return over > other.over || over == other.over && late <= other.late;
        }
    }

    /** The best timetable. */
    Timetable.Choice choose(List<List<List<Offer>>> offers) {
        List<Ways> nights = IntStream.range(0, offers.size()).parallel()
                .mapToObj(night -> ways(offers.get(night), night)).toList();
        Followed rough = follow(nights, mostLoss, FIRST_TIMETABLES, true);
        Followed all = rough.complete ? rough : follow(nights, mayLose(rough), MOST_TIMETABLES, false);
        boolean complete = all.complete && nights.stream().allMatch(Ways::complete);
        UpTo best = rough.complete ? rough.best
                : UpTo.better(all.best, follow(nights, mayLose(all), EQUAL_TIMETABLES, true).best);
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
     * Follows timetables from night to night.
     *
     * @param mayLose none is followed that loses more
     * @param most    nor more at a time
     * @param early   whether of those that gain the same the earliest is wanted
     */
    private Followed follow(List<Ways> nights, long mayLose, int most, boolean early) {
        Map<Served, UpTo> all = new HashMap<>();
        UpTo nothing = new UpTo(0, 0, 0, null, -1, null);
        all.put(counts.nothing(), nothing);
        StillNeeded needed = new StillNeeded(counts, nights.stream()
                .map(night -> night.ways.stream().map(Way::served).toList()).toList(),
                wish -> prices.wish()[wish] > mayLose);
        boolean complete = true;
        for (int night = 0; night < nights.size(); night++) {
            int after = night;
            complete &= add(all, nights.get(night).ways, night, mayLose);
            all.entrySet().removeIf(entry -> entry.getValue().over
                    - needed.nights(entry.getKey(), after) * Gain.NIGHT_OUT < -mayLose);
            complete &= night == nights.size() - 1 || cut(all, most, early);
        }
        return new Followed(all.values().stream().max(UpTo.WORSE_FIRST).orElse(nothing),
                complete);
    }

    private Ways ways(List<List<Offer>> sites, int ofNight) {
        Map<Served, Way> best = new HashMap<>();
        boolean complete = true;
        for (int number = 0; number < sites.size(); number++) {
            int site = number;
            CameraSchedules night = schedules(sites.get(number), counts.ofNight(timetable.sheetsPerNight()),
                    mostLoss);
            int last = timetable.moves().isEmpty() ? 0 : ofNight * MOST_SITES + site + 1;
            night.gains().forEach((served, gain) -> best.merge(served.lastAt(last),
                    new Way(served.lastAt(last), gain - Gain.NIGHT_OUT,
                    prices.over(counts, served, gain - Gain.NIGHT_OUT),
                    Gain.late(night.endMin(served), ofNight, served.sheets()), site), Way::better));
            complete &= night.complete();
        }
        return new Ways(best.values().stream().sorted(Comparator.comparingLong(way -> -way.over))
                .limit(MOST_WAYS).toList(), complete && best.size() <= MOST_WAYS);
    }

    private CameraSchedules schedules(List<Offer> offers, WishCounts within, long mayLose) {
        return new CameraSchedules(within, offers, timetable.changeoverMin(), prices, mayLose);
    }

    /** Joins what a night can serve, the best of it first; whether that could be followed to the end. */
    private boolean add(Map<Served, UpTo> all, List<Way> ways, int night, long mayLose) {
        List<Map.Entry<Served, UpTo>> before = byLoss(all);
        int joined = 0;
        for (Way way : ways) {
            for (Map.Entry<Served, UpTo> some : before) {
                UpTo then = some.getValue();
                if (then.over + way.over < -mayLose) {
                    break;
                } else if (!counts.fit(some.getKey(), way.served)) {
                    continue;
                }
                long lost = then.way == null ? 0 : lost(then.night, then.way.site, night, way.site);
                if (then.over + way.over - lost >= -mayLose) {
                    all.merge(counts.sum(some.getKey(), way.served),
                            new UpTo(then.gain + way.gain - lost, then.over + way.over - lost,
                            then.late + way.late, then, night, way), UpTo::better);
                    joined++;
                }
            }
            if (joined > MOST_JOINED) {
                return false;
            }
        }
        return true;
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
    private boolean cut(Map<Served, UpTo> all, int most, boolean early) {
        List<Map.Entry<Served, UpTo>> kept = new ArrayList<>();
        boolean complete = true;
        for (Map.Entry<Served, UpTo> one : byLoss(all)) {
            if (counts.scarce() || kept.stream().noneMatch(other ->
                    counts.covers(other.getKey(), one.getKey())
                    && (!early || other.getValue().asGood(one.getValue())))) {
                complete = kept.size() < most;
                if (!complete) {
                    break;
                }
                kept.add(one);
            }
        }
        all.clear();
        kept.forEach(entry -> all.put(entry.getKey(), entry.getValue()));
        return complete;
    }

    /** What has lost least first, of equals what has served most. */
    private static List<Map.Entry<Served, UpTo>> byLoss(Map<Served, UpTo> all) {
        return all.entrySet().stream().map(entry -> Map.entry(entry.getKey(), entry.getValue()))
                .sorted(Comparator.<Map.Entry<Served, UpTo>>comparingLong(entry -> -entry.getValue().over)
                        .thenComparing(entry -> -entry.getKey().sheets())).toList();
    }

    private List<Timetable.Night> traced(UpTo best, List<List<List<Offer>>> offers) {
        List<Timetable.Night> nights =
                new ArrayList<>(Collections.nCopies(offers.size(), Timetable.Night.NOTHING));
        for (UpTo at = best; at.before != null; at = at.before) {
            WishCounts within = counts.upTo(at.way.served);
            nights.set(at.night, new Timetable.Night(at.way.site,
                    schedules(offers.get(at.night).get(at.way.site), within,
                    -at.way.over - Gain.NIGHT_OUT)
                    .exposures(within.all())));
        }
        return nights;
    }
}
