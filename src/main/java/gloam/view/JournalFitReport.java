package gloam.view;

import gloam.answer.Fit;
import gloam.journal.CurvePoint;
import gloam.journal.Estimate;
import gloam.journal.FilmFit;
import gloam.journal.Situation;
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
 * @param batch                  the pack or batch that it is the film of; absent for one not opened yet, and
 *                               where no sheet has one
 * @param speedOffsetStops       by how many stops it is slower than rated; minus is faster
 * @param exponent               exponent of its reciprocity law; local at 100 s metered if it is no power law
 * @param publishedSpeedOffsetStops the same before any sheet was judged
 * @param publishedExponent      the exponent before any sheet was judged
 * @param correlation            correlation of speed offset and exponent, -1 to 1
 * @param used                   how many sheets were used
 * @param informative            how many of them say something about the film
 * @param coveredToS             metered time in seconds up to which the law is backed by sheets or its source
 * @param packs                  the packs of the sheets used
 * @param nights                 their nights, and by how much the light of each was off
 * @param judgeStops             by how many stops tones in words are too light; minus is too dark
 * @param coldStopsPerDegree     by how many stops a degree of cold makes the film slower; absent until enough
 *                               sheets at different temperatures show it
 * @param warnings               what to look into
 * @param leftOut                the sheets not used, with the reason
 * @param contradicted           used sheets that contradict the others
 * @param situations             what the fit changes in three typical lights
 * @param sheets                 the sheets used
 * @param curve                  points of corrected over metered time
 */
public record JournalFitReport(OffsetDateTime generatedAt, String film, Optional<String> batch,
                               Estimate speedOffsetStops, Estimate exponent,
                               Estimate publishedSpeedOffsetStops,
                               Estimate publishedExponent, double correlation, int used, int informative,
                               double coveredToS, List<FilmFit.PackSpeed> packs,
                               List<FilmFit.NightLight> nights, Estimate judgeStops,
                               Optional<Estimate> coldStopsPerDegree, List<String> warnings,
                               List<FilmFit.LeftOut> leftOut,
                               List<FilmFit.StrayNote> contradicted, List<FitSituationRow> situations,
                               List<UsedRow> sheets, List<CurvePoint> curve) implements Report {

    /** Reports a fit. */
    public static JournalFitReport of(Fit answer, Instant now) {
        FilmFit fit = answer.film();
        return new JournalFitReport(new SiteClock(ZoneOffset.UTC).at(now), fit.published().name(),
                fit.packs().stream().map(FilmFit.PackSpeed::pack)
                        .filter(name -> fit.pack().filter(name::equalsIgnoreCase).isPresent()).findFirst()
                        .or(fit::pack).filter(name -> !name.isEmpty()),
                fit.posterior().speedOffsetStops(),
                fit.posterior().exponent(), fit.prior().speedOffsetStops(), fit.prior().exponent(),
                fit.posterior().correlation(), fit.used().size(), fit.informative(), fit.coveredToS(),
                fit.packs(), fit.nights(), fit.judgeStops(), fit.coldStopsPerDegree(),
                fit.warnings().stream().map(FitWords::of).toList(), fit.leftOut(), fit.strayNotes(),
                answer.situations().stream().map(FitSituationRow::of).toList(),
                answer.used().stream().map(UsedRow::of).toList(), answer.curve());
    }

    @Override
    public boolean empty() {
        return used == 0;
    }

    @Override
    public Document document() {
        Document document = Document.headed("Film " + film() + batch().map(batch -> ", " + batch)
                .orElse(packs().size() > 1 ? ", a new pack" : "") + ": " + Wording.count(used(), "sheet")
                + " used, " + leftOut().size() + " left out");
        document.gap();
        document.under(FilmWords.slower(speedOffsetStops()) + " than rated (published "
                + FilmWords.estimate(publishedSpeedOffsetStops()) + ")");
        document.under("reciprocity exponent " + FilmWords.estimate(exponent()) + " (published "
                + FilmWords.estimate(publishedExponent()) + ")");
        document.under("correlation of the two " + Wording.signed(correlation(), 2));
        document.gap();
        document.figure("the fitted curve", made -> JournalCurveDrawing.of(this, made));
        document.add(situationsTable());
        if (packs().size() > 1) {
            document.gap();
            document.add(packsTable());
        }
        document.add(sheetsPart());
        document.gap();
        document.text("Spreads are standard deviations; a time lies outside its least and most once in "
                + "twenty. The fit is trusted to " + Wording.exposure(coveredToS())
                + " metered. The sheets of "
                + "a night at a site share the error of its light. plan and expose use this film when given "
                + "--journal.");
        return document;
    }

    private Table situationsTable() {
        Table table = new Table(Table.words("light"), Table.numbers("metered").leaving(2),
                Table.numbers("published"),
                Table.numbers("fitted"), Table.numbers("least"), Table.numbers("most"),
                Table.numbers("change", "stops").leaving(3),
                Table.numbers("±", "stops").leaving(3), Table.numbers("was ±", "stops").leaving(1));
        situations().forEach(light -> table.row(light.name(), Wording.exposure(light.meteredS()),
                Wording.exposure(light.publishedS()), Wording.exposure(light.fittedS()),
                Wording.exposure(light.leastS()),
                Wording.exposure(light.mostS()), Wording.signed(light.changeStops(), 1),
                Wording.number(light.spreadStops(), 1), Wording.number(light.spreadBeforeStops(), 1)));
        return table;
    }

    private Table packsTable() {
        Table table = new Table(Table.words(""), Table.numbers("sheets"),
                Table.numbers("slower", "stops"), Table.numbers("±", "stops"));
        packs().forEach(one -> table.row(one.pack().isEmpty() ? "not noted" : one.pack(),
                String.valueOf(one.sheets()), Wording.signed(one.speedOffsetStops().mean(), 2),
                Wording.number(one.speedOffsetStops().sd(), 2)));
        return table;
    }

    private Document sheetsPart() {
        Document document = Document.part();
        if (!warnings().isEmpty() || !contradicted().isEmpty() || !leftOut().isEmpty()) {
            document.gap();
        }
        warnings().forEach(document::under);
        contradicted().forEach(sheet -> document.under("entry " + sheet.id()
                + " is contradicted by the others in its "
                + sheet.what() + " (wrong with a chance of " + Wording.percent(sheet.chance())
                + "); look again"));
        leftOut().forEach(sheet -> document.under("entry " + sheet.id() + " left out: " + sheet.reason()));
        return document;
    }

    /** One light, with the meanings of {@link Situation}. */
    public record FitSituationRow(String name, double meteredS, double publishedS, double fittedS,
            double leastS,
                               double mostS, double changeStops, double spreadBeforeStops,
                               double spreadStops) {

        static FitSituationRow of(Situation light) {
            return new FitSituationRow(light.name(), light.meteredS(), light.publishedS(),
                    light.fittedS(), light.leastS(), light.mostS(),
                    light.changeStops(),
                    light.spreadBeforeStops(), light.spreadStops());
        }
    }

    /**
     * A sheet used.
     *
     * @param id              its entry
     * @param meteredS        metered time of the mid-tone on the published film, in seconds
     * @param openS           exposure time in seconds
     * @param tone            its tone as judged, or as a scan showed it
     * @param toneAboveStops  darkest tone that this stands for, in stops from the mid-tone; absent if there
     *                        is no bound
     * @param toneUpToStops   lightest one; absent if there is no bound
     * @param expectedToneStops its tone as the fitted film of its pack has it in the light as computed, in
     *                        stops from the mid-tone
     * @param informative     whether it says anything about the film
     */
    public record UsedRow(String id, double meteredS, double openS, String tone,
            OptionalDouble toneAboveStops,
                          OptionalDouble toneUpToStops, Estimate expectedToneStops, boolean informative) {

        static UsedRow of(Fit.Judged judged) {
            FilmFit.UsedSheet sheet = judged.sheet();
            return new UsedRow(sheet.entry().id(), sheet.meteredS(), sheet.entry().exposed().openS(),
                    sheet.entry().outcome().tone().map(SheetRow::words).orElse(""), judged.aboveStops(),
                    judged.upToStops(),
                    sheet.toneStops(), sheet.informative());
        }
    }
}
