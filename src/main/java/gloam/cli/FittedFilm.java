package gloam.cli;

import gloam.answer.KnownFilm;
import gloam.film.FilmStock;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.JournalFile;
import java.util.Locale;
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
        return journal(notes).map(journal -> trip.withFilms(film -> fitted(journal, film, notes))).orElse(trip);
    }

    private Optional<Journal> journal(Consumer<String> notes) {
        return file.value().map(path -> FromOption.of("--journal", () -> JournalFile.read(path.file()))).map(journal -> {
            journal.damages().forEach(notes);
            return journal;
        });
    }

    private static FilmStock fitted(Journal journal, FilmStock published, Consumer<String> notes) {
        KnownFilm known = KnownFilm.of(published, journal);
        notes.accept(known.used() == 0
                ? "the journal has no judged sheet of " + published.name() + ", which is taken as published"
                : String.format(Locale.ROOT, "%s (fitted to %s): slower than rated by %+.2f ± %.2f stops, exponent %.2f ± %.2f",
                        published.name(), known.used() == 1 ? "1 sheet" : known.used() + " sheets",
                        known.speedOffsetStops().mean(), known.speedOffsetStops().sd(),
                        known.exponent().mean(), known.exponent().sd()));
        return known.film();
    }
}
