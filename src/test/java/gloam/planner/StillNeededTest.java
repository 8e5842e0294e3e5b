package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.WishCounts.Served;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand: two wishes, the first to be served twice, on three nights. */
class StillNeededTest {

    private static final int[] REPEATS = {2, 1};
    private static final long MAY_LOSE = 400;
    private static final long MORE = MAY_LOSE + 1;

    private final WishCounts counts = new WishCounts(REPEATS, 3);
    private final Served nothing = counts.nothing();
    private final Served first = counts.more(nothing, 0);
    private final Served second = counts.more(nothing, 1);
    private final Served both = counts.more(first, 1);

    /** What each night can serve: the second both wishes at once, the third the first wish alone. */
    private final List<List<Served>> ways = List.of(List.of(nothing, first), List.of(nothing, second, both),
            List.of(nothing, first));

    private StillNeeded needed(long sheet, long firstWish, long secondWish) {
        return new StillNeeded(counts, ways, new Prices(sheet, new long[] {firstWish, secondWish}, 0),
                MAY_LOSE);
    }

    private static void assertTooMuch(long lost) {
        assertTrue(lost > 1L << 60, () -> lost + " is no more than a timetable gains");
    }

    @Test
    void wishesThatMustBeServedNeedNights() {
        StillNeeded needed = needed(0, MORE, MORE);
        assertEquals(2 * Gain.NIGHT_OUT, needed.least(nothing, 0), "three sheets, two on a night at most");
        assertEquals(Gain.NIGHT_OUT, needed.least(first, 0));
        assertEquals(Gain.NIGHT_OUT, needed.least(both, 1));
        assertEquals(0, needed.least(counts.more(both, 0), 1));
        assertEquals(0, needed.least(counts.all(), 2));
    }

    @Test
    void whatLaterNightsCannotServeIsLost() {
        StillNeeded needed = needed(0, MORE, MORE);
        assertTooMuch(needed.least(nothing, 1));
        assertTooMuch(needed.least(counts.more(first, 0), 1));
        assertTooMuch(needed.least(both, 2));
        assertEquals(Gain.NIGHT_OUT, needed(0, MORE, MAY_LOSE).least(counts.more(nothing, 0), 1),
                "the second wish may be left out");
        assertEquals(0, needed(0, MAY_LOSE, MAY_LOSE).least(nothing, 2));
    }

    /** Where every sheet is worth more than may be lost, it is sheets that need nights. */
    @Test
    void sheetsThatMustBeExposedNeedNights() {
        StillNeeded needed = needed(MORE, 0, 0);
        assertEquals(2 * Gain.NIGHT_OUT, needed.least(nothing, 0));
        assertEquals(Gain.NIGHT_OUT, needed.least(second, 0));
        assertEquals(Gain.NIGHT_OUT, needed.least(both, 1));
        assertTooMuch(needed.least(nothing, 1));
        assertTooMuch(needed.least(both, 2));
        assertEquals(0, needed(MAY_LOSE, 0, 0).least(nothing, 2));
    }

    /** A later night may serve more than the next. */
    @Test
    void asManySheetsAsAnyLaterNightServesShareANight() {
        StillNeeded needed = new StillNeeded(counts, List.of(ways.get(0), ways.get(2), ways.get(1)),
                new Prices(0, new long[] {MORE, MORE}, 0), MAY_LOSE);
        assertEquals(2 * Gain.NIGHT_OUT, needed.least(nothing, 0));
        assertEquals(Gain.NIGHT_OUT, needed.least(first, 0));
    }

    @Test
    void wishesThatMustBeServedNeedSheets() {
        WishCounts two = new WishCounts(REPEATS, 2);
        StillNeeded needed = new StillNeeded(two, ways, new Prices(0, new long[] {MORE, MORE}, 0), MAY_LOSE);
        assertTooMuch(needed.least(nothing, 0));
        assertEquals(Gain.NIGHT_OUT, new StillNeeded(two, ways, new Prices(0, new long[] {MORE, 0}, 0),
                MAY_LOSE).least(nothing, 0), "two sheets of one night, as many as any serves");
    }

    /** A twentieth of what may be lost, or so many nights out, times what is lacking by the nights left. */
    @Test
    void theFewerNightsAreLeftForAWishTheMoreUrgentItIs() {
        StillNeeded needed = needed(0, MORE, MORE);
        assertEquals(MAY_LOSE / 20 * 2 / 2 + MAY_LOSE / 20, needed.urgency(nothing, 0, 1));
        assertEquals(MAY_LOSE / 20 / 2 + MAY_LOSE / 20, needed.urgency(first, 0, 1));
        assertEquals(MAY_LOSE / 20, needed.urgency(both, 1, 1));
        assertEquals(0, needed.urgency(counts.all(), 0, 1));
        assertEquals(2 * 5 * Gain.NIGHT_OUT, needed.urgency(nothing, 0, 5));
        assertEquals(MAY_LOSE / 20, needed(0, MORE, MAY_LOSE).urgency(nothing, 0, 1));
    }
}
