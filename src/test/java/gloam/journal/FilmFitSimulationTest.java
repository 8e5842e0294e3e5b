package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Stops;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fit finds again the films that simulated journals were made on, and says when it cannot. */
class FilmFitSimulationTest {

    private static final int JOURNALS = 40;
    private static final int JOURNALS_OF_A_SEARCH = 300;
    private static final int JOURNALS_WARNED = 200;
    private static final Map<String, List<Fitted>> SEARCHED = new ConcurrentHashMap<>();
    private static final double DARK_METERED_S = 928;
    private static final double HALF_A_MAGNITUDE_STOPS = 0.5 * Math.log(Math.pow(10, 0.4)) / Math.log(2);

    /**
     * Journals of one kind.
     *
     * @param nights how many nights
     * @param sheets how many sheets each
     * @param packs  the packs, one sheet from each in turn
     * @param asked  the pack whose film is looked for
     * @param drawn  what is set rather than drawn
     * @param measured whether the first sheet of each night was measured
     */
    private record Kind(int nights, int sheets, List<String> packs, String asked,
                        UnaryOperator<Simulation> drawn, boolean measured) {

        static Kind of(int nights, int sheets) {
            return new Kind(nights, sheets, List.of("A"), "A", UnaryOperator.identity(), false);
        }

        Kind with(UnaryOperator<Simulation> set) {
            return new Kind(nights, sheets, packs, asked, set, measured);
        }

        Kind from(String... names) {
            return new Kind(nights, sheets, List.of(names), asked, drawn, measured);
        }

        Kind asking(String pack) {
            return new Kind(nights, sheets, packs, pack, drawn, measured);
        }

        Kind withMeasured() {
            return new Kind(nights, sheets, packs, asked, drawn, true);
        }

        List<Fitted> fitted(int journals) {
            return LongStream.range(0, journals).parallel().mapToObj(seed -> {
                Simulation truth = drawn.apply(new Simulation(20270206 + seed));
                List<Entry> journal = new ArrayList<>();
                for (int sheet = 0; sheet < nights * sheets; sheet++) {
                    String id = String.valueOf(sheet + 1);
                    String pack = packs.get(sheet % packs.size());
                    journal.add(measured && sheet % sheets == 0
                            ? truth.measuredSheet(id, pack, sheet / sheets)
                            : truth.anySheet(id, pack, sheet / sheets));
                }
                return new Fitted(truth, asked, FilmFit.of(Simulation.PUBLISHED, journal,
                        Optional.of(asked), Optional.empty()));
            }).toList();
        }
    }

    private record Fitted(Simulation truth, String asked, FilmFit fit) {

        boolean covered(double[] ofFilms, double truth, double share) {
            return truth >= fit.posterior().quantile(ofFilms, (1 - share) / 2)
                    && truth <= fit.posterior().quantile(ofFilms, (1 + share) / 2);
        }

        boolean warned(Class<? extends FitWarning> kind) {
            return fit.warnings().stream().anyMatch(kind::isInstance);
        }
    }

    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        assertHeldAsOftenAsSaid("2 nights of 4", Kind.of(2, 4).fitted(JOURNALS));
    }

    /**
     * The speed is that of the pack asked for, whatever other packs there are. Packs are drawn as packs are,
     * and kept where they lie so far apart: nothing says that they lie on both sides of the film.
     */
    @Tag("search")
    @Test
    void intervalsOfManyJournalsDoSoMoreNearly() {
        assertHeldAsOftenAsSaid("2 nights of 4", searched("2 nights of 4", Kind.of(2, 4)));
        assertHeldAsOftenAsSaid("16 nights of 1", Kind.of(16, 1).fitted(JOURNALS_OF_A_SEARCH));
        assertHeldAsOftenAsSaid("4 nights of 4", searched("4 nights of 4", Kind.of(4, 4)));
        assertHeldAsOftenAsSaid("packs 0.8 stop apart", searched("packs 0.8 stop apart", packsApart()));
        assertHeldAsOftenAsSaid("a pack not opened yet", Kind.of(4, 4).from("A", "B").asking("C")
                .fitted(JOURNALS_OF_A_SEARCH));
    }

    /** Ordinary journals are the measure of what a warning is worth. */
    @Tag("search")
    @Test
    void warningsComeWhereSomethingIsOff() {
        List<Fitted> eight = searched("2 nights of 4", Kind.of(2, 4));
        List<Fitted> sixteen = searched("4 nights of 4", Kind.of(4, 4));
        List<Fitted> judge = row("judge a class off", Kind.of(2, 4).with(one -> one.withJudge(1))
                .fitted(JOURNALS_WARNED));
        List<Fitted> light = lightOff("half a magnitude", HALF_A_MAGNITUDE_STOPS);
        List<Fitted> farOff = lightOff("a magnitude", 2 * HALF_A_MAGNITUDE_STOPS);
        List<Fitted> old = row("old pack", Kind.of(2, 4).with(one -> one.withPack("A", 2.5))
                .fitted(JOURNALS_WARNED));
        List<Fitted> apart = searched("packs 0.8 stop apart", packsApart());
        List<Fitted> measured = row("2 nights of 4, one each measured", Kind.of(2, 4).withMeasured()
                .fitted(JOURNALS_WARNED));
        List<Fitted> judgeMeasured = row("judge a class off, one each measured", Kind.of(2, 4).withMeasured()
                .with(one -> one.withJudge(1)).fitted(JOURNALS_WARNED));
        for (List<Fitted> ordinary : List.of(eight, sixteen, measured)) {
            for (Class<? extends FitWarning> kind : List.of(FitWarning.FarFromPublished.class,
                    FitWarning.HeldBack.class, FitWarning.JudgeOff.class, FitWarning.LightOff.class,
                    FitWarning.MostDoubted.class)) {
                // one in ten, and three standard errors of so many
                double share = share(ordinary, one -> one.warned(kind));
                assertTrue(share <= 0.1 + 3 * Math.sqrt(0.1 * 0.9 / ordinary.size()),
                        kind.getSimpleName() + ": " + share);
            }
        }
        // words alone hardly tell a judge from a film, measured tones do; the guide says these figures
        found(0.2, FitWarning.FarFromPublished.class, judge);
        found(0.85, FitWarning.FarFromPublished.class, old);
        found(0.7, FitWarning.JudgeOff.class, judgeMeasured);
        found(0.15, FitWarning.LightOff.class, light);
        found(0.8, FitWarning.LightOff.class, farOff);
        found(0.75, FitWarning.PacksApart.class, apart);
        found(0, FitWarning.PacksApart.class, sixteen);
    }

    private static List<Fitted> lightOff(String by, double stops) {
        return row("light of a night off by " + by, Kind.of(4, 4).with(one -> one.withNight(1, stops))
                .fitted(JOURNALS_WARNED));
    }

    /** A share to the next twentieth. */
    private static void found(double share, Class<? extends FitWarning> kind, List<Fitted> there) {
        assertEquals(share, share(there, one -> one.warned(kind)), 0.0251, kind.getSimpleName());
    }

    /** A row that several searches look at, computed once. */
    private static List<Fitted> searched(String kind, Kind of) {
        return SEARCHED.computeIfAbsent(kind, row -> row(row, of.fitted(JOURNALS_OF_A_SEARCH)));
    }

    private static Kind packsApart() {
        return Kind.of(4, 4).from("A", "B").with(one -> one.withPacksApart("A", "B", 0.8));
    }

    private static void assertHeldAsOftenAsSaid(String kind, List<Fitted> fitted) {
        row(kind, fitted);
        for (double share : new double[] {0.68, 0.95}) {
            // three standard errors of a share of so many
            double tolerance = 3 * Math.sqrt(share * (1 - share) / fitted.size());
            assertEquals(share, speeds(fitted, share), tolerance, kind + ": speed offset");
            assertEquals(share, exponents(fitted, share), tolerance, kind + ": exponent");
            assertEquals(share, times(fitted, share), tolerance, kind + ": two-hour exposure");
        }
    }

    private static double speeds(List<Fitted> fitted, double share) {
        return share(fitted, one -> one.covered(one.fit.posterior().grid().speedOffsetsStops(),
                one.truth.offsetStops(one.asked), share));
    }

    private static double exponents(List<Fitted> fitted, double share) {
        return share(fitted, one -> one.covered(one.fit.posterior().grid().exponents(), one.truth.exponent,
                share));
    }

    private static double times(List<Fitted> fitted, double share) {
        return share(fitted, one -> one.covered(one.fit.posterior().grid().log2CorrectedS(DARK_METERED_S),
                Stops.between(1, one.truth.midToneS(one.asked, DARK_METERED_S)), share));
    }

    private static List<Fitted> row(String kind, List<Fitted> fitted) {
        System.out.printf("TABLE %s | %d | %.2f %.2f | %.2f %.2f | %.2f %.2f | sd %.2f | far %.2f held %.2f "
                + "judge %.2f light %.2f apart %.2f%n", kind, fitted.size(), speeds(fitted, 0.68),
                speeds(fitted, 0.95), exponents(fitted, 0.68), exponents(fitted, 0.95), times(fitted, 0.68),
                times(fitted, 0.95), mean(fitted, one -> one.fit.posterior().speedOffsetStops().sd()),
                share(fitted, one -> one.warned(FitWarning.FarFromPublished.class)),
                share(fitted, one -> one.warned(FitWarning.HeldBack.class)),
                share(fitted, one -> one.warned(FitWarning.JudgeOff.class)),
                share(fitted, one -> one.warned(FitWarning.LightOff.class)),
                share(fitted, one -> one.warned(FitWarning.PacksApart.class)));
        return fitted;
    }

    @Test
    void eightSheetsOfTwoNightsNarrowTheSpreadOfATwoHourExposureByAThird() {
        // 928 s metered is 7200 s by the published exponent of 1.3
        double before = SteadyLight.of(Sheets.fit(Simulation.PUBLISHED, List.of()).prior(), DARK_METERED_S, 0)
                .times().spreadStops();
        double after = mean(Kind.of(2, 4).fitted(JOURNALS), one ->
                SteadyLight.of(one.fit.posterior(), DARK_METERED_S, 0).times().spreadStops());
        assertTrue(after <= before * 2 / 3, before + " stops before, " + after + " after");
    }

    private static double share(List<Fitted> fitted, Predicate<Fitted> held) {
        return (double) fitted.stream().filter(held).count() / fitted.size();
    }

    private static double mean(List<Fitted> fitted, ToDoubleFunction<Fitted> value) {
        return fitted.stream().mapToDouble(value).average().orElseThrow();
    }
}
