package gloam.cli;

import gloam.answer.Ranking;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.view.NightsReport;
import gloam.view.Report;
import gloam.store.TripFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Ranks nights. */
final class NightsCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final DateOptions evenings = group(new DateOptions());

    private final Option<Integer> stay = option("--stay", "N", Integer.class,
            "Also rank runs of N consecutive nights (default: the trip's stay, if any).");

    NightsCommand(Session session) {
        super(session, "nights",
                "Rank nights, best first, by what the trip's wishes would gain from each; without a trip by "
                + "darkness, moonlight and planets.",
                "gloam nights --trip demo-data/trip.yaml --stay 2");
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> reading = place.reading(session);
        Optional<Trip> trip = reading.map(TripFile.Reading::trip);
        List<Site> sites = place.sites(trip);
        List<LocalDate> dates = evenings.dates(trip, sites);
        OptionalInt run = stay.given() ? OptionalInt.of(stay.get())
                : reading.isPresent() ? reading.get().stay() : OptionalInt.empty();
        Ranking.Wanted wanted = FromOption.of("--stay", () -> new Ranking.Wanted(sites, dates, trip, run));
        return NightsReport.of(Ranking.of(session.ephemeris(), session.stars(), wanted, progress("nights")),
                session.now());
    }
}
