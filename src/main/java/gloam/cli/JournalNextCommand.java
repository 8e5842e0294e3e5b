package gloam.cli;

import gloam.answer.KnownSky;
import gloam.answer.NextExposure;
import gloam.answer.NextOfWish;
import gloam.exposure.Bracket;
import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.view.JournalNextReport;
import gloam.view.Report;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Advises the exposure of the next sheet. */
final class JournalNextCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final KnownSkyOptions sky = group(new KnownSkyOptions());

    private final SiteOptions place = group(new SiteOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final TripCameraOptions camera = group(new TripCameraOptions());

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "Pack or batch of the next sheet (default: the trip's, the only one, or a new one).");

    private final Option<String> wish = option("--wish", "NAME", String.class,
            "A wish of the trip, for tone, aim, film, f-numbers and exposure times.");

    private final Option<Quantity> toneStops = option("--tone", "STOPS", Quantity.class,
            "Sky tone wanted, in stops from the film's mid-tone (default: the wish's, else 0).");

    private final Option<Integer> sheets = option("--sheets", "N", Integer.class,
            "Sheets to spend on the picture; shows how to bracket (default: ${DEFAULT-VALUE}).")
            .byDefault("2");

    private final Option<Duration> shortest = option("--shortest", "DURATION", Duration.class,
            "Shortest exposure (default: the wish's, else 1m).");

    private final Option<Duration> longest = option("--longest", "DURATION", Duration.class,
            "Longest exposure (default: the wish's, else 6h).");

    JournalNextCommand(Session session) {
        super(session, "next",
                "Show which exposure to try next, and why.",
                "gloam journal next --journal demo-data/journal.jsonl --film instant-mono-640"
                + " --sky-mag-arcsec2 21.4 --f-number 8,11 --tone -1 --sheets 3");
    }

    @Override
    Report report(Session session) {
        FromOption.checked("--sheets", Bracket.SHEETS, sheets.get());
        Optional<TripFile.Reading> read = place.reading(session);
        Optional<Trip> trip = camera.of(read.map(TripFile.Reading::trip));
        Optional<NextOfWish> served = wish.value().map(name -> FromOption.of("--wish", () ->
                NextOfWish.of(trip.orElseThrow(() -> new BadInput("a wish is a trip's; add --trip FILE")),
                        name)));
        Optional<Wish> wished = served.map(NextOfWish::wish);
        FilmStock published = film.required(wished.flatMap(Wish::film).or(() -> trip.map(Trip::film)));
        double tone = toneStops.value().map(stops -> FromOption.checked("--tone", Wish.TONE, stops))
                .orElseGet(() -> served.map(NextOfWish::toneStops).orElse(0.0));
        Lens lens = camera.lens(trip.map(Trip::camera));
        Lens through = wished.map(Wish::fNumbers).filter(numbers -> !numbers.isEmpty()
                && !anyGiven("--f-number")).map(lens::with).orElse(lens);
        List<KnownSky> skies = sky.known(trip, () -> oneOf(place.sites(trip)));
        Journal known = journal.read(this::note);
        NextExposure.Wanted wanted = FromOption.of("--longest", () -> new NextExposure.Wanted(through, skies,
                shortest.value().or(() -> wished.map(Wish::shortest)).orElse(Duration.ofMinutes(1)),
                longest.value().or(() -> wished.map(Wish::longest)).orElse(Duration.ofHours(6)), tone,
                sheets.get(), served.filter(aims -> !anyGiven("--azimuth", "--altitude"))));
        String pack = batch.value().or(() -> read.flatMap(trips -> trips.batchOf(published.name())))
                .orElse("");
        return JournalNextReport.of(NextExposure.of(session::ephemeris, published, known, pack, wanted),
                session.now());
    }
}
