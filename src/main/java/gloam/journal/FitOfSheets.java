package gloam.journal;

import gloam.film.FilmStock;
import gloam.journal.FilmFit.LeftOut;
import gloam.journal.FilmFit.NightLight;
import gloam.journal.FilmFit.PackSpeed;
import gloam.journal.FilmFit.StrayNote;
import gloam.journal.FilmFit.UsedSheet;
import gloam.units.Label;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Fits a film to sheets and looks at what the fit shows of them; see {@link FilmFit}. */
final class FitOfSheets {

    private static final double STRAY_FROM = 0.5;
    /** A sheet that tells less, in nats, tells nothing: a spread made narrower by a twentieth. */
    private static final double LEAST_TOLD_NATS = 0.05;

    /** How often a warning may come where nothing is off. */
    private static final double FALSE_ALARM = 0.1;
    /** What is off by less is not worth a warning. */
    private static final double LEAST_STOPS = 0.25;
    /** Up to where the judge counts as told apart from the film. */
    private static final double TOLD_APART_STOPS = 0.25;
    /** From where on packs are apart: in stops, and in standard deviations. */
    private static final double FAR_STOPS = 0.5;
    private static final double FAR_SDS = 1;
    private static final double HELD_BACK_STOPS = 0.5;
    /** One sheet does not tell its own error from its night's. */
    private static final int LEAST_SHEETS_OF_NIGHT = 2;

    private final FilmStock published;
    private final Optional<String> pack;
    private final Optional<NightAtSite> tonight;
    private final List<Entry> usable;
    private final List<LeftOut> leftOut;
    private final Circumstances circumstances;

    FitOfSheets(FilmStock published, List<Entry> sheets, Optional<String> pack,
            Optional<NightAtSite> tonight) {
        this.published = published;
        this.pack = pack;
        this.usable = sheets.stream().filter(FitOfSheets::usable).toList();
        this.tonight = tonight.filter(night -> usable.stream()
                .anyMatch(entry -> NightAtSite.of(entry.exposed()).equals(night)));
        this.leftOut = sheets.stream().filter(entry -> !usable(entry))
                .map(entry -> new LeftOut(entry.id(), reason(entry.outcome()))).toList();
        this.circumstances = Circumstances.of(exposed(usable), pack, this.tonight);
    }

    private static List<Exposed> exposed(List<Entry> sheets) {
        return sheets.stream().map(Entry::exposed).toList();
    }

    private static boolean usable(Entry entry) {
        return entry.outcome().spoiledBy().isEmpty() && entry.outcome().judged();
    }

    private static String reason(Outcome outcome) {
        return outcome.spoiledBy().isEmpty() ? "not judged yet"
                : "spoiled by " + outcome.spoiledBy().stream().map(Label::words)
                        .collect(Collectors.joining(", "));
    }

    FilmFit fit() {
        FilmGrid all = new FilmGrid(published);
        Posterior before = before(all);
        Fitting unseen = Fitting.of(all, List.of(), circumstances);
        Fitting rough = Fitting.of(all, usable, circumstances);
        Fitting fitting = Fitting.of(rough.posterior().closer(), usable, circumstances);
        List<UsedSheet> used = new ArrayList<>();
        for (int i = 0; i < usable.size(); i++) {
            used.add(used(fitting, fitting.sheets().get(i), rough.sheets().get(i).toldNats(before)));
        }
        double coveredToS = used.stream().filter(UsedSheet::informative)
                .mapToDouble(sheet -> roundedDown(sheet.meteredS()))
                .reduce(published.reciprocity().coveredToS(), Math::max);
        List<PackSpeed> packs = packs(fitting);
        List<NightLight> nights = nights(fitting);
        Estimate judge = fitting.estimate(Circumstances.judge());
        List<StrayNote> stray = strayNotes(fitting);
        return new FilmFit(before, fitting.posterior(), used, leftOut, stray, coveredToS, pack,
                tonight, packs, nights, judge, circumstances.meanC().isPresent()
                        ? Optional.of(fitting.estimate(Circumstances.cold())) : Optional.empty(),
                warnings(fitting.posterior(), stray, lighter(unseen, rough, used), packs, nights,
                        judge));
    }

    private Posterior before(FilmGrid grid) {
        return Fitting.of(grid, List.of(), Circumstances.of(List.of(), pack, tonight)).posterior();
    }

    private UsedSheet used(Fitting fitting, Judged sheet, double toldNats) {
        Exposed exposed = sheet.entry().exposed();
        return new UsedSheet(sheet.entry(), published.midToneLxS() / exposed.middleLx(),
                fitting.toneStops(sheet, circumstances.speed(exposed.batch())), toldNats >= LEAST_TOLD_NATS);
    }

    /** A metered time cut to two digits, which is all that a sky justifies. */
    private static double roundedDown(double seconds) {
        return BigDecimal.valueOf(seconds).round(new MathContext(2, RoundingMode.DOWN)).doubleValue();
    }

    private static List<StrayNote> strayNotes(Fitting fitting) {
        return fitting.sheets().stream().flatMap(sheet -> sheet.observations().stream()
                .map(observation -> new StrayNote(sheet.entry().id(), Label.words(observation.what()),
                        fitting.strayChance(observation))))
                .filter(note -> note.chance() > STRAY_FROM).toList();
    }

    private List<PackSpeed> packs(Fitting fitting) {
        return Circumstances.packs(exposed(usable)).stream().map(key -> {
            List<String> named = usable.stream().map(entry -> entry.exposed().batch())
                    .filter(name -> name.equalsIgnoreCase(key)).toList();
            Estimate slower = fitting.estimate(circumstances.speed(key));
            return new PackSpeed(named.get(0), named.size(),
                    new Estimate(published.speedOffsetStops() + slower.mean(), slower.sd()));
        }).toList();
    }

    private List<NightLight> nights(Fitting fitting) {
        return usable.stream().map(entry -> NightAtSite.of(entry.exposed())).distinct()
                .map(night -> new NightLight(night.site(), night.evening(), (int) usable.stream()
                        .filter(entry -> NightAtSite.of(entry.exposed()).equals(night)).count(),
                        night.spreadStops(), fitting.estimate(circumstances.light(night)))).toList();
    }

    private List<FitWarning> warnings(Posterior posterior, List<StrayNote> stray, Found lighter,
            List<PackSpeed> packs, List<NightLight> nights, Estimate judge) {
        List<FitWarning> warnings = new ArrayList<>();
        int doubted = (int) stray.stream().map(StrayNote::id).distinct().count();
        if (doubted > 1 && 2 * doubted > usable.size()) {
            warnings.add(new FitWarning.MostDoubted(doubted, usable.size()));
        }
        boolean toldApart = judge.sd() <= TOLD_APART_STOPS;
        if (!toldApart && lighter.surprising(1)) {
            warnings.add(new FitWarning.FarFromPublished(lighter.now.mean()));
        }
        Estimate offset = posterior.speedOffsetStops();
        Estimate alone = posterior.speedOffsetWithout(before(posterior.grid()));
        if (alone.sd() < FAR_STOPS && Math.abs(alone.mean() - offset.mean()) >= HELD_BACK_STOPS) {
            warnings.add(new FitWarning.HeldBack(alone.mean() - offset.mean()));
        }
        if (toldApart && new Found(judge, Circumstances.JUDGE_STOPS).surprising(1)) {
            warnings.add(new FitWarning.JudgeOff(judge.mean()));
        }
        List<NightLight> told = nights.stream().filter(night -> night.sheets() >= LEAST_SHEETS_OF_NIGHT)
                .toList();
        told.stream().filter(night -> new Found(night.lightStops(), night.usualStops())
                .surprising(told.size())).map(FitWarning.LightOff::new).forEach(warnings::add);
        Comparator<PackSpeed> slower = Comparator.comparingDouble(one -> one.speedOffsetStops().mean());
        packs.stream().max(slower).ifPresent(slowest -> {
            FitWarning.PacksApart apart =
                    new FitWarning.PacksApart(slowest, packs.stream().min(slower).orElseThrow());
            if (far(apart.stops(), Math.hypot(apart.slowest().speedOffsetStops().sd(),
                    apart.fastest().speedOffsetStops().sd()))) {
                warnings.add(apart);
            }
        });
        return warnings;
    }

    /**
     * By how many stops the sheets that told something came out lighter than on the published film, the judge
     * included.
     */
    private Found lighter(Fitting before, Fitting now, List<UsedSheet> used) {
        List<Fitting.Seen> seen = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            if (used.get(i).informative()) {
                Exposed exposed = used.get(i).entry().exposed();
                seen.add(new Fitting.Seen(now.sheets().get(i), circumstances.speed(exposed.batch()),
                        FilmGrid.publishedToneStops(published, exposed.openings())));
            }
        }
        return seen.isEmpty() ? new Found(new Estimate(0, 1), 1)
                : new Found(now.lighterStops(seen), before.lighterStops(seen).sd());
    }

    /**
     * What sheets say of something about which it was known how far it usually lies off.
     *
     * @param now    what is known now
     * @param usual  its standard deviation before
     */
    private record Found(Estimate now, double usual) {

        /**
         * Whether it lies off by something to speak of, and so far as sheets that nothing is wrong with lead
         * once in ten journals, where a journal asks of so many: what is known now lies off by what was
         * learnt, whose variance is that which is gone.
         */
        boolean surprising(int asked) {
            double learnt = Math.sqrt(Math.max(0, usual * usual - now.sd() * now.sd()));
            return Math.abs(now.mean()) > Math.max(LEAST_STOPS, learnt * new NormalDistribution()
                    .inverseCumulativeProbability(1 - FALSE_ALARM / 2 / asked));
        }
    }

    private static boolean far(double stops, double sd) {
        return Math.abs(stops) >= Math.max(FAR_STOPS, FAR_SDS * sd);
    }
}
