package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A good timetable to start from: wishes that can gain most first, each where it gains most beside those
 * before.
 */
final class GreedyTimetable {

    private final int[] repeats;
    private final int sheets;
    private final int sheetsPerNight;
    private final Timetable limits;
    private final Optional<Moves> moves;
    private final long[] most;

    /** Within the limits of a timetable. */
    GreedyTimetable(Timetable limits) {
        this.repeats = limits.repeats();
        this.sheets = limits.sheets();
        this.sheetsPerNight = limits.sheetsPerNight();
        this.moves = limits.moves();
        this.limits = limits;
        this.most = new long[repeats.length];
    }

    /** By wish, the most that one of its offers gains. */
    long[] most() {
        return most.clone();
    }

    /** A timetable of the offers given for each night and, within it, each site. */
    List<Timetable.Night> nights(List<List<List<Offer>>> offers) {
        offers.forEach(sites -> sites.forEach(site -> site.forEach(offer ->
                most[offer.wish()] = Math.max(most[offer.wish()], offer.gain()))));
        List<Timetable.Night> nights =
                new ArrayList<>(Collections.nCopies(offers.size(), Timetable.Night.NOTHING));
        List<Integer> wishes = IntStream.range(0, repeats.length).boxed()
                .sorted(Comparator.comparingLong(wish -> -most[wish])).toList();
        int left = sheets;
        for (int wish : wishes) {
            for (int time = 0; time < repeats[wish] && left > 0 && add(nights, offers, wish); time++) {
                left--;
            }
        }
        return nights;
    }

    private boolean add(List<Timetable.Night> nights, List<List<List<Offer>>> offers, int wish) {
        Place best = null;
        for (int night = 0; night < nights.size(); night++) {
            Timetable.Night there = nights.get(night);
            if (there.exposed().size() >= sheetsPerNight
                    || there.exposed().stream().anyMatch(one -> one.wish() == wish)) {
                continue;
            }
            long lost = there.exposed().isEmpty() ? Gain.NIGHT_OUT : 0;
            for (int site = 0; site < offers.get(night).size(); site++) {
                if (!there.exposed().isEmpty() && there.site() != site || !reached(nights, night, site)) {
                    continue;
                }
                for (Offer offer : offers.get(night).get(site)) {
                    if (offer.wish() == wish && (best == null || offer.gain() - lost > best.gain)) {
                        List<Offer> beside = limits.beside(there.exposed(), offer);
                        best = beside.isEmpty() ? best
                                : new Place(night, site, beside.get(0), offer.gain() - lost);
                    }
                }
            }
        }
        if (best != null) {
            nights.set(best.night, best.with(nights.get(best.night)));
        }
        return best != null;
    }

    /** Whether a night fits between the nights out before and after it. */
    private boolean reached(List<Timetable.Night> nights, int night, int site) {
        if (moves.isEmpty()) {
            return true;
        }
        int before = night - 1;
        while (before >= 0 && nights.get(before).exposed().isEmpty()) {
            before--;
        }
        int after = night + 1;
        while (after < nights.size() && nights.get(after).exposed().isEmpty()) {
            after++;
        }
        return (before < 0 || moves.get().fit(before, nights.get(before).site(), night, site))
                && (after == nights.size() || moves.get().fit(night, site, after, nights.get(after).site()));
    }

    private record Place(int night, int site, Offer offer, long gain) {

        Timetable.Night with(Timetable.Night before) {
            Timetable.Exposed added = Timetable.Exposed.of(offer, offer.firstOpenMin());
            Timetable.Exposed[] all = Arrays.copyOf(before.exposed().toArray(Timetable.Exposed[]::new),
                    before.exposed().size() + 1);
            all[all.length - 1] = added;
            Arrays.sort(all, Timetable.Exposed.IN_TIME);
            return new Timetable.Night(site, List.of(all));
        }
    }
}
