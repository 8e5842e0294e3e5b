package gloam.journal;

import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.film.FittedReciprocity;
import gloam.film.FittedReciprocity.Doubt;
import gloam.units.Label;
import gloam.units.Stops;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A film fitted to the sheets exposed on it; the published film is what was known before.
 *
 * <p><b>Model.</b> Bayes' rule on a dense grid of speed offset and reciprocity failure; see {@link FilmGrid}
 * and {@link Evidence}. <b>Valid.</b> Light like that of the sheets; beyond, the law is continued.
 * <b>Error.</b> Given by the posterior's spreads. <b>Departures.</b> One speed and one law for all sheets
 * given to it, whatever the temperature.
 *
 * @param prior       what was known before
 * @param posterior   what is known now
 * @param used        the sheets used
 * @param leftOut     the others, with the reason
 * @param strayNotes  used sheets that contradict the others
 * @param coveredToS  metered time, in seconds, of the sheet used in the dimmest light, or the range of the
 *                    published law if longer
 */
public record FilmFit(Posterior prior, Posterior posterior, List<UsedSheet> used, List<LeftOut> leftOut,
                      List<StrayNote> strayNotes, double coveredToS) {

    private static final double STRAY_FROM = 0.5;

    /** Copies the lists. */
    public FilmFit {
        used = List.copyOf(used);
        leftOut = List.copyOf(leftOut);
        strayNotes = List.copyOf(strayNotes);
    }

    /** A sheet used: its entry, its metered time in seconds on the published film, and its predicted tone. */
    public record UsedSheet(Entry entry, double meteredS, Estimate toneStops) {
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

    /** Fits a published film to its sheets. */
    public static FilmFit of(FilmStock published, List<Entry> sheets) {
        Posterior prior = Posterior.prior(new FilmGrid(published));
        List<LeftOut> leftOut = sheets.stream().filter(entry -> !usable(entry))
                .map(entry -> new LeftOut(entry.id(), reason(entry.outcome()))).toList();
        List<Judged> judged = sheets.stream().filter(FilmFit::usable)
                .map(entry -> Judged.of(prior.grid(), entry)).toList();
        Posterior posterior = prior;
        for (Judged sheet : judged) {
            for (Observation observation : sheet.observations) {
                posterior = posterior.with(observation.evidence);
            }
        }
        return of(prior, posterior, judged, leftOut);
    }

    private static FilmFit of(Posterior prior, Posterior posterior, List<Judged> judged,
            List<LeftOut> leftOut) {
        FilmStock published = prior.grid().published();
        List<UsedSheet> used = judged.stream().map(sheet -> new UsedSheet(sheet.entry,
                published.midToneLxS() / sheet.entry.exposed().middleLx(),
                posterior.estimate(sheet.tonesStops))).toList();
        List<StrayNote> strayNotes = judged.stream().flatMap(sheet -> sheet.observations.stream()
                .map(observation -> new StrayNote(sheet.entry.id(), observation.what,
                        posterior.strayChance(observation.evidence))))
                        .filter(note -> note.chance > STRAY_FROM).toList();
        double coveredToS = used.stream().mapToDouble(sheet -> roundedDown(sheet.meteredS))
                .reduce(published.reciprocity().coveredToS(), Math::max);
        return new FilmFit(prior, posterior, used, leftOut, strayNotes, coveredToS);
    }

    /** The published film. */
    public FilmStock published() {
        return prior.grid().published();
    }

    /** The fitted film, with the number of sheets; the published film if no sheet could be used. */
    public FilmStock film() {
        if (used.isEmpty()) {
            return published();
        }
        double scale = posterior.mean(posterior.grid().failureScales());
        Doubt doubt = posterior.doubt();
        return posterior.grid().film(used.size(), posterior.speedOffsetStops().mean(),
                law -> new FittedReciprocity(law, scale, coveredToS, doubt));
    }

    /** A metered time cut to two digits, which is all that a sky justifies. */
    private static double roundedDown(double seconds) {
        return BigDecimal.valueOf(seconds).round(new MathContext(2, RoundingMode.DOWN)).doubleValue();
    }

    private static boolean usable(Entry entry) {
        return entry.outcome().spoiledBy().isEmpty() && entry.outcome().judged();
    }

    private static String reason(Outcome outcome) {
        return outcome.spoiledBy().isEmpty() ? "not judged yet"
                : "spoiled by " + outcome.spoiledBy().stream()
                        .map(Label::words)
                        .collect(Collectors.joining(", "));
    }

    private record Observation(String what, Evidence evidence) {
    }

    private record Judged(Entry entry, double[] tonesStops, List<Observation> observations) {

        static Judged of(FilmGrid grid, Entry entry) {
            double[] tonesStops = grid.toneStops(entry.exposed().openings());
            List<Observation> observations = new ArrayList<>();
            entry.outcome().verdict().ifPresent(verdict ->
                    observations.add(new Observation("sky tone", Evidence.of(verdict, tonesStops))));
            entry.outcome().faintestMag().ifPresent(mag -> observations.add(new Observation("faintest star",
                    Evidence.ofFaintest(mag, limitsMag(grid, entry.exposed(), tonesStops)))));
            return new Judged(entry, tonesStops, observations);
        }

        private static double[] limitsMag(FilmGrid grid, Exposed exposed, double[] tonesStops) {
            double speedMmS = Math.max(exposed.stars().imageSpeedMmS(),
                    PassingStars.slowestMmS(exposed.lens(), Optional.empty()));
            return IntStream.range(0, grid.size()).parallel()
                    .mapToDouble(film -> TrailLimit.magnitude(new TrailLimit.Circumstances(grid.film(film),
                    exposed.lens(),
                            exposed.fNumber(), exposed.openS(), Stops.factor(tonesStops[film]),
                            exposed.middleLx(), speedMmS, exposed.stars().lossMag()))).toArray();
        }
    }
}
