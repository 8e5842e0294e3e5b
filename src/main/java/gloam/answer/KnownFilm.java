package gloam.answer;

import gloam.film.FilmStock;
import gloam.journal.Estimate;
import gloam.journal.FilmFit;
import gloam.journal.Journal;

/**
 * A film as a journal knows it.
 *
 * @param film             the film to use: the published one if no sheet of it was judged
 * @param used             number of sheets it is fitted to
 * @param speedOffsetStops by how many stops it is slower than rated; minus is faster
 * @param exponent         exponent of its reciprocity law
 */
public record KnownFilm(FilmStock film, int used, Estimate speedOffsetStops, Estimate exponent) {

    /** What a journal knows of a published film. */
    public static KnownFilm of(FilmStock published, Journal journal) {
        FilmFit fit = FilmFit.of(published, journal.of(published.name(), ""));
        return new KnownFilm(fit.film(), fit.used().size(), fit.posterior().speedOffsetStops(),
                fit.posterior().exponent());
    }
}
