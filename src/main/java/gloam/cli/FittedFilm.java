package gloam.cli;

import gloam.answer.KnownFilm;
import gloam.film.FilmStock;
import gloam.journal.Exposed;
import gloam.journal.Journal;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.store.TripFile;
import gloam.store.TripJournal;
import gloam.units.BadInput;
import gloam.view.FilmWords;
import java.util.Optional;
import java.util.function.Consumer;

/** Puts the film as the journal knows it in place of the published one, where a journal is given. */
final class FittedFilm extends OptionGroup {

    private static final String OPTION = "--journal";
    private static final String BATCH = "--batch";

    private final Option<Input> file = input(OPTION, "FILE",
            "Use the film calibrated from this journal (default: the trip's).");

    private final Option<String> batch = option(BATCH, "NAME", String.class,
            "The film's pack in that journal (default: the trip's, the only one, or a new one).");

    /** A film fitted; what was done goes to the notes. */
    FilmStock film(FilmStock published, Optional<TripFile.Reading> trip, Consumer<String> notes) {
        return journal(trip, notes).map(known -> fitted(known.journal, published,
                batch().or(() -> trip.flatMap(read -> read.batchOf(published.name()))), notes))
                .orElse(published);
    }

    /**
     * A trip with its own film, of the pack named, and that of every wish fitted; of other films no pack is
     * named.
     */
    Trip trip(Trip trip, TripFile.Reading read, Optional<Known> known, Consumer<String> notes) {
        String own = trip.film().name();
        return known.map(kept -> trip.withFilms(film -> fitted(kept.journal, film,
                batch().or(read::batch).filter(name -> film.name().equals(own)), notes))).orElse(trip);
    }

    /** The journal given, or else that of the trip; what in it is damaged goes to the notes. */
    Optional<Known> journal(Optional<TripFile.Reading> trip, Consumer<String> notes) {
        Optional<TripJournal> trips = trip.flatMap(TripFile.Reading::journal);
        if (batch.given() && !file.given() && trips.isEmpty()) {
            throw new BadInput("--batch names a pack in a journal; add --journal FILE");
        }
        Optional<Known> known = file.value()
                .map(path -> FromOption.of(OPTION, () -> new Known(JournalFile.read(path.file()), OPTION)))
                .or(() -> trips.flatMap(named -> known(named, notes)));
        known.ifPresent(kept -> kept.journal.damages().forEach(notes));
        return known;
    }

    private Optional<String> batch() {
        return batch.value().map(name -> FromOption.of(BATCH, () -> Exposed.batch(name)));
    }

    private static Optional<Known> known(TripJournal named, Consumer<String> notes) {
        if (!named.begun()) {
            notes.accept("the trip's journal " + named.file() + " is not there yet; the film is taken as "
                    + "published");
        }
        return named.read().map(journal -> new Known(journal, named.where()));
    }

    private static FilmStock fitted(Journal journal, FilmStock published, Optional<String> batch,
            Consumer<String> notes) {
        KnownFilm known = KnownFilm.of(published, journal, batch);
        notes.accept(FilmWords.of(published.name(), known));
        return known.film();
    }

    /** A journal, and the option or the place in the trip that names it. */
    record Known(Journal journal, String from) {
    }
}
