package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.ExposureEngine;
import gloam.film.FilmStock;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sheets spent until the first whose tone is within half a stop of the one wanted, in one night under a dark
 * sky: exposing for as long as the fitted film asks for, refitted after each sheet, against what people do.
 * What counts is the sheet, not what the eye makes of it.
 */
class NextSheetSimulationTest {

    private static final int FILMS = 30;
    private static final int FILMS_OF_A_SEARCH = 200;
    private static final int MOST_SHEETS = 12;
    private static final double METERED_S = 928; // 7200 s by the published exponent
    private static final int TONIGHT = 7;

    /** What somebody does: the time of the next sheet in s, after those of tonight. */
    private interface Habit {
        double nextS(List<Entry> tonight);
    }

    /** The time that the fitted film asks for, the first sheet that many stops off it. */
    private static Habit advised(List<Entry> before, double firstStops) {
        return tonight -> advisedS(Stream.concat(before.stream(), tonight.stream()).toList())
                * Stops.factor(tonight.isEmpty() ? firstStops : 0);
    }

    /** Doubles the time after a sheet that looks too dark, halves it after one too light. */
    private static Habit doublingOrHalving() {
        return tonight -> {
            double openS = Simulation.publishedS(METERED_S);
            for (Entry sheet : tonight) {
                openS *= Stops.factor(-Integer.signum(word(sheet).compareTo(ToneWord.MIDDLE)));
            }
            return openS;
        };
    }

    /** The published time and then outwards from it, whatever the sheets show. */
    private static Habit outwards() {
        List<Integer> stops = List.of(0, 1, -1, 2, -2, 3, -3);
        return tonight -> Simulation.publishedS(METERED_S)
                * Stops.factor(stops.get(tonight.size() % stops.size()));
    }

    private static ToneWord word(Entry sheet) {
        return ((Verdict.InWords) sheet.outcome().verdict().orElseThrow()).word();
    }

    /**
     * An evening.
     *
     * @param right    number of the first sheet that was right, whatever it looked like
     * @param called   number of the first that looked right, after which people stop
     * @param wasRight whether that one was
     */
    private record Evening(int right, int called, boolean wasRight) {
    }

    private static Evening evening(Simulation film, Habit habit) {
        List<Entry> tonight = new ArrayList<>();
        int right = MOST_SHEETS;
        int called = MOST_SHEETS;
        boolean wasRight = false;
        for (int sheet = 1; sheet < MOST_SHEETS && (right == MOST_SHEETS || called == MOST_SHEETS); sheet++) {
            double openS = habit.nextS(tonight);
            boolean here = Math.abs(film.toneStops("A", TONIGHT, METERED_S, openS)) <= 0.5;
            right = here ? Math.min(right, sheet) : right;
            Entry made = film.sheet("tonight " + sheet, "A", TONIGHT, METERED_S, openS);
            tonight.add(made);
            if (called == MOST_SHEETS && word(made) == ToneWord.MIDDLE) {
                called = sheet;
                wasRight = here;
            }
        }
        return new Evening(right, called, wasRight);
    }

    private static double advisedS(List<Entry> journal) {
        Optional<NightAtSite> tonight = Optional.of(NightAtSite.of(Sheets.moved(
                Sheets.steady("", Simulation.PUBLISHED, METERED_S, 1, Sheets.judged(ToneWord.DARK)), "A",
                TONIGHT)
                .exposed()));
        FilmStock film = FilmFit.of(Simulation.PUBLISHED, journal, Optional.of("A"), tonight).film();
        return ExposureEngine.exposure(film,
                METERED_S * film.midToneLxS() / Simulation.PUBLISHED.midToneLxS(), 0)
                .correctedS();
    }

    private static List<Entry> eightSheetsBefore(Simulation film) {
        List<Entry> before = new ArrayList<>();
        for (int sheet = 0; sheet < 8; sheet++) {
            before.add(film.anySheet(String.valueOf(sheet), "A", sheet / 4));
        }
        return before;
    }

    /**
     * How evenings go.
     *
     * @param first  share that had a right sheet by the first
     * @param second by the second
     * @param third  by the third
     * @param called sheets until one looked right, on average
     * @param sound  share of those that were
     * @param right  sheets until one was right, whatever it looked like, on average
     * @param none   in how many evenings none was
     */
    private record Spent(double first, double second, double third, double called, double sound,
            double right, long none) {

        String rounded() {
            return percent(first) + " " + percent(second) + " " + percent(third) + " "
                    + tenths(called) + " " + percent(sound);
        }

        /** Where people go on after a sheet that looked right. */
        String goingOn() {
            return tenths(right) + ", none " + none;
        }

        private static double tenths(double sheets) {
            return Math.round(10 * sheets) / 10.0;
        }
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private static Spent spent(String how, int films, Function<Simulation, Habit> habit) {
        List<Evening> evenings = LongStream.range(0, films).parallel().mapToObj(seed -> {
            Simulation film = new Simulation(20270206 + seed);
            return evening(film, habit.apply(film));
        }).toList();
        Spent result = new Spent(share(evenings, one -> one.right <= 1),
                share(evenings, one -> one.right <= 2), share(evenings, one -> one.right <= 3),
                evenings.stream().mapToInt(Evening::called).average().orElseThrow(),
                share(evenings, Evening::wasRight),
                evenings.stream().mapToInt(Evening::right).average().orElseThrow(),
                evenings.stream().filter(one -> one.right == MOST_SHEETS).count());
        System.out.printf("TABLE %s: %s%n", how, result);
        return result;
    }

    private static double share(List<Evening> evenings, Predicate<Evening> which) {
        return (double) evenings.stream().filter(which).count() / evenings.size();
    }

    /**
     * Of a film of which eight sheets were judged before, the first sheet tonight is right twice as often.
     */
    @Test
    void sheetsOfOtherNightsMakeTheFirstOneRight() {
        long learnt = LongStream.range(0, FILMS).parallel().filter(seed -> {
            Simulation film = new Simulation(20270206 + seed);
            double openS = advisedS(eightSheetsBefore(film));
            return Math.abs(film.toneStops("A", TONIGHT, METERED_S, openS)) <= 0.5;
        }).count();
        long published = LongStream.range(0, FILMS).filter(seed -> Math.abs(new Simulation(20270206 + seed)
                .toneStops("A", TONIGHT, METERED_S, Simulation.publishedS(METERED_S))) <= 0.5).count();
        assertTrue(learnt >= 1.5 * published, learnt + " and " + published + " of " + FILMS);
    }

    @Tag("search")
    @Test
    void tableOfRivals() {
        Spent advised = spent("advised", FILMS_OF_A_SEARCH, film -> advised(List.of(), 0));
        Spent learnt = spent("advised after eight sheets", FILMS_OF_A_SEARCH, film ->
                advised(eightSheetsBefore(film), 0));
        Spent doubled = spent("doubling or halving", FILMS_OF_A_SEARCH, film -> doublingOrHalving());
        Spent outwards = spent("outwards", FILMS_OF_A_SEARCH, film -> outwards());
        // the table of src/docs/learning-from-the-journal.md
        assertEquals("30 66 82 2.5 65", doubled.rounded());
        assertEquals("30 47 79 4.3 59", outwards.rounded());
        assertEquals("30 72 82 2.3 70", advised.rounded());
        assertEquals("66 79 86 1.9 76", learnt.rounded());
        // and what stands below it
        assertEquals("2.5, none 2", doubled.goingOn());
        assertEquals("2.8, none 10", advised.goingOn());
    }

    /**
     * A first sheet that would teach more, a stop off the likeliest one, does not bring a right one sooner.
     */
    @Tag("search")
    @Test
    void learningFirstGainsNothing() {
        Spent advised = spent("advised", FILMS_OF_A_SEARCH, film -> advised(List.of(), 0));
        for (double stops : new double[] {-1, 1}) {
            Spent learning = spent("first sheet off by " + stops, FILMS_OF_A_SEARCH, film ->
                    advised(List.of(), stops));
            assertTrue(learning.second <= advised.second && learning.third <= advised.third);
        }
    }
}
