package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fit finds again the films that simulated journals were made on. */
class FilmFitSimulationTest {

    private static final int JOURNALS = 100;
    private static final int JOURNALS_OF_A_SEARCH = 500;
    private static final int SHEETS = 8;

    private static List<Fitted> fitted;

    private record Fitted(Simulation truth, Posterior posterior) {

        boolean covered(double[] ofFilms, double truth, double share) {
            return truth >= posterior.quantile(ofFilms, (1 - share) / 2)
                    && truth <= posterior.quantile(ofFilms, (1 + share) / 2);
        }
    }

    @BeforeAll
    static void fitAll() {
        fitted = fitted(JOURNALS);
    }

    private static List<Fitted> fitted(int journals) {
        return LongStream.range(0, journals).parallel().mapToObj(seed -> {
            Simulation truth = new Simulation(20270206 + seed);
            return new Fitted(truth, FilmFit.of(Simulation.PUBLISHED, truth.journal(SHEETS)).posterior());
        }).toList();
    }

    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        assertHeldAsOftenAsSaid(fitted);
    }

    @Tag("search")
    @Test
    void intervalsOfManyJournalsDoSoMoreNearly() {
        assertHeldAsOftenAsSaid(fitted(JOURNALS_OF_A_SEARCH));
    }

    private static void assertHeldAsOftenAsSaid(List<Fitted> fitted) {
        for (double share : new double[] {0.68, 0.95}) {
            // three standard errors of a share of so many
            double tolerance = 3 * Math.sqrt(share * (1 - share) / fitted.size());
            double speeds = share(fitted, fit ->
                    fit.covered(fit.posterior.grid().speedOffsetsStops(), fit.truth.offsetStops, share));
            double exponents = share(fitted, fit ->
                    fit.covered(fit.posterior.grid().exponents(), fit.truth.exponent, share));
            double dark = share(fitted, fit -> fit.covered(fit.posterior.grid().log2CorrectedS(928),
                    -fit.truth.toneStops(928, 1), share));
            assertEquals(share, speeds, tolerance, "speed offset");
            assertEquals(share, exponents, tolerance, "exponent");
            assertEquals(share, dark, tolerance, "two-hour exposure");
        }
    }

    @Test
    void eightSheetsHalveTheSpreadOfATwoHourExposure() {
        // 928 s metered is 7200 s by the published exponent of 1.3
        double before = SteadyLight.of(Posterior.prior(new FilmGrid(Simulation.PUBLISHED)), 928, 0).times()
                .spreadStops();
        double after = mean(fit -> SteadyLight.of(fit.posterior, 928, 0).times().spreadStops());
        assertTrue(after <= before / 2, before + " stops before, " + after + " after");
    }

    private static double share(List<Fitted> fitted, Predicate<Fitted> held) {
        return (double) fitted.stream().filter(held).count() / fitted.size();
    }

    private static double mean(ToDoubleFunction<Fitted> value) {
        return fitted.stream().mapToDouble(value).average().orElseThrow();
    }
}
