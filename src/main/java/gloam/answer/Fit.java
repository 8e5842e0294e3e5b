package gloam.answer;

import gloam.film.FilmStock;
import gloam.journal.CurvePoint;
import gloam.journal.FilmFit;
import gloam.journal.Journal;
import gloam.journal.ScanReading;
import gloam.journal.Situation;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.Finite;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A film fitted to the journal.
 *
 * @param film       the fit
 * @param batch      the pack or batch asked for; empty if none was
 * @param situations what the fit changes in three typical lights
 * @param used       the sheets used
 * @param curve      points of corrected over metered time
 */
public record Fit(FilmFit film, String batch, List<Situation> situations, List<Judged> used,
        List<CurvePoint> curve) {

    private static final double CURVE_FROM_S = 10;
    private static final double CURVE_TO_S = 3600;
    private static final double BEYOND_SHEETS = 1.5;

    /** Copies the lists. */
    public Fit {
        situations = List.copyOf(situations);
        used = List.copyOf(used);
        curve = List.copyOf(curve);
    }

    /**
     * A sheet used.
     *
     * @param sheet      the sheet and what the fit expects of it
     * @param aboveStops darkest tone that its judgement stands for, in stops from the mid-tone; empty if
     *                   there is no bound or no judgement
     * @param upToStops  lightest one, likewise
     */
    public record Judged(FilmFit.UsedSheet sheet, OptionalDouble aboveStops, OptionalDouble upToStops) {

        private static Judged of(FilmFit.UsedSheet sheet) {
            return new Judged(sheet, bound(sheet, -1), bound(sheet, 1));
        }

        private static OptionalDouble bound(FilmFit.UsedSheet sheet, int side) {
            return sheet.entry().outcome().tone().map(verdict -> bound(verdict, side))
                    .orElse(OptionalDouble.empty());
        }

        private static OptionalDouble bound(Verdict verdict, int side) {
            if (verdict instanceof Verdict.InStops measured) {
                return OptionalDouble.of(measured.stops() + side * measured.spreadStops());
            }
            if (verdict instanceof Verdict.OfScan scan) {
                boolean open = scan.tone().bound()
                        == (side < 0 ? ScanReading.Bound.AT_MOST : ScanReading.Bound.AT_LEAST);
                return open ? OptionalDouble.empty()
                        : OptionalDouble.of(scan.tone().stops() + side * scan.tone().errorStops());
            }
            ToneWord word = ((Verdict.InWords) verdict).word();
            return Finite.of(side < 0 ? word.aboveStops() : word.upToStops());
        }
    }

    /**
     * The fit of a published film to its sheets in a journal.
     *
     * @param batch the pack or batch whose film to find; empty for that of all sheets if they are from one,
     *              else for one not opened yet
     */
    public static Fit of(FilmStock published, Journal journal, String batch) {
        FilmFit fit = KnownFilm.fit(published, journal, batch);
        return new Fit(fit, batch, Situation.typical(fit), fit.used().stream().map(Judged::of).toList(),
                CurvePoint.of(fit, CURVE_FROM_S, longestS(fit)));
    }

    private static double longestS(FilmFit fit) {
        return fit.used().stream().mapToDouble(sheet -> BEYOND_SHEETS * sheet.meteredS())
                .reduce(CURVE_TO_S, Math::max);
    }
}
