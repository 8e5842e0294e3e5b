package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Stops;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What scans of simulated sheets say of their film, by {@link Simulation}'s own formulas. */
class ScanFitSimulationTest {

    private static final int JOURNALS = 30;
    private static final int JOURNALS_OF_A_SEARCH = 300;
    private static final int FILMS = 200;
    private static final double DARK_METERED_S = 928;
    private static final double KNOWN_STOPS = 0.5;
    private static final int[] SHEETS = {0, 1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24};

    private record Fitted(Simulation truth, Posterior film) {

        boolean covered(double[] ofFilms, double value, double share) {
            return value >= film.quantile(ofFilms, (1 - share) / 2)
                    && value <= film.quantile(ofFilms, (1 + share) / 2);
        }
    }

    private static Fitted fitted(long seed, int nights, int sheets, boolean scanned) {
        Simulation truth = new Simulation(20280306 + seed);
        List<Entry> journal = new ArrayList<>();
        for (int sheet = 0; sheet < nights * sheets; sheet++) {
            String id = String.valueOf(sheet + 1);
            journal.add(scanned ? truth.scannedSheet(id, "A", sheet / sheets)
                    : truth.anySheet(id, "A", sheet / sheets));
        }
        return new Fitted(truth, FilmFit.of(Simulation.PUBLISHED, journal, Optional.of("A"),
                Optional.empty()).posterior());
    }

    private static void assertHeldAsOftenAsSaid(int journals, int nights, int sheets) {
        List<Fitted> fitted = LongStream.range(0, journals).parallel().mapToObj(seed ->
                fitted(seed, nights, sheets, true)).toList();
        for (double share : new double[] {0.68, 0.95}) {
            double speed = share(fitted.stream().filter(one -> one.covered(one.film.grid()
                    .speedOffsetsStops(), one.truth.offsetStops("A"), share)).count(), journals);
            double exponent = share(fitted.stream().filter(one -> one.covered(one.film.grid().exponents(),
                    one.truth.exponent, share)).count(), journals);
            double time = share(fitted.stream().filter(one -> one.covered(one.film.grid()
                    .log2CorrectedS(DARK_METERED_S), Stops.between(1, one.truth.midToneS("A",
                    DARK_METERED_S)), share)).count(), journals);
            System.out.printf("TABLE scans, %d nights of %d | %d | %.2f: %.2f %.2f %.2f | sd %.2f %.3f%n",
                    nights, sheets, journals, share, speed, exponent, time, fitted.stream().mapToDouble(one ->
                    one.film.speedOffsetStops().sd()).average().orElseThrow(), fitted.stream()
                    .mapToDouble(one -> one.film.exponent().sd()).average().orElseThrow());
            // three standard errors of a share of so many
            double within = 3 * Math.sqrt(share * (1 - share) / journals);
            String kind = nights + " nights of " + sheets + ": ";
            assertEquals(share, speed, within, kind + "speed offset");
            assertEquals(share, exponent, within, kind + "exponent");
            assertEquals(share, time, within, kind + "two-hour exposure");
        }
    }

    private static double share(long some, int all) {
        return (double) some / all;
    }

    @Test
    void intervalsByScansHoldTheTruth() {
        assertHeldAsOftenAsSaid(JOURNALS, 2, 2);
    }

    @Tag("search")
    @Test
    void intervalsOfManyJournalsDoSoMoreNearly() {
        assertHeldAsOftenAsSaid(JOURNALS_OF_A_SEARCH, 1, 1);
        assertHeldAsOftenAsSaid(JOURNALS_OF_A_SEARCH, 4, 1);
        assertHeldAsOftenAsSaid(JOURNALS_OF_A_SEARCH, 2, 4);
    }

    /** How many sheets, one a night, until the time of a two-hour exposure is known to half a stop. */
    @Tag("search")
    @Test
    void scansNeedFewerSheetsThanWords() {
        int[] words = needed(false);
        int[] scans = needed(true);
        System.out.printf("TABLE sheets until known to half a stop | %d | words: median %d, 90 %% %d | scans:"
                + " median %d, 90 %% %d%n", FILMS, words[FILMS / 2], words[FILMS * 9 / 10], scans[FILMS / 2],
                scans[FILMS * 9 / 10]);
        assertTrue(scans[FILMS / 2] < words[FILMS / 2], scans[FILMS / 2] + " against " + words[FILMS / 2]);
        assertTrue(scans[FILMS * 9 / 10] < words[FILMS * 9 / 10]);
    }

    private static int[] needed(boolean scanned) {
        return LongStream.range(0, FILMS).parallel().mapToInt(seed -> IntStream.of(SHEETS).filter(sheets ->
                SteadyLight.of(fitted(seed, sheets, 1, scanned).film, DARK_METERED_S, 0).times().spreadStops()
                <= KNOWN_STOPS).findFirst().orElse(SHEETS[SHEETS.length - 1] + 1)).sorted().toArray();
    }
}
