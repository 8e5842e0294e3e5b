package gloam.cli;

import gloam.exposure.FilmPlane;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.journal.FilmFit;
import gloam.journal.NextSheet;
import gloam.journal.Verdict;
import gloam.light.SkyBrightness;
import gloam.planner.Trip;
import gloam.view.JournalNextReport;
import gloam.view.Report;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.Optional;

/** Advises the exposure of the next sheet. */
final class JournalNextCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final CameraOptions camera = group(new CameraOptions());

    private final Option<Input> trip = input("--trip", "FILE", "A trip file, for its film and camera.");

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "Use only sheets of that pack or batch (default: all of the film).").byDefault("");

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
                "Tell which exposure to try next, and why.",
                "gloam journal next --journal demo-data/journal.jsonl --film instant-mono-640"
                + " --sky-mag-arcsec2 21.4 --f-number 8,11 --tone -1 --sheets 3");
    }

    @Override
    Report report(Session session) {
        FromOption.checked("--sheets", NextSheet.SHEETS_LEFT, sheets.get());
        Optional<Trip> read = trip.value().map(TripFile::read).map(TripFile.Reading::trip);
        FilmStock published = film.required(read.map(Trip::film));
        double tone = FromOption.checked("--tone", Verdict.TONE, toneStops.get());
        FilmFit fit = FilmFit.of(published, journal.read(this::note).of(published.name(), batch.get()));
        return JournalNextReport.of(fit, new NextSheet(fit.posterior(), wanted(published, read.map(Trip::camera), tone))
                .advice(sheets.get()), tone, sheets.get(), session.now());
    }

    private NextSheet.Wanted wanted(FilmStock published, Optional<Camera> trips, double tone) {
        if (longest.get().compareTo(shortest.get()) < 0) {
            throw new BadInput("the longest exposure is below the shortest; give a longer one (--longest)");
        }
        Lens lens = camera.lens(trips);
        SkyBrightness sky = SkyBrightness.ofMagArcsec2(
                FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, skyMagArcsec2.get()));
        return new NextSheet.Wanted(FilmPlane.meteredS(published, lens, FNumber.ONE, sky), lens.fNumbers(),
                shortest.get().toMillis() / 1000.0, longest.get().toMillis() / 1000.0, tone);
    }
}
