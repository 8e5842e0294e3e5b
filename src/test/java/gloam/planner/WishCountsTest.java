package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.WishCounts.Served;
import gloam.support.Samples;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Packed counts against plain ones, over one word and several. */
class WishCountsTest {

    /** So many wishes of up to nine repeats, and what two timetables have served of each. */
    private record Case(int[] repeats, int sheets, int[] some, int[] others) {

        static Case of(RandomGenerator random) {
            int[] repeats = random.ints(1 + random.nextInt(60), 0, 10).toArray();
            return new Case(repeats, random.nextInt(300), within(random, repeats), within(random, repeats));
        }

        private static int[] within(RandomGenerator random, int[] repeats) {
            // few of each, so that some cases fit and cover
            return Arrays.stream(repeats).map(most -> random.nextInt(3) > 0 ? 0 : random.nextInt(most + 1))
                    .toArray();
        }

        WishCounts counts() {
            return new WishCounts(repeats, sheets);
        }

        boolean every(IntPredicate law) {
            return IntStream.range(0, repeats.length).allMatch(law);
        }
    }

    static Stream<Named<Case>> cases() {
        return Samples.of(300, Case::of);
    }

    private static Served served(WishCounts counts, int... times) {
        Served served = counts.nothing();
        for (int wish = 0; wish < times.length; wish++) {
            for (int time = 0; time < times[wish]; time++) {
                served = counts.more(served, wish);
            }
        }
        return served;
    }

    private static int[] often(WishCounts counts, Served served) {
        return IntStream.range(0, counts.wishes()).map(wish -> counts.often(served, wish)).toArray();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatIsPackedComesBack(Case its) {
        WishCounts counts = its.counts();
        Served some = served(counts, its.some);
        assertEquals(its.repeats.length, counts.wishes());
        assertEquals(Arrays.toString(its.some), Arrays.toString(often(counts, some)));
        assertEquals(its.sheets - Arrays.stream(its.some).sum(), counts.sheetsLeft(some));
        assertEquals(Arrays.toString(its.repeats), Arrays.toString(often(counts, counts.all())));
        assertEquals(Arrays.stream(its.repeats).sum() > its.sheets, counts.scarce());
        for (int wish = 0; wish < its.repeats.length; wish++) {
            assertEquals(its.some[wish] < its.repeats[wish] && Arrays.stream(its.some).sum() < its.sheets,
                    counts.open(some, wish), "wish " + wish);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void twoTogetherAreTheirSumsAndFitWithinRepeatsAndSheets(Case its) {
        WishCounts counts = its.counts();
        Served some = served(counts, its.some);
        Served others = served(counts, its.others);
        int[] both = IntStream.range(0, its.some.length).map(wish -> its.some[wish] + its.others[wish])
                .toArray();
        boolean fit = its.every(wish -> both[wish] <= its.repeats[wish])
                && Arrays.stream(both).sum() <= its.sheets;
        assertEquals(fit, counts.fit(some, others));
        if (fit) {
            Served sum = counts.sum(some.lastAt(3), others.lastAt(5));
            assertEquals(Arrays.toString(both), Arrays.toString(often(counts, sum)));
            assertEquals(Arrays.stream(both).sum(), sum.sheets());
            assertEquals(5, sum.last());
        }
        assertTrue(counts.fit(some, counts.nothing()) == Arrays.stream(its.some).sum() <= its.sheets);
    }

    /** No wish less often than the other. */
    @ParameterizedTest
    @MethodSource("cases")
    void whatHasServedEachWishAsOftenCovers(Case its) {
        WishCounts counts = its.counts();
        Served some = served(counts, its.some);
        Served others = served(counts, its.others);
        assertEquals(its.every(wish -> its.others[wish] >= its.some[wish]), counts.covers(others, some));
        int[] most = IntStream.range(0, its.some.length)
                .map(wish -> Math.max(its.some[wish], its.others[wish])).toArray();
        assertTrue(counts.covers(served(counts, most), some));
        assertTrue(counts.covers(some, counts.nothing()));
        assertFalse(counts.covers(some.lastAt(1), some.lastAt(2)));
    }

    /** On one night, where a wish is served once at most. */
    @ParameterizedTest
    @MethodSource("cases")
    void partsOfANightAreApartWithoutACommonWish(Case its) {
        WishCounts counts = its.counts();
        int[] some = Arrays.stream(its.some).map(times -> Math.min(1, times)).toArray();
        int[] others = Arrays.stream(its.others).map(times -> Math.min(1, times)).toArray();
        assertEquals(its.every(wish -> some[wish] * others[wish] == 0),
                counts.apart(served(counts, some), served(counts, others)));
        int[] rest = Arrays.stream(some).map(times -> 1 - times).toArray();
        int[] open = IntStream.range(0, rest.length).map(wish -> Math.min(rest[wish], its.repeats[wish]))
                .toArray();
        assertTrue(counts.apart(served(counts, some), served(counts, open)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void countsUpToWhatWasServedAllowThatAndNoMore(Case its) {
        WishCounts counts = its.counts();
        WishCounts upTo = counts.upTo(served(counts, its.some));
        assertEquals(Arrays.toString(its.some), Arrays.toString(often(upTo, upTo.all())));
        assertEquals(0, upTo.sheetsLeft(upTo.all()));
        assertEquals(Math.min(its.sheets, 4), counts.ofNight(4).sheetsLeft(counts.nothing()));
    }

    @Test
    void someFitAndCoverAndAreApartAndSomeDoNot() {
        for (boolean is : new boolean[] {true, false}) {
            assertTrue(cases().map(Named::getPayload).filter(its -> its.counts().fit(
                    served(its.counts(), its.some), served(its.counts(), its.others)) == is).count() > 20);
            assertTrue(cases().map(Named::getPayload).filter(its -> its.counts().covers(
                    served(its.counts(), its.some), served(its.counts(), its.others)) == is).count() > 20);
            assertTrue(cases().map(Named::getPayload).filter(its -> its.every(wish ->
                    its.some[wish] * its.others[wish] == 0) == is).count() > 20);
        }
    }

    @Test
    void servedIsTheSameByCountsAndLast() {
        WishCounts counts = new WishCounts(new int[] {2, 2}, 4);
        Served one = served(counts, 1, 1);
        assertEquals(one, served(counts, 1, 1));
        assertEquals(one.hashCode(), served(counts, 1, 1).hashCode());
        assertNotEquals(one, served(counts, 2, 0));
        assertNotEquals(one, one.lastAt(1));
    }
}
