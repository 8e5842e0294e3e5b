package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.planner.NightRank;
import gloam.planner.NightRanking;
import gloam.planner.Progress;
import gloam.planner.Stay;
import gloam.planner.Trip;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Nights, best first.
 *
 * @param nights the nights in order of rank, at least one
 * @param stays  runs of consecutive nights at one site in order of rank; empty unless asked for
 */
public record Ranking(List<NightRank> nights, List<Stay> stays) {

    /** Copies the lists. */
    public Ranking {
        nights = List.copyOf(nights);
        stays = List.copyOf(stays);
    }

    /**
     * The nights to rank.
     *
     * @param sites    the sites
     * @param evenings dates of the evenings, at least one, in order
     * @param trip     whose wishes count, if any
     * @param stay     length of runs in nights, if runs are wanted
     */
    public record Wanted(List<Site> sites, List<LocalDate> evenings, Optional<Trip> trip, OptionalInt stay) {

        /** Copies the lists; refuses a run longer than the nights with {@link BadInput}. */
        public Wanted {
            sites = List.copyOf(sites);
            evenings = List.copyOf(evenings);
            if (stay.isPresent()) {
                new Range("stay", 1, evenings.size(), "nights").check(stay.getAsInt());
            }
        }
    }

    /**
     * Ranks nights.
     *
     * @param progress informed of every night done
     */
    public static Ranking of(Ephemeris ephemeris, StarCatalogue stars, Wanted wanted, Progress progress) {
        List<NightRank> nights = new NightRanking(ephemeris, stars, wanted.trip, progress)
                .nights(wanted.sites, wanted.evenings);
        return new Ranking(nights,
                wanted.stay.isPresent() ? NightRanking.stays(nights, wanted.stay.getAsInt()) : List.of());
    }
}
