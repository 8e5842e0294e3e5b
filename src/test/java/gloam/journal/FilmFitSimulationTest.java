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
    private static final int JOURNALS_OF_A_SEARCH = 200;
    private static final Map<String, List<Fitted>> SEARCHED = new ConcurrentHashMap<>();
    private static final double DARK_METERED_S = 928;
    private static final double HALF_A_MAGNITUDE_STOPS = 0.5 * Math.log(Math.pow(10, 0.4)) / Math.log(2);

    /**
     * Journals of one kind.
     *
     * @param nights how many nights
     * @param sheets how many sheets each
     * @param packs  the packs, one sheet from each in turn
     * @param drawn  what is set rather than drawn
     * @param measured whether the first sheet of each night was measured
     */
    private record Kind(int nights, int sheets, List<String> packs, UnaryOperator<Simulation> drawn,
                        boolean measured) {

        static Kind of(int nights, int sheets) {
            return new Kind(nights, sheets, List.of("A"), UnaryOperator.identity(), false);
        }

        Kind with(UnaryOperator<Simulation> set) {
            return new Kind(nights, sheets, packs, set, measured);
        }

        Kind from(String... names) {
            return new Kind(nights, sheets, List.of(names), drawn, measured);
        }

        Kind withMeasured() {
            return new Kind(nights, sheets, packs, drawn, true);
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
                return new Fitted(truth, FilmFit.of(Simulation.PUBLISHED, journal, Optional.of("A")));
            }).toList();
        }
    }

    private record Fitted(Simulation truth, FilmFit fit) {

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
        assertHeldAsOftenAsSaid("16 nights of 1", Kind.of(16, 1).fitted(JOURNALS));
    }

    @Tag("search")
    @Test
    void intervalsOfManyJournalsDoSoMoreNearly() {
        assertHeldAsOftenAsSaid("2 nights of 4", searched("2 nights of 4", Kind.of(2, 4)));
        assertHeldAsOftenAsSaid("16 nights of 1", Kind.of(16, 1).fitted(JOURNALS_OF_A_SEARCH));
        assertHeldAsOftenAsSaid("4 nights of 4", searched("4 nights of 4", Kind.of(4, 4)));
        // half of 0.8 stop is less than packs may differ: a little surer than said
        List<Fitted> apart = searched("packs 0.8 stop apart", packsApart(4, 4));
        assertEquals(0.68, speeds(apart, 0.68), 0.15);
        assertTrue(speeds(apart, 0.95) >= 0.95 - 3 * Math.sqrt(0.95 * 0.05 / JOURNALS_OF_A_SEARCH));
    }

    /** Ordinary journals are the measure of what a warning is worth. */
    @Tag("search")
    @Test
    void warningsComeWhereSomethingIsOff() {
        List<Fitted> eight = searched("2 nights of 4", Kind.of(2, 4));
        List<Fitted> sixteen = searched("4 nights of 4", Kind.of(4, 4));
        List<Fitted> judge = row("judge a class off", Kind.of(2, 4).with(one -> one.withJudge(1))
                .fitted(JOURNALS_OF_A_SEARCH));
        List<Fitted> light = row("light of a night off", Kind.of(4, 4).with(one ->
                one.withNight(1, HALF_A_MAGNITUDE_STOPS)).fitted(JOURNALS_OF_A_SEARCH));
        List<Fitted> old = row("old pack", Kind.of(2, 4).with(one -> one.withPack("A", 2.5))
                .fitted(JOURNALS_OF_A_SEARCH));
        List<Fitted> apart = searched("packs 0.8 stop apart", packsApart(4, 4));
        List<Fitted> measured = row("2 nights of 4, one each measured", Kind.of(2, 4).withMeasured()
                .fitted(JOURNALS_OF_A_SEARCH));
        List<Fitted> judgeMeasured = row("judge a class off, one each measured", Kind.of(2, 4).withMeasured()
                .with(one -> one.withJudge(1)).fitted(JOURNALS_OF_A_SEARCH));
        // words alone cannot tell a judge from a film, measured tones can
        moreOften(FitWarning.FarFromPublished.class, 0.1, judge, eight);
        moreOften(FitWarning.JudgeOff.class, 0.4, judgeMeasured, measured);
        moreOften(FitWarning.LightOff.class, 0.1, light, sixteen);
        moreOften(FitWarning.FarFromPublished.class, 0.4, old, eight);
        moreOften(FitWarning.PacksApart.class, 0.6, apart, sixteen);
    }

    /** A row that several searches look at, computed once. */
    private static List<Fitted> searched(String kind, Kind of) {
        return SEARCHED.computeIfAbsent(kind, row -> row(row, of.fitted(JOURNALS_OF_A_SEARCH)));
    }

    private static void moreOften(Class<? extends FitWarning> kind, double byShare, List<Fitted> there,
            List<Fitted> elsewhere) {
        double share = share(there, one -> one.warned(kind));
        double falsely = share(elsewhere, one -> one.warned(kind));
        assertTrue(share >= falsely + byShare, kind.getSimpleName() + ": " + share + " and " + falsely);
    }

    private static Kind packsApart(int nights, int sheets) {
        return Kind.of(nights, sheets).from("A", "B")
                .with(one -> {
                    double half = one.random().nextBoolean() ? 0.4 : -0.4;
                    return one.withPack("A", half).withPack("B", -half);
                });
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
                one.truth.offsetStops("A"), share));
    }

    private static double exponents(List<Fitted> fitted, double share) {
        return share(fitted, one -> one.covered(one.fit.posterior().grid().exponents(), one.truth.exponent,
                share));
    }

    private static double times(List<Fitted> fitted, double share) {
        return share(fitted, one -> one.covered(one.fit.posterior().grid().log2CorrectedS(DARK_METERED_S),
                Stops.between(1, one.truth.midToneS("A", DARK_METERED_S)), share));
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
        double before = SteadyLight.of(FilmFit.of(Simulation.PUBLISHED, List.of()).prior(), DARK_METERED_S, 0)
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
