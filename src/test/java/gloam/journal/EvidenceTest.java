package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class EvidenceTest {

    @Test
    void wordsShareOutAllTones() {
        for (double tone = -8; tone < 5; tone += 0.37) {
            double computed = tone;
            // the normal distribution is read off a table good to 1.2e-7
            assertEquals(1, Arrays.stream(ToneWord.values())
                    .mapToDouble(word -> Evidence.of(word).likelihood(computed)).sum(), 1e-6);
        }
        for (int i = 1; i < ToneWord.values().length; i++) {
            assertEquals(ToneWord.values()[i - 1].upToStops(), ToneWord.values()[i].aboveStops());
        }
    }

    @Test
    void aToneWellInsideAWordIsGivenThatWord() {
        // half a stop either way at a standard deviation of 0.45: 2 Φ(1.1111) - 1 = 0.7335 (Abramowitz and
        // Stegun 1964, table 26.1), in nineteen of twenty notes, and a sixth of the twentieth
        assertEquals(0.95 * 0.7335 + 0.05 / 6, Evidence.of(ToneWord.MIDDLE).likelihood(0), 1e-4);
    }

    @Test
    void aBlankSheetSaysOnlyThatTheToneIsBelowTheFirstBound() {
        Evidence blank = Evidence.of(ToneWord.BLACK);
        assertEquals(blank.likelihood(-6), blank.likelihood(-9), 1e-6);
        assertTrue(blank.likelihood(-1) < 0.01);
    }

    @Test
    void theFaintestStarNoticedIsALowerBound() {
        Evidence seen = Evidence.ofFaintest(6);
        assertEquals(seen.likelihood(9), seen.likelihood(12), 1e-6);
        assertTrue(seen.likelihood(4) < 0.1 * seen.likelihood(6.5));
    }

    @Test
    void nothingIsEverRuledOut() {
        Evidence white = Evidence.of(ToneWord.WHITE);
        assertTrue(white.likelihood(-10) > 0);
        assertTrue(white.strayChance(-10) > 0.99);
        assertTrue(white.strayChance(2.5) < 0.02);
    }

    /** The slope by differences of the likelihood; the curvature of sound notes alone is never negative. */
    @Test
    void slopesAreThoseOfTheLikelihood() {
        for (Evidence evidence : List.of(Evidence.of(ToneWord.DARK), Evidence.of(ToneWord.BLACK),
                Evidence.of(ToneWord.WHITE), Evidence.ofTone(-0.7, 0.3), Evidence.ofFaintest(1))) {
            for (double value = -3; value < 3; value += 0.31) {
                Evidence.Slope slope = evidence.slope(value);
                assertEquals(Math.log(evidence.likelihood(value)), slope.log(), 1e-12);
                double byDifferences = Math.log(evidence.likelihood(value + 0.01)
                        / evidence.likelihood(value - 0.01)) / 0.02;
                assertEquals(byDifferences, slope.gradient(), 0.01 * (1 + Math.abs(byDifferences)));
                assertTrue(slope.curvature() >= 0);
            }
        }
    }
}
