package gloam.answer;

import gloam.film.FilmStock;
import gloam.journal.Entry;
import gloam.journal.Estimate;
import gloam.journal.FilmFit;
import gloam.journal.Journal;
import gloam.journal.NightAtSite;
import java.util.List;
import java.util.Optional;

/**
 * A film as a journal knows it.
 *
 * @param film             the film to use: the published one if no sheet of it was judged
 * @param used             number of sheets it is fitted to
 * @param speedOffsetStops by how many stops it is slower than rated; minus is faster
 * @param exponent         exponent of its reciprocity law
 * @param pack             the pack that was asked for; empty if none was
 */
public record KnownFilm(FilmStock film, int used, Estimate speedOffsetStops, Estimate exponent,
        Optional<Pack> pack) {

    /**
     * A pack of the film.
     *
     * @param name its name
     * @param used how many of the sheets that the film is fitted to are of it
     */
    public record Pack(String name, int used) {
    }

    /** What a journal knows of a published film, of one pack or batch of it if that is named. */
    public static KnownFilm of(FilmStock published, Journal journal, Optional<String> batch) {
        FilmFit fit = fit(published, journal, batch.orElse(""));
        return new KnownFilm(fit.film(), fit.film().fittedToSheets(), fit.posterior().speedOffsetStops(),
                fit.posterior().exponent(), batch.filter(name -> !name.isEmpty())
                        .map(name -> new Pack(name, used(fit, name))));
    }

    private static int used(FilmFit fit, String batch) {
        return fit.packs().stream().filter(pack -> pack.pack().equalsIgnoreCase(batch))
                .mapToInt(FilmFit.PackSpeed::sheets).sum();
    }

    /** The fit of a published film to its sheets in a journal, as the film of a pack if one is named. */
    static FilmFit fit(FilmStock published, Journal journal, String batch) {
        return fit(published, journal, batch, Optional.empty());
    }

    /** The same for a sheet of a night. */
    static FilmFit fit(FilmStock published, Journal journal, String batch, Optional<NightAtSite> tonight) {
        List<Entry> sheets = journal.of(published.name(), "");
        return FilmFit.of(published, sheets, batch.isEmpty() ? FilmFit.onlyPack(sheets) : Optional.of(batch),
                tonight);
    }
}
