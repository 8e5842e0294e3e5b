package gloam.answer;

import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What of a trip a journal has seen: its sheets that are not withdrawn, exposed at one of the trip's sites in
 * one of its nights. Each is spent; those that were kept, or of which nothing else is known, and that name a
 * wish of the trip have served it.
 *
 * @param sheets how many sheets are spent
 * @param served names of the wishes served, each as often as it was, at most as often as it is wanted
 * @param until  when the last of them was closed
 */
public record Gone(int sheets, List<String> served, Optional<Instant> until) {

    /** Copies the list. */
    public Gone {
        served = List.copyOf(served);
    }

    /** What a journal has seen of a trip. */
    public static Gone of(Trip trip, Journal journal) {
        List<Entry> sheets = journal.sheets().stream().filter(entry -> during(trip, entry)).toList();
        return new Gone(sheets.size(), trip.wishes().stream()
                .flatMap(wish -> sheets.stream().filter(entry -> serves(entry, wish)).limit(wish.repeat())
                .map(entry -> wish.name())).toList(),
                sheets.stream().map(entry -> entry.exposed().whole().endExclusive()).max(Instant::compareTo));
    }

    private static boolean serves(Entry entry, Wish wish) {
        return entry.serves() && entry.wish().filter(wish.name()::equals).isPresent();
    }

    private static boolean during(Trip trip, Entry entry) {
        return trip.sites().stream().anyMatch(site ->
                entry.exposed().place().filter(place -> place.name().equals(site.name())).isPresent()
                && nights(trip, site).contains(entry.exposed().whole().start()));
    }

    private static Interval nights(Trip trip, Site site) {
        List<LocalDate> dates = trip.dates();
        return Interval.span(List.of(Night.spanOf(site, dates.get(0)),
                Night.spanOf(site, dates.get(dates.size() - 1))));
    }
}
