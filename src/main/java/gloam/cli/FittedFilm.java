package gloam.cli;

import gloam.answer.KnownFilm;
import gloam.film.FilmStock;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.store.TripFile;
import gloam.store.TripJournal;
import gloam.view.FilmWords;
import java.util.Optional;
import java.util.function.Consumer;

/** Puts the film as the journal knows it in place of the published one, where a journal is given. */
final class FittedFilm extends OptionGroup {

    private static final String OPTION = "--journal";

    private final Option<Input> file = input(OPTION, "FILE",
            "Use the film calibrated from this journal (default: the trip's).");

    /** A film fitted; what was done goes to the notes. */
    FilmStock film(FilmStock published, Optional<TripFile.Reading> trip, Consumer<String> notes) {
        return journal(trip, notes).map(known -> fitted(known.journal, published, notes)).orElse(published);
    }

    /** A trip with its own film and that of every wish fitted. */
    static Trip trip(Trip trip, Optional<Known> known, Consumer<String> notes) {
        return known.map(kept -> trip.withFilms(film -> fitted(kept.journal, film, notes))).orElse(trip);
    }

    /** The journal given, or else that of the trip; what in it is damaged goes to the notes. */
    Optional<Known> journal(Optional<TripFile.Reading> trip, Consumer<String> notes) {
        Optional<Known> known = file.value()
                .map(path -> FromOption.of(OPTION, () -> new Known(JournalFile.read(path.file()), OPTION)))
                .or(() -> trip.flatMap(TripFile.Reading::journal).flatMap(named -> known(named, notes)));
        known.ifPresent(kept -> kept.journal.damages().forEach(notes));
        return known;
    }

    private static Optional<Known> known(TripJournal named, Consumer<String> notes) {
        if (!named.begun()) {
            notes.accept("the trip's journal " + named.file() + " is not there yet; the film is taken as "
                    + "published");
        }
        return named.read().map(journal -> new Known(journal, named.where()));
    }

    private static FilmStock fitted(Journal journal, FilmStock published, Consumer<String> notes) {
        KnownFilm known = KnownFilm.of(published, journal);
        notes.accept(FilmWords.of(published.name(), known));
        return known.film();
    }

    /** A journal, and the option or the place in the trip that names it. */
    record Known(Journal journal, String from) {
    }
}
