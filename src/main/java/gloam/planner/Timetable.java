package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chooses from offers the timetable that gains most: one site a night, one exposure at a time with the changeover
 * between, no wish more often than it repeats, no more sheets than carried.
 *
 * <p>Exact by dynamic programming as long as the wishes have no more counts than {@link #MOST_COUNTS}: over time for
 * what each night can come to by itself, then over the nights for what they come to together. Beyond, the wishes that can
 * add most are placed exactly first and the others around them, and {@link Choice#bound()} says how much any timetable
 * could be worth. Of timetables that gain the same it takes one that serves earlier nights, then earlier sites and then
 * ends the night earlier; so the answer is stable.
 */
final class Timetable {

    /** Most counts handled at once: fourteen wishes, and then a little. */
    static final int MOST_COUNTS = 1 << 15;

    private final int[] repeats;
    private final int sheets;
    private final int changeoverMin;

    /**
     * A timetable's limits.
     *
     * @param repeats       how often each wish may be served, at least once each
     * @param sheets        how many exposures there may be, at least one
     * @param changeoverMin least time from closing one exposure to opening the next of the night, not negative
     */
    Timetable(int[] repeats, int sheets, int changeoverMin) {
        this.repeats = Arrays.stream(repeats).map(repeat -> Math.min(repeat, sheets)).toArray();
        this.sheets = sheets;
        this.changeoverMin = changeoverMin;
    }

    /** The limits of a trip. */
    static Timetable of(Trip trip) {
        return new Timetable(trip.wishes().stream().mapToInt(Wish::repeat).toArray(), trip.sheets() - trip.spent(),
                trip.changeoverMin());
    }

    /**
     * An exposure.
     *
     * @param wish     number of its wish in the trip, from 0
     * @param openMin  when the shutter opens, in minutes of the night
     * @param closeMin when it closes
     * @param gain     what it adds to the trip, see {@link Gain}
     */
    record Exposed(int wish, int openMin, int closeMin, long gain) {

        /** Its worth times its chance. */
        double worth() {
            return Gain.worth(gain);
        }
    }

    /**
     * What is exposed on one night.
     *
     * @param site    number of the site in the lists given; 0 where nothing is exposed
     * @param exposed in order of time, empty for none
     */
    record Night(int site, List<Exposed> exposed) {
    }

    /**
     * A timetable.
     *
     * @param nights one for each night given
     * @param bound  no timetable is worth more than this; equal to {@link #worth()} when it is exact
     */
    record Choice(List<Night> nights, double bound) {

        /** The summed worth of all that is exposed. */
        double worth() {
            return nights.stream().flatMap(night -> night.exposed.stream()).mapToDouble(Exposed::worth).sum();
        }
    }

    /** The best timetable of the offers given for each night and, within it, each site. */
    Choice choose(List<List<List<Offer>>> offers) {
        List<Integer> wishes = IntStream.range(0, repeats.length).boxed().toList();
        if (WishCounts.size(repeats) <= MOST_COUNTS) {
            List<Night> nights = exact(offers, wishes, sheets);
            return new Choice(nights, new Choice(nights, 0).worth());
        }
        return grouped(offers, byPromise(offers, wishes));
    }

    /** Wishes by the most they can add, all their repeats taken together. */
    private List<Integer> byPromise(List<List<List<Offer>>> offers, List<Integer> wishes) {
        double[] promise = new double[repeats.length];
        offers.stream().flatMap(List::stream).flatMap(List::stream).forEach(offer -> promise[offer.wish()] =
                Math.max(promise[offer.wish()], Gain.worth(offer.gain()) * repeats[offer.wish()]));
        return wishes.stream().sorted(Comparator.comparingDouble(wish -> -promise[wish])).toList();
    }

    private Choice grouped(List<List<List<Offer>>> offers, List<Integer> wishes) {
        List<Night> placed = new ArrayList<>(Collections.nCopies(offers.size(), new Night(0, List.of())));
        double bound = 0;
        int left = sheets;
        for (List<Integer> group : groups(wishes)) {
            bound += new Choice(exact(offers, group, sheets), 0).worth();
            List<Night> added = exact(around(placed, offers), group, left);
            for (int night = 0; night < placed.size(); night++) {
                placed.set(night, merge(placed.get(night), added.get(night)));
            }
            left = sheets - placed.stream().mapToInt(night -> night.exposed.size()).sum();
        }
        return new Choice(placed, bound);
    }

    private List<List<Integer>> groups(List<Integer> wishes) {
        List<List<Integer>> groups = new ArrayList<>();
        double size = Double.POSITIVE_INFINITY;
        for (int wish : wishes) {
            size *= repeats[wish] + 1.0;
            if (size > MOST_COUNTS) {
                groups.add(new ArrayList<>());
                size = repeats[wish] + 1.0;
            }
            groups.get(groups.size() - 1).add(wish);
        }
        return groups;
    }

    private static Night merge(Night some, Night more) {
        List<Exposed> all = new ArrayList<>(some.exposed);
        all.addAll(more.exposed);
        all.sort(Comparator.comparingInt(Exposed::openMin));
        return new Night(some.exposed.isEmpty() ? more.site : some.site, all);
    }

    /** What of the offers still can be had beside what is placed. */
    private List<List<List<Offer>>> around(List<Night> placed, List<List<List<Offer>>> offers) {
        return IntStream.range(0, offers.size()).mapToObj(night ->
                IntStream.range(0, offers.get(night).size()).mapToObj(site ->
                        offers.get(night).get(site).stream()
                                .flatMap(offer -> fitting(placed.get(night), site, offer).stream()).toList())
                        .toList()).toList();
    }

    private List<Offer> fitting(Night placed, int site, Offer offer) {
        return placed.exposed.isEmpty() || placed.site == site ? beside(placed.exposed, offer, changeoverMin) : List.of();
    }

    /** What of an offer still can be had beside exposures in order of time. */
    static List<Offer> beside(List<Exposed> exposed, Offer offer, int changeoverMin) {
        List<Offer> fitting = new ArrayList<>();
        int fromMin = offer.firstOpenMin();
        for (Exposed other : exposed) {
            int toMin = Math.min(offer.lastOpenMin(), other.openMin - changeoverMin - offer.durationMin());
            if (fromMin <= toMin) {
                fitting.add(offer.opening(fromMin, toMin));
            }
            fromMin = Math.max(fromMin, other.closeMin + changeoverMin);
        }
        if (fromMin <= offer.lastOpenMin()) {
            fitting.add(offer.opening(fromMin, offer.lastOpenMin()));
        }
        return fitting;
    }

    private List<Night> exact(List<List<List<Offer>>> offers, List<Integer> wishes, int sheetsLeft) {
        WishCounts counts = new WishCounts(wishes.stream().mapToInt(wish -> repeats[wish]).toArray(), sheetsLeft);
        List<Stage> stages = IntStream.range(0, offers.size()).parallel()
                .mapToObj(night -> stage(counts, offers.get(night), wishes)).toList();
        List<long[]> gains = new ArrayList<>();
        gains.add(nothing(counts));
        stages.forEach(stage -> gains.add(stage.gains.after(gains.get(gains.size() - 1))));
        return traced(stages, gains, wishes);
    }

    /** A night's offers at each site, their wishes numbered as the counts do, and what they can come to. */
    private record Stage(List<List<Offer>> sites, NightGains gains) {

        Night serving(int served, int changeoverMin, List<Integer> wishes) {
            int site = gains.site()[served];
            return new Night(site, NightSchedules.exposures(gains.counts(), sites.get(site), changeoverMin, served).stream()
                    .map(one -> new Exposed(wishes.get(one.wish), one.openMin, one.closeMin, one.gain)).toList());
        }
    }

    private Stage stage(WishCounts counts, List<List<Offer>> night, List<Integer> wishes) {
        List<List<Offer>> sites = night.stream().map(site -> site.stream()
                .filter(offer -> wishes.contains(offer.wish()))
                .map(offer -> offer.of(wishes.indexOf(offer.wish()))).toList()).toList();
        return new Stage(sites, NightGains.of(counts,
                sites.stream().map(site -> NightSchedules.gains(counts, site, changeoverMin)).toList()));
    }

    private static long[] nothing(WishCounts counts) {
        long[] nothing = new long[counts.size()];
        Arrays.fill(nothing, 1, nothing.length, NightSchedules.UNREACHED);
        return nothing;
    }

    private List<Night> traced(List<Stage> stages, List<long[]> gains, List<Integer> wishes) {
        int at = best(gains.get(stages.size()));
        List<Night> nights = new ArrayList<>();
        for (int number = stages.size() - 1; number >= 0; number--) {
            Stage stage = stages.get(number);
            int served = stage.gains.leadingTo(at, gains.get(number + 1)[at], gains.get(number));
            nights.add(served == 0 ? new Night(0, List.of()) : stage.serving(served, changeoverMin, wishes));
            at -= served;
        }
        Collections.reverse(nights);
        return nights;
    }

    private static int best(long[] gains) {
        int best = 0;
        for (int count = 1; count < gains.length; count++) {
            best = gains[count] > gains[best] ? count : best;
        }
        return best;
    }
}
