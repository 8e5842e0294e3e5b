package gloam.cli;

import gloam.answer.Fit;
import gloam.film.FilmStock;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.store.FilmFile;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.view.JournalFitReport;
import gloam.view.Report;
import java.util.List;
import java.util.Optional;

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
        Journal sheets = journal.read(this::note);
        FilmStock published = film.required(trip.value().map(TripFile::read).map(TripFile.Reading::trip)
                .map(Trip::film).or(() -> film.named() ? Optional.empty() : onlyFilm(sheets)));
        return JournalFitReport.of(Fit.of(published, sheets, batch.get()), session.now());
    }

    /** The film of the journal's sheets, if they are all of one that is built in. */
    private static Optional<FilmStock> onlyFilm(Journal journal) {
        List<String> films = journal.films();
        if (films.size() > 1) {
            throw new BadInput("the journal has sheets of " + films.size() + " films, "
                    + String.join(", ", films) + "; use --film NAME|FILE");
        }
        return FilmFile.builtIns().stream().filter(known -> films.contains(known.name())).findFirst();
    }
}
