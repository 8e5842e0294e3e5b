package gloam.cli;

import gloam.answer.KnownFilm;
import gloam.film.FilmStock;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.view.FilmWords;
import java.util.Optional;
import java.util.function.Consumer;

/** Puts the film as the journal knows it in place of the published one, where a journal is given. */
final class FittedFilm extends OptionGroup {

    private final Option<Input> file = input("--journal", "FILE",
            "Use the film calibrated from this journal.");

    /** A film fitted; what was done goes to the notes. */
    FilmStock film(FilmStock published, Consumer<String> notes) {
        return journal(notes).map(journal -> fitted(journal, published, notes)).orElse(published);
    }

    /** A trip with its own film and that of every wish fitted. */
    Trip trip(Trip trip, Consumer<String> notes) {
        return journal(notes).map(journal -> trip.withFilms(film -> fitted(journal, film, notes)))
                .orElse(trip);
    }

    /** The journal, if one is given. */
    Optional<Journal> journal() {
        return file.value().map(path -> FromOption.of("--journal", () -> JournalFile.read(path.file())));
    }

    private Optional<Journal> journal(Consumer<String> notes) {
        return journal().map(journal -> {
            journal.damages().forEach(notes);
            return journal;
        });
    }

    private static FilmStock fitted(Journal journal, FilmStock published, Consumer<String> notes) {
        KnownFilm known = KnownFilm.of(published, journal);
        notes.accept(FilmWords.of(published.name(), known));
        return known.film();
    }
}
