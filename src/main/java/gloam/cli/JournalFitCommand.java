package gloam.cli;

import gloam.answer.Fit;
import gloam.film.FilmStock;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.view.JournalFitReport;
import gloam.view.Report;

/** Fits a film to the sheets exposed on it. */
final class JournalFitCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final Option<Input> trip = input("--trip", "FILE", "A trip file, for its film.");

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "Pack or batch to find the film of (default: the only one, else a new one).").byDefault("");

    JournalFitCommand(Session session) {
        super(session, "fit",
                "Fit speed and reciprocity exponent of a film to its sheets.",
                "gloam journal fit --journal demo-data/journal.jsonl --film instant-mono-640");
    }

    @Override
    Report report(Session session) {
        FilmStock published = film.required(trip.value().map(TripFile::read).map(TripFile.Reading::trip)
                .map(Trip::film));
        return JournalFitReport.of(Fit.of(published, journal.read(this::note), batch.get()), session.now());
    }
}
