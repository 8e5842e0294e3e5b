package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class EvidenceTest {

    @Test
    void normalDistributionIsThatOfTheTables() {
        // Abramowitz and Stegun 1964, table 26.1; the error function used is good to 1.5e-7
        assertEquals(0.841344746, Evidence.normalBelow(1), 2e-7);
        assertEquals(0.977249868, Evidence.normalBelow(2), 2e-7);
        assertEquals(0.158655254, Evidence.normalBelow(-1), 2e-7);
        assertEquals(0.5, Evidence.normalBelow(0), 2e-7);
        assertEquals(1, Evidence.normalBelow(Double.POSITIVE_INFINITY));
    }

    @Test
    void wordsShareOutAllTones() {
        for (double tone = -8; tone < 5; tone += 0.37) {
            double reckoned = tone;
            assertEquals(1, Arrays.stream(ToneWord.values())
                    .mapToDouble(word -> Evidence.chance(word, reckoned)).sum(), 1e-9);
        }
        for (int i = 1; i < ToneWord.values().length; i++) {
            assertEquals(ToneWord.values()[i - 1].upToStops(), ToneWord.values()[i].aboveStops());
        }
    }

    @Test
    void aToneWellInsideAWordIsGivenThatWord() {
        // half a stop either way at a standard deviation of 0.6: 2 Φ(0.8333) - 1 = 0.5953 by the same table
        assertEquals(0.5953, Evidence.chance(ToneWord.MIDDLE, 0), 1e-4);
    }

    @Test
    void aBlankSheetSaysOnlyThatTheToneIsBelowTheFirstBound() {
        double faint = Evidence.chance(ToneWord.BLACK, -6);
        assertEquals(1, faint, 1e-6);
        assertEquals(faint, Evidence.chance(ToneWord.BLACK, -9), 1e-6);
        assertTrue(Evidence.chance(ToneWord.BLACK, -1) < 0.001);
    }

    @Test
    void nothingIsEverRuledOut() {
        Evidence evidence = Evidence.of(ToneWord.WHITE, new double[] {-10, 2.5});
        assertTrue(evidence.of(0) > 0);
        assertTrue(evidence.strayOn(0) > 0.99);
        assertTrue(evidence.strayOn(1) < 0.02);
    }
}
