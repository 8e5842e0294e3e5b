package gloam.cli;

import gloam.answer.Ranking;
import gloam.gear.Site;
import gloam.planner.Evenings;
import gloam.planner.SkyTaste;
import gloam.planner.Trip;
import gloam.view.NightsReport;
import gloam.view.OutputFormat;
import gloam.view.Report;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Label;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.ITypeConverter;

/** Ranks nights. */
final class NightsCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final DateOptions evenings = group(new DateOptions());

    private final Option<Integer> stay = option("--stay", "N", Integer.class,
            "Also rank runs of N consecutive nights (default: the trip's stay, if any).");

    private final Option<Integer> best = option("--best", "N", Integer.class,
            "How many nights and stays to list (default: ${DEFAULT-VALUE}).").byDefault("10");

    private final Option<Boolean> all = flag("--all", "List every night and stay.");

    private final Option<List<Evenings>> free = repeated("--evenings", "WHICH", Evenings.class,
            "Only these: weekends (Friday and Saturday), a day such as fri, or a date. Repeatable.")
            .readBy(Evenings::of);

    private final Option<SkyTaste> taste = option("--for", "SKY", SkyTaste.class,
            "What the sky is wanted for without a trip: dark, moonlit or planets (default: dark).")
            .readBy(new Taste()).completedBy(Label.all(List.of(SkyTaste.values())));

    NightsCommand(Session session) {
        super(session, "nights",
                "Rank nights, best first, by what the trip's wishes would gain from each; without a trip by "
                + "darkness, moonlight or planets (--for).",
                "gloam nights --trip demo-data/trip.yaml --stay 2");
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> reading = place.reading(session);
        Optional<Trip> trip = reading.map(TripFile.Reading::trip);
        List<Site> sites = place.sites(trip);
        if (taste.given() && trip.filter(asked -> !asked.wishes().isEmpty()).isPresent()) {
            throw new BadInput("the trip's wishes say what the sky is wanted for; leave out --for");
        }
        List<LocalDate> between = evenings.dates(trip, sites);
        List<LocalDate> dates = free.get().isEmpty() ? between : FromOption.of("--evenings",
                () -> free.get().stream().reduce(Evenings::and).orElseThrow().among(between));
        int listed = all.given() ? Integer.MAX_VALUE
                : (int) FromOption.checked("--best", Ranking.Wanted.BEST, best.get());
        OptionalInt run = stay.given() ? OptionalInt.of(stay.get())
                : reading.isPresent() ? reading.get().stay() : OptionalInt.empty();
        SkyTaste wantedFor = taste.value().orElse(SkyTaste.DARK);
        Ranking.Wanted wanted = FromOption.of("--stay",
                () -> new Ranking.Wanted(sites, dates, trip, wantedFor, run, listed,
                        wants(OutputFormat.SVG) || wants(OutputFormat.HTML)));
        return NightsReport.of(Ranking.of(session.ephemeris(), session.stars(), wanted, progress("nights")),
                session.now());
    }

    /** A word for what a sky is wanted for. */
    private static final class Taste implements ITypeConverter<SkyTaste> {

        @Override
        public SkyTaste convert(String text) {
            return OutcomeOptions.constant(text, SkyTaste.values());
        }
    }
}
