package gloam.cli;

import gloam.exposure.FilmPlane;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Lens;
import gloam.journal.FilmFit;
import gloam.journal.NextSheet;
import gloam.journal.Verdict;
import gloam.light.SkyBrightness;
import gloam.planner.Trip;
import gloam.report.JournalNextReport;
import gloam.report.Report;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Advises the exposure of the next sheet. */
@Command(name = "next", description = "Tell which exposure to try next, and why.",
        footer = "gloam journal next --journal demo-data/journal.jsonl --film instant-mono-640"
                + " --sky-mag-arcsec2 21.4 --f-number 8,11 --tone -1 --sheets 3")
final class JournalNextCommand extends ReportingCommand {

    @Mixin
    private JournalOptions journal;

    @Mixin
    private FilmOptions film;

    @Mixin
    private CameraOptions camera;

    @Option(names = "--trip", paramLabel = "FILE", description = "A trip file, for its film and camera.")
    private Optional<Path> trip;

    @Option(names = "--batch", paramLabel = "NAME", defaultValue = "",
            description = "Use only sheets of that pack or batch (default: all of the film).")
    private String batch;

    @Option(names = "--sky-mag-arcsec2", paramLabel = "MAG", required = true,
            description = "Brightness of the sky at the frame's centre, V mag/arcsec².")
    private Quantity skyMagArcsec2;

    @Option(names = "--tone", paramLabel = "STOPS", defaultValue = "0",
            description = "Sky tone wanted, in stops from the film's mid-tone (default: ${DEFAULT-VALUE}).")
    private Quantity toneStops;

    @Option(names = "--sheets", paramLabel = "N", defaultValue = "2",
            description = "Sheets that may still be spent (default: ${DEFAULT-VALUE}).")
    private int sheets;

    @Option(names = "--shortest", paramLabel = "DURATION", defaultValue = "1m",
            description = "Shortest exposure (default: ${DEFAULT-VALUE}).")
    private Duration shortest;

    @Option(names = "--longest", paramLabel = "DURATION", defaultValue = "6h",
            description = "Longest exposure (default: ${DEFAULT-VALUE}).")
    private Duration longest;

    JournalNextCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        FromOption.checked("--sheets", NextSheet.SHEETS_LEFT, sheets);
        Optional<Trip> read = trip.map(TripFile::read).map(TripFile.Reading::trip);
        FilmStock published = film.required(read.map(Trip::film));
        double tone = FromOption.checked("--tone", Verdict.TONE, toneStops);
        FilmFit fit = FilmFit.of(published, journal.read(this::note).of(published.name(), batch));
        return JournalNextReport.of(fit, new NextSheet(fit.posterior(), wanted(published, read.map(Trip::camera), tone))
                .advice(sheets), tone, sheets, session.now());
    }

    private NextSheet.Wanted wanted(FilmStock published, Optional<Camera> trips, double tone) {
        if (longest.compareTo(shortest) < 0) {
            throw new BadInput("the longest exposure is below the shortest; give a longer one (--longest)");
        }
        Lens lens = camera.lens(trips);
        SkyBrightness sky = SkyBrightness.ofMagArcsec2(FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, skyMagArcsec2));
        return new NextSheet.Wanted(FilmPlane.meteredS(published, lens, 1, sky), lens.fNumbers(),
                shortest.toMillis() / 1000.0, longest.toMillis() / 1000.0, tone);
    }
}
