package gloam.answer;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.planner.NightRank;
import gloam.planner.NightRanking;
import gloam.planner.Progress;
import gloam.planner.SkyTaste;
import gloam.planner.Stay;
import gloam.planner.Trip;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Nights, best first.
 *
 * @param ranked how many nights were ranked, at least one
 * @param nights every night in order of rank, or the best of them alone
 * @param best   the first of them, looked at more closely
 * @param stays  the best runs of consecutive nights at one site that share no date, in order of rank; empty
 *               unless asked for
 */
public record Ranking(int ranked, List<NightRank> nights, List<Shown> best, List<ShownStay> stays) {

    private static final Duration HOUR = Duration.ofHours(1);

    /** Copies the lists. */
    public Ranking {
        nights = List.copyOf(nights);
        best = List.copyOf(best);
        stays = List.copyOf(stays);
    }

    /**
     * A night looked at more closely.
     *
     * @param waxing     whether the Moon waxes
     * @param clearShare mean share of the sky that is clear while it is dark, by the forecast; empty without
     */
    public record Shown(NightRank rank, boolean waxing, OptionalDouble clearShare) {
    }

    /** A run of nights, each looked at more closely. */
    public record ShownStay(Stay stay, List<Shown> nights) {

        /** Copies the list. */
        public ShownStay {
            nights = List.copyOf(nights);
        }
    }

    /**
     * The nights to rank.
     *
     * @param sites    the sites
     * @param evenings dates of the evenings, at least one, in order
     * @param trip     whose wishes count, if any
     * @param taste    what the sky is wanted for where no wishes count
     * @param stay     length of runs in nights, if runs are wanted
     * @param best     how many nights and runs are wanted
     * @param every    whether the order of all nights is wanted
     */
    public record Wanted(List<Site> sites, List<LocalDate> evenings, Optional<Trip> trip, SkyTaste taste,
                         OptionalInt stay, int best, boolean every) {

        /** Allowed numbers of nights and runs. */
        public static final Range BEST = new Range("number of nights to list", 1, 20_000, "");

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
        NightRanking ranking = new NightRanking(ephemeris, stars, wanted.trip, progress)
                .wanting(wanted.taste);
        List<NightRank> nights = wanted.every || wanted.stay.isPresent()
                ? ranking.nights(wanted.sites, wanted.evenings)
                : ranking.best(wanted.sites, wanted.evenings, wanted.best);
        List<Stay> stays = wanted.stay.isPresent()
                ? Stay.separate(NightRanking.stays(nights, wanted.stay.getAsInt())) : List.of();
        int ranked = wanted.evenings.stream().mapToInt(date -> Night.having(wanted.sites, date).size()).sum();
        return new Ranking(ranked, nights, nights.stream().limit(wanted.best)
                .map(rank -> shown(ephemeris, wanted, rank)).toList(),
                stays.stream().limit(wanted.best).map(stay -> new ShownStay(stay, stay.nights().stream()
                .map(rank -> shown(ephemeris, wanted, rank)).toList())).toList());
    }

    private static Shown shown(Ephemeris ephemeris, Wanted wanted, NightRank rank) {
        Night night = rank.night();
        Appearance later = ephemeris.appearance(Body.MOON, night.site(), night.middle().plus(HOUR));
        return new Shown(rank, later.illuminatedFraction() > rank.moon().illuminatedFraction(),
                wanted.trip.map(trip -> trip.forecast().clearShare(night.site(), night.darkness()))
                .orElse(OptionalDouble.empty()));
    }
}
