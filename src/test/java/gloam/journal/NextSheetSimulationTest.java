package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.FNumber;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Following the journal's advice spends fewer sheets until the first right one than doubling the time. */
@Tag("search")
class NextSheetSimulationTest {

    private static final int FILMS = 300;
    private static final int MOST_SHEETS = 20;
    private static final double METERED_S = 928; // 7200 s by the published exponent

    @Test
    void adviceBeatsAFixedDoublingSeries() {
        double advised = average(NextSheetSimulationTest::sheetsAdvised);
        double outwards = average(NextSheetSimulationTest::sheetsOutwards);
        double upwards = average(NextSheetSimulationTest::sheetsUpwards);
        double feelingTheWay = average(NextSheetSimulationTest::sheetsFeelingTheWay);
        assertTrue(advised < outwards, advised + " sheets advised, " + outwards + " by doubling");
        assertTrue(advised < upwards, advised + " sheets advised, " + upwards + " by doubling from below");
        assertTrue(advised < feelingTheWay, advised + " sheets advised, " + feelingTheWay
                + " by doubling or halving");
    }

    private static int sheetsAdvised(Simulation film) {
        Posterior posterior = Posterior.prior(new FilmGrid(Simulation.PUBLISHED));
        NextSheet.Wanted wanted = new NextSheet.Wanted(METERED_S / 64, List.of(FNumber.marked(8)), 60,
                14 * 3600, 0);
        for (int sheet = 1; sheet < MOST_SHEETS; sheet++) {
            double openS = new NextSheet(posterior, wanted).likeliestS();
            ToneWord word = film.verdict("A", 0, METERED_S, openS);
            if (word == ToneWord.MIDDLE) {
                return sheet;
            }
            Entry entry = Sheets.steady("1", Simulation.PUBLISHED, METERED_S, openS, Sheets.judged(word));
            posterior = posterior.with(Arrays.stream(posterior.grid().toneStops(entry.exposed().openings()))
                    .map(Evidence.of(word).blurred(TimeSpread.LIGHT_STOPS)::likelihood).toArray());
        }
        return MOST_SHEETS;
    }

    /**
     * The published time and then outwards from it, whatever the sheets show; from the start again in the
     * end.
     */
    private static int sheetsOutwards(Simulation film) {
        return sheetsOfSeries(film, List.of(0, 1, -1, 2, -2, 3, -3));
    }

    /** The published time doubled from two stops below to four above, whatever the sheets show. */
    private static int sheetsUpwards(Simulation film) {
        return sheetsOfSeries(film, List.of(-2, -1, 0, 1, 2, 3, 4));
    }

    private static int sheetsOfSeries(Simulation film, List<Integer> stops) {
        for (int sheet = 1; sheet < MOST_SHEETS; sheet++) {
            double openS = Simulation.publishedS(METERED_S)
                    * Stops.factor(stops.get((sheet - 1) % stops.size()));
            if (film.verdict("A", 0, METERED_S, openS) == ToneWord.MIDDLE) {
                return sheet;
            }
        }
        return MOST_SHEETS;
    }

    /** Doubles after a sheet that is too dark, halves after one too light. */
    private static int sheetsFeelingTheWay(Simulation film) {
        double openS = Simulation.publishedS(METERED_S);
        for (int sheet = 1; sheet < MOST_SHEETS; sheet++) {
            ToneWord word = film.verdict("A", 0, METERED_S, openS);
            if (word == ToneWord.MIDDLE) {
                return sheet;
            }
            openS *= Stops.factor(-Integer.signum(word.compareTo(ToneWord.MIDDLE)));
        }
        return MOST_SHEETS;
    }

    private static double average(ToIntFunction<Simulation> sheets) {
        return LongStream.range(0, FILMS).parallel()
                .mapToInt(seed -> sheets.applyAsInt(new Simulation(20270206 + seed))).average().orElseThrow();
    }
}
