package gloam.view;

import gloam.journal.CurvePoint;
import gloam.journal.Estimate;
import gloam.journal.FilmFit;
import gloam.journal.Situation;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.Finite;
import gloam.units.Stops;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A film fitted to the journal.
 *
 * @param generatedAt            when the report was made
 * @param film                   the film's name
 * @param batch                  the pack or batch alone that was looked at
 * @param speedOffsetStops       stops by which it is slower than rated
 * @param exponent               exponent of its reciprocity law, local at 100 s metered where that is no power law
 * @param publishedSpeedOffsetStops the same two before the journal
 * @param publishedExponent      and how sure they were taken to be
 * @param correlation            of speed offset and exponent, -1 to 1
 * @param used                   how many sheets were used
 * @param leftOut                the others
 * @param contradicted           sheets that the others contradict
 * @param situations             what the journal changes in three lights
 * @param sheets                 the sheets used
 * @param curve                  corrected over metered time
 */
public record JournalFitReport(OffsetDateTime generatedAt, String film, Optional<String> batch,
                               EstimateRow speedOffsetStops, EstimateRow exponent, EstimateRow publishedSpeedOffsetStops,
                               EstimateRow publishedExponent, double correlation, int used, List<LeftOutRow> leftOut,
                               List<ContradictedRow> contradicted, List<SituationRow> situations, List<UsedRow> sheets,
                               List<CurveRow> curve) implements JournalReport {

    private static final double CURVE_FROM_S = 10;
    private static final double CURVE_TO_S = 3600;
    private static final double BEYOND_SHEETS = 1.5;

    /** The report of a fit. */
    public static JournalFitReport of(FilmFit fit, String batch, Instant now) {
        return new JournalFitReport(new SiteClock(ZoneOffset.UTC).asked(now), fit.published().name(),
                Optional.of(batch).filter(name -> !name.isEmpty()), EstimateRow.of(fit.posterior().speedOffsetStops()),
                EstimateRow.of(fit.posterior().exponent()), EstimateRow.of(fit.prior().speedOffsetStops()),
                EstimateRow.of(fit.prior().exponent()), fit.posterior().correlation(),
                fit.used().size(),
                fit.leftOut().stream().map(sheet -> new LeftOutRow(sheet.id(), sheet.reason())).toList(),
                fit.strayNotes().stream().map(note -> new ContradictedRow(note.id(), note.what(),
                        note.chance())).toList(),
                Situation.typical(fit).stream().map(SituationRow::of).toList(),
                fit.used().stream().map(UsedRow::of).toList(),
                CurvePoint.of(fit, CURVE_FROM_S, longestS(fit)).stream().map(CurveRow::of).toList());
    }

    private static double longestS(FilmFit fit) {
        return fit.used().stream().mapToDouble(sheet -> BEYOND_SHEETS * sheet.meteredS()).reduce(CURVE_TO_S, Math::max);
    }

    @Override
    public boolean empty() {
        return used == 0;
    }

    /** Mean and standard deviation. */
    public record EstimateRow(double mean, double sd) {

        static EstimateRow of(Estimate estimate) {
            return new EstimateRow(estimate.mean(), estimate.sd());
        }
    }

    /** A sheet not used, and why. */
    public record LeftOutRow(String id, String reason) {
    }

    /** A sheet that the others contradict, in what, and the chance that the note is wrong. */
    public record ContradictedRow(String id, String what, double chance) {
    }

    /** One light; the meanings of {@link Situation}. */
    public record SituationRow(String name, double meteredS, double publishedS, double fittedS, double leastS,
                               double mostS, double changeStops, double spreadBeforeStops, double spreadStops) {

        static SituationRow of(Situation light) {
            return new SituationRow(light.name(), light.meteredS(), light.publishedS(),
                    light.fittedS(), light.leastS(), light.mostS(),
                    Stops.between(light.publishedS(), light.fittedS()),
                    light.spreadBeforeStops(), light.spreadStops());
        }
    }

    /**
     * A sheet used.
     *
     * @param id              its entry
     * @param meteredS        metered time of the mid-tone on the published film, in s
     * @param openS           how long it was open
     * @param tone            the tone it was said to have
     * @param toneAboveStops  between what stops that lies, from the mid-tone
     * @param toneUpToStops   none where the word is open on that side
     * @param expectedToneStops what the fit expects of it
     */
    public record UsedRow(String id, double meteredS, double openS, String tone, OptionalDouble toneAboveStops,
                          OptionalDouble toneUpToStops, EstimateRow expectedToneStops) {

        static UsedRow of(FilmFit.UsedSheet sheet) {
            Optional<Verdict> verdict = sheet.entry().outcome().verdict();
            return new UsedRow(sheet.entry().id(), sheet.meteredS(), sheet.entry().exposed().openS(),
                    SheetRow.of(sheet.entry()).verdict(), bound(verdict, -1), bound(verdict, 1),
                    EstimateRow.of(sheet.toneStops()));
        }

        private static OptionalDouble bound(Optional<Verdict> verdict, int side) {
            if (verdict.isEmpty()) {
                return OptionalDouble.empty();
            }
            if (verdict.get() instanceof Verdict.InStops measured) {
                return OptionalDouble.of(measured.stops() + side * measured.spreadStops());
            }
            ToneWord word = ((Verdict.InWords) verdict.get()).word();
            return Finite.of(side < 0 ? word.aboveStops() : word.upToStops());
        }
    }

    /** A point of the curve; the meanings of {@link CurvePoint}. */
    public record CurveRow(double meteredS, double publishedS, double fittedS, double leastS, double mostS) {

        static CurveRow of(CurvePoint point) {
            return new CurveRow(point.meteredS(), point.publishedS(),
                    point.fittedS(), point.leastS(), point.mostS());
        }
    }
}
