package gloam.journal;

import gloam.film.FilmStock;
import gloam.film.FittedReciprocity;
import gloam.film.FittedReciprocity.Doubt;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A film fitted to the sheets exposed on it; the published film is what was known before.
 *
 * <p><b>Model.</b> Bayes' rule. One law of reciprocity failure; on it a speed for each pack about that of
 * the film, an error of the light shared by a night's sheets at a site, a shift of the judge's words, a loss
 * by cold once sheets tell it, and an error of each sheet's own; see {@link Circumstances} for what is known
 * of them before and {@link Evidence} for what a sheet says. Speed and failure lie on a dense grid, first
 * over all films, then over those in question; the rest is integrated by {@link Laplace}'s approximation on
 * every film of it. <b>Valid.</b> Light like that of the sheets; beyond, the law is continued.
 * <b>Error.</b> Given by the posterior's spreads, which in simulated journals hold the truth as often as they
 * say: the law of the film, and the speed of the pack looked for, be there other packs or not.
 * <b>Departures.</b> A night's error is one for all directions and hours; sheets whose pack was not noted
 * count as one pack.
 *
 * @param prior       what was known before
 * @param posterior   what is known now
 * @param used        the sheets used
 * @param leftOut     the others, with the reason
 * @param strayNotes  used sheets that contradict the others
 * @param coveredToS  metered time, in seconds, of the sheet that told something in the dimmest light, or the
 *                    range of the published law if longer
 * @param pack        the pack that it is the film of; empty for one not opened yet
 * @param tonight     the night whose light the speed is told against; empty for light as computed
 * @param packs       the packs of the sheets used
 * @param nights      their nights
 * @param judgeStops  by how many stops words are too light
 * @param coldStopsPerDegree by how many stops a degree of cold makes the film slower, where the sheets show
 *                           it
 * @param warnings    what to look into
 */
public record FilmFit(Posterior prior, Posterior posterior, List<UsedSheet> used, List<LeftOut> leftOut,
                      List<StrayNote> strayNotes, double coveredToS, Optional<String> pack,
                      Optional<NightAtSite> tonight,
                      List<PackSpeed> packs, List<NightLight> nights, Estimate judgeStops,
                      Optional<Estimate> coldStopsPerDegree, List<FitWarning> warnings) {

    /** Copies the lists. */
    public FilmFit {
        used = List.copyOf(used);
        leftOut = List.copyOf(leftOut);
        strayNotes = List.copyOf(strayNotes);
        packs = List.copyOf(packs);
        nights = List.copyOf(nights);
        warnings = List.copyOf(warnings);
    }

    /**
     * A sheet used.
     *
     * @param entry     its entry
     * @param meteredS  its metered time in seconds on the published film
     * @param toneStops its tone as the fitted film of its pack has it in the light as computed
     * @param informative whether it says anything about the film
     */
    public record UsedSheet(Entry entry, double meteredS, Estimate toneStops, boolean informative) {
    }

    /** A sheet not used, and why. */
    public record LeftOut(String id, String reason) {
    }

    /**
     * A sheet that contradicts the others.
     *
     * @param id     its entry
     * @param what   the observation that does
     * @param chance probability that the observation is wrong, 0 to 1
     */
    public record StrayNote(String id, String what, double chance) {
    }

    /**
     * A pack of the film.
     *
     * @param pack             its name, empty for sheets of which none was noted
     * @param sheets           how many sheets of it were used
     * @param speedOffsetStops by how many stops it is slower than rated; minus is faster
     */
    public record PackSpeed(String pack, int sheets, Estimate speedOffsetStops) {
    }

    /**
     * A night's light.
     *
     * @param site       the site's name, empty if not noted
     * @param evening    the day on which the night began
     * @param sheets     how many sheets of it were used
     * @param usualStops standard deviation of a night's light before its sheets were judged, in stops
     * @param lightStops by how many stops it was brighter than computed or measured; minus is darker
     */
    public record NightLight(String site, LocalDate evening, int sheets, double usualStops,
            Estimate lightStops) {
    }

    /** The pack of sheets if they are from one; empty if from several, or there are none. */
    public static Optional<String> onlyPack(List<Entry> sheets) {
        List<String> packs = Circumstances.packs(sheets.stream().map(Entry::exposed).toList());
        return packs.size() == 1 ? Optional.of(packs.get(0)) : Optional.empty();
    }

    /**
     * Fits a published film to all its sheets, as the film of a pack, empty for one not opened yet; for a
     * sheet of a night its speed is told against that night's light if sheets have shown it: then nothing
     * more is uncertain of that.
     */
    public static FilmFit of(FilmStock published, List<Entry> sheets, Optional<String> pack,
            Optional<NightAtSite> tonight) {
        return new FitOfSheets(published, sheets, pack, tonight).fit();
    }

    /** The published film. */
    public FilmStock published() {
        return prior.grid().published();
    }

    /** How many sheets told something about the film. */
    public int informative() {
        return (int) used.stream().filter(UsedSheet::informative).count();
    }

    /** The fitted film, with the number of sheets; the published film if no sheet told anything about it. */
    public FilmStock film() {
        if (informative() == 0) {
            return published();
        }
        double scale = posterior.mean(posterior.grid().failureScales());
        Doubt doubt = posterior.doubt();
        return posterior.grid().film(used.size(), posterior.speedOffsetStops().mean(),
                law -> new FittedReciprocity(law, scale, coveredToS, doubt));
    }

    /**
     * Time in s to the mid-tone by the fitted film in a light that the published one meters at that many s.
     */
    public double correctedS(double publishedMeteredS) {
        FilmStock film = film();
        return film.reciprocity()
                .correctedS(publishedMeteredS * film.midToneLxS() / published().midToneLxS());
    }
}
