package gloam.cli;

import gloam.gear.Site;
import gloam.planner.NightRanking;
import gloam.planner.Stay;
import gloam.planner.Trip;
import gloam.report.NightsReport;
import gloam.report.Report;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Ranks nights. */
@Command(name = "nights", description = "Tell which nights suit, best first.",
        footer = "gloam nights --trip demo-data/trip.yaml --stay 2")
final class NightsCommand extends ReportingCommand {

    private static final Range NIGHTS = new Range("number of nights", 1, 3660, "");

    @Mixin
    private SiteOptions place;

    @Option(names = "--from", paramLabel = "DATE",
            description = "Evening of the first night (default: the trip's first).")
    private Optional<LocalDate> from;

    @Option(names = "--to", paramLabel = "DATE", description = "Evening of the last night (default: the trip's last).")
    private Optional<LocalDate> to;

    @Option(names = "--stay", paramLabel = "N",
            description = "Rank runs of N consecutive nights too (default: the trip's stay, if any).")
    private Optional<Integer> stay;

    NightsCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> reading = place.reading();
        Optional<Trip> trip = reading.map(TripFile.Reading::trip);
        List<Site> sites = place.sites(trip);
        List<LocalDate> dates = dates(trip);
        NightRanking ranking = new NightRanking(session.ephemeris());
        List<Stay> stays = stay.or(() -> reading.map(TripFile.Reading::stay).filter(nights -> nights.isPresent())
                        .map(nights -> nights.getAsInt()))
                .map(nights -> ranking.stays(sites, dates, checked(nights, dates))).orElse(List.of());
        return NightsReport.of(ranking.nights(sites, dates), stays, session.now());
    }

    private List<LocalDate> dates(Optional<Trip> trip) {
        LocalDate first = from.or(() -> trip.map(Trip::firstNight)).orElseThrow(() ->
                new BadInput("the nights are not said; give --from DATE and --to DATE, or --trip FILE"));
        LocalDate last = to.or(() -> trip.map(Trip::lastNight)).orElse(first);
        if (last.isBefore(first)) {
            throw new BadInput("the last night " + last + " is before the first, " + first + " (--to)");
        }
        FromOption.checked("--to", NIGHTS, ChronoUnit.DAYS.between(first, last) + 1);
        return first.datesUntil(last.plusDays(1)).toList();
    }

    private static int checked(int nights, List<LocalDate> dates) {
        return (int) FromOption.checked("--stay", new Range("stay", 1, dates.size(), "nights"), nights);
    }
}
