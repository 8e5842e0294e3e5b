package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chooses from candidates the timetable that is worth most: one site a night, one exposure at a time with the
 * changeover between, no wish more often than it repeats, no more sheets than carried.
 *
 * <p>Exact by dynamic programming as long as the wishes have no more tallies than {@link #MOST_TALLIES}: over time for
 * what each night can come to by itself, then over the nights for what they come to together. Beyond, the wishes that can
 * add most are placed exactly first and the others around them, and {@link Choice#bound()} says how much any timetable
 * could be worth. Of timetables worth the same, but for how safe their pictures are, it takes one that spreads the repeats
 * of a wish over nights, then one that serves earlier nights, then earlier sites and starts; so the answer is stable.
 */
final class Timetable {

    /** Most tallies handled at once: fourteen wishes, and then a little. */
    static final int MOST_TALLIES = 1 << 15;

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

    /**
     * What is exposed on one night.
     *
     * @param site     number of the site in the lists given; 0 where nothing is exposed
     * @param exposed in order of time, empty for none
     */
    record Night<T>(int site, List<Candidate<T>> exposed) {
    }

    /**
     * A timetable.
     *
     * @param nights one for each night given
     * @param bound  no timetable is worth more than this; equal to {@link #worth()} when it is exact
     */
    record Choice<T>(List<Night<T>> nights, double bound) {

        /** The summed value of all that is exposed. */
        double worth() {
            return nights.stream().flatMap(night -> night.exposed.stream()).mapToDouble(Candidate::value).sum();
        }
    }

    /** The best timetable of the candidates given for each night and, within it, each site. */
    <T> Choice<T> choose(List<List<List<Candidate<T>>>> candidates) {
        List<Integer> wishes = IntStream.range(0, repeats.length).boxed().toList();
        if (Tally.size(repeats) <= MOST_TALLIES) {
            List<Night<T>> nights = exact(candidates, wishes, sheets);
            return new Choice<>(nights, new Choice<>(nights, 0).worth());
        }
        return grouped(candidates, byPromise(candidates, wishes));
    }

    /** Wishes by the most they can add, all their repeats taken together. */
    private <T> List<Integer> byPromise(List<List<List<Candidate<T>>>> candidates, List<Integer> wishes) {
        double[] promise = new double[repeats.length];
        candidates.stream().flatMap(List::stream).flatMap(List::stream).forEach(candidate ->
                promise[candidate.wish()] = Math.max(promise[candidate.wish()],
                        candidate.value() * repeats[candidate.wish()]));
        return wishes.stream().sorted(Comparator.comparingDouble(wish -> -promise[wish])).toList();
    }

    private <T> Choice<T> grouped(List<List<List<Candidate<T>>>> candidates, List<Integer> wishes) {
        List<Night<T>> placed = new ArrayList<>(Collections.nCopies(candidates.size(), new Night<>(0, List.of())));
        double bound = 0;
        int left = sheets;
        for (List<Integer> group : groups(wishes)) {
            bound += new Choice<>(exact(candidates, group, sheets), 0).worth();
            List<Night<T>> added = exact(around(placed, candidates), group, left);
            for (int night = 0; night < placed.size(); night++) {
                placed.set(night, merge(placed.get(night), added.get(night)));
            }
            left = sheets - placed.stream().mapToInt(night -> night.exposed.size()).sum();
        }
        return new Choice<>(placed, bound);
    }

    private List<List<Integer>> groups(List<Integer> wishes) {
        List<List<Integer>> groups = new ArrayList<>();
        double size = Double.POSITIVE_INFINITY;
        for (int wish : wishes) {
            size *= repeats[wish] + 1.0;
            if (size > MOST_TALLIES) {
                groups.add(new ArrayList<>());
                size = repeats[wish] + 1.0;
            }
            groups.get(groups.size() - 1).add(wish);
        }
        return groups;
    }

    private static <T> Night<T> merge(Night<T> some, Night<T> more) {
        List<Candidate<T>> all = new ArrayList<>(some.exposed);
        all.addAll(more.exposed);
        all.sort(Candidate.ORDER);
        return new Night<>(some.exposed.isEmpty() ? more.site : some.site, all);
    }

    /** The candidates that still can be had beside what is placed. */
    private <T> List<List<List<Candidate<T>>>> around(List<Night<T>> placed,
                                                      List<List<List<Candidate<T>>>> candidates) {
        return IntStream.range(0, candidates.size()).mapToObj(night ->
                IntStream.range(0, candidates.get(night).size()).mapToObj(site ->
                        candidates.get(night).get(site).stream()
                                .filter(candidate -> fits(placed.get(night), site, candidate)).toList())
                        .toList()).toList();
    }

    private <T> boolean fits(Night<T> placed, int site, Candidate<T> candidate) {
        return placed.exposed.isEmpty() || placed.site == site
                && placed.exposed.stream().allMatch(other -> other.clears(candidate, changeoverMin));
    }

    private <T> List<Night<T>> exact(List<List<List<Candidate<T>>>> candidates, List<Integer> wishes, int sheetsLeft) {
        Tally tally = new Tally(wishes.stream().mapToInt(wish -> repeats[wish]).toArray(), sheetsLeft);
        List<Stage<T>> stages = IntStream.range(0, candidates.size()).parallel()
                .mapToObj(night -> stage(tally, candidates.get(night), wishes)).toList();
        List<long[]> worth = new ArrayList<>();
        worth.add(nothing(tally));
        stages.forEach(stage -> worth.add(stage.offer.after(worth.get(worth.size() - 1))));
        return traced(stages, worth);
    }

    /** A night's candidates at each site, their wishes numbered as the tally does, and what they can come to. */
    private record Stage<T>(List<List<Candidate<Candidate<T>>>> sites, NightOffer offer) {

        Night<T> serving(int served, int changeoverMin) {
            int site = offer.site()[served];
            return new Night<>(site, NightSweep.exposures(offer.tally(), sites.get(site), changeoverMin, served).stream()
                    .map(Candidate::shot).toList());
        }
    }

    private <T> Stage<T> stage(Tally tally, List<List<Candidate<T>>> night, List<Integer> wishes) {
        List<List<Candidate<Candidate<T>>>> sites = night.stream().map(site -> renumbered(site, wishes)).toList();
        return new Stage<>(sites, NightOffer.of(tally,
                sites.stream().map(site -> NightSweep.worth(tally, site, changeoverMin)).toList()));
    }

    private static <T> List<Candidate<Candidate<T>>> renumbered(List<Candidate<T>> site, List<Integer> wishes) {
        return site.stream().filter(candidate -> wishes.contains(candidate.wish()))
                .map(candidate -> new Candidate<>(candidate, wishes.indexOf(candidate.wish()), candidate.openMin(),
                        candidate.closeMin(), candidate.value())).sorted(Candidate.ORDER).toList();
    }

    private static long[] nothing(Tally tally) {
        long[] nothing = new long[tally.size()];
        Arrays.fill(nothing, 1, nothing.length, NightSweep.UNREACHED);
        return nothing;
    }

    private <T> List<Night<T>> traced(List<Stage<T>> stages, List<long[]> worth) {
        int at = best(worth.get(stages.size()));
        List<Night<T>> nights = new ArrayList<>();
        for (int number = stages.size() - 1; number >= 0; number--) {
            Stage<T> stage = stages.get(number);
            int served = stage.offer.leadingTo(at, worth.get(number + 1)[at], worth.get(number));
            nights.add(stage.serving(served, changeoverMin));
            at -= served;
        }
        Collections.reverse(nights);
        return nights;
    }

    private static int best(long[] worth) {
        int best = 0;
        for (int tally = 1; tally < worth.length; tally++) {
            best = worth[tally] > worth[best] ? tally : best;
        }
        return best;
    }
}
