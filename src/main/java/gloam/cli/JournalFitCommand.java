package gloam.cli;

import gloam.film.FilmStock;
import gloam.journal.FilmFit;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.report.JournalFitReport;
import gloam.report.Report;
import gloam.store.TripFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits a film to the sheets exposed on it. */
@Command(name = "fit", description = "Fit speed and reciprocity exponent of a film to its sheets.",
        footer = "gloam journal fit --journal demo-data/journal.jsonl --film instant-mono-640")
final class JournalFitCommand extends ReportingCommand {

    @Mixin
    private JournalOptions journal;

    @Mixin
    private FilmOptions film;

    @Option(names = "--trip", paramLabel = "FILE", description = "A trip file, for its film.")
    private Optional<Path> trip;

    @Option(names = "--batch", paramLabel = "NAME", defaultValue = "",
            description = "Use only sheets of that pack or batch (default: all of the film).")
    private String batch;

    JournalFitCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        FilmStock published = film.required(trip.map(TripFile::read).map(TripFile.Reading::trip).map(Trip::film));
        Journal read = journal.read(this::note);
        return JournalFitReport.of(FilmFit.of(published, read.of(published.name(), batch)), batch, session.now());
    }
}
