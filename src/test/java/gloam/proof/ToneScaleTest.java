package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.ToneCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToneScaleTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "0.0031308, 0.04045", "0.18, 0.4613561", "0.5, 0.7353569", "1, 1"}) // IEC 61966-2-1
    void sharesAreEncodedAsTheStandardHasIt(double share, double encoded) {
        assertEquals(encoded, ToneScale.encoded(share), 1e-6); // the standard's constants have five digits
    }

    @Test
    void theLightestToneIsWhiteAndTonesGrowWithLightOnAPrint() {
        ToneScale print = new ToneScale(ToneCurve.PRINT);
        assertEquals(255, print.level(1e12, 0, 0) & 0xff);
        int before = 0;
        for (double stops = -12; stops <= 12; stops += 0.25) {
            int level = print.level(Math.pow(2, stops), 3, 5) & 0xff;
            assertTrue(level >= before);
            before = level;
        }
        assertEquals(print.level(0, 0, 0), print.level(1e-12, 0, 0));
    }

    @Test
    void aNegativeIsClearWithoutLight() {
        ToneScale negative = new ToneScale(ToneCurve.NEGATIVE);
        assertEquals(255, negative.level(0, 0, 0) & 0xff);
        assertTrue((negative.level(100, 0, 0) & 0xff) < 100);
    }

    /** The mean over 8 by 8 pixels is the tone itself, to a 64th of a level, and no pixel is a level away. */
    @Test
    void tonesBetweenTwoLevelsAreMixedOfBoth() {
        ToneScale print = new ToneScale(ToneCurve.PRINT);
        for (double stops = -5; stops <= 3; stops += 0.125) {
            double progress = Math.pow(2, stops);
            double exact = 255 * ToneScale.encoded(Math.pow(10,
                    ToneCurve.PRINT.densityMin() - ToneCurve.PRINT.density(progress)));
            double sum = 0;
            for (int pixel = 0; pixel < 64; pixel++) {
                int level = print.level(progress, pixel % 8, pixel / 8) & 0xff;
                assertTrue(Math.abs(level - exact) < 1.01, level + " for " + exact);
                sum += level;
            }
            assertEquals(exact, sum / 64, 1 / 64.0);
        }
    }

    /** A print of a negative grows lighter with light, and has the mid-tone of a print at its own. */
    @Test
    void aPrintOfANegativeLooksAsAPrintDoes() {
        ToneScale printed = ToneScale.printOf(ToneCurve.NEGATIVE);
        ToneScale print = new ToneScale(ToneCurve.PRINT);
        assertEquals(print.level(1, 0, 0), printed.level(1, 0, 0));
        int before = 0;
        for (double stops = -12; stops <= 12; stops += 0.25) {
            int level = printed.level(Math.pow(2, stops), 0, 0) & 0xff;
            assertTrue(level >= before);
            before = level;
        }
        for (double stops = -1; stops <= 1;
                stops += 0.5) { // where the negative's slope is that at its mid-tone
            assertEquals(print.level(Math.pow(2, stops), 0, 0) & 0xff,
                    printed.level(Math.pow(2, stops), 0, 0) & 0xff, 6);
        }
    }
}
