package gloam.cli;

import gloam.answer.NextExposure;
import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.journal.Journal;
import gloam.journal.NextSheet;
import gloam.journal.Verdict;
import gloam.light.SkyBrightness;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.units.Quantity;
import gloam.view.JournalNextReport;
import gloam.view.Report;
import java.time.Duration;
import java.util.Optional;

/** Advises the exposure of the next sheet. */
final class JournalNextCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final CameraOptions camera = group(new CameraOptions());

    private final Option<Input> trip = input("--trip", "FILE", "A trip file, for its film and camera.");

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "Pack or batch of the next sheet (default: the only one, else a new one).").byDefault("");

    private final Option<Quantity> skyMagArcsec2 = option("--sky-mag-arcsec2", "MAG", Quantity.class,
            "Brightness of the sky at the frame's centre, V mag/arcsec².").required();

    private final Option<Quantity> toneStops = option("--tone", "STOPS", Quantity.class,
            "Sky tone wanted, in stops from the film's mid-tone (default: ${DEFAULT-VALUE}).").byDefault("0");

    private final Option<Integer> sheets = option("--sheets", "N", Integer.class,
            "Sheets that may still be spent (default: ${DEFAULT-VALUE}).").byDefault("2");

    private final Option<Duration> shortest = option("--shortest", "DURATION", Duration.class,
            "Shortest exposure (default: ${DEFAULT-VALUE}).").byDefault("1m");

    private final Option<Duration> longest = option("--longest", "DURATION", Duration.class,
            "Longest exposure (default: ${DEFAULT-VALUE}).").byDefault("6h");

    JournalNextCommand(Session session) {
        super(session, "next",
                "Show which exposure to try next, and why.",
                "gloam journal next --journal demo-data/journal.jsonl --film instant-mono-640"
                + " --sky-mag-arcsec2 21.4 --f-number 8,11 --tone -1 --sheets 3");
    }

    @Override
    Report report(Session session) {
        FromOption.checked("--sheets", NextSheet.SHEETS_LEFT, sheets.get());
        Optional<Trip> read = trip.value().map(TripFile::read).map(TripFile.Reading::trip);
        FilmStock published = film.required(read.map(Trip::film));
        double tone = FromOption.checked("--tone", Verdict.TONE, toneStops.get());
        Journal known = journal.read(this::note);
        Lens lens = camera.lens(read.map(Trip::camera));
        SkyBrightness sky = SkyBrightness.ofMagArcsec2(
                FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, skyMagArcsec2.get()));
        NextExposure.Wanted wanted = FromOption.of("--longest", () -> new NextExposure.Wanted(lens, sky,
                shortest.get(), longest.get(), tone, sheets.get()));
        return JournalNextReport.of(NextExposure.of(published, known, batch.get(), wanted), session.now());
    }
}
