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
        assertEquals(255, print.level(1e12) & 0xff);
        int before = 0;
        for (double stops = -12; stops <= 12; stops += 0.25) {
            int level = print.level(Math.pow(2, stops)) & 0xff;
            assertTrue(level >= before);
            before = level;
        }
        assertEquals(print.level(0), print.level(1e-12));
    }

    @Test
    void aNegativeIsClearWithoutLight() {
        ToneScale negative = new ToneScale(ToneCurve.NEGATIVE);
        assertEquals(255, negative.level(0) & 0xff);
        assertTrue((negative.level(100) & 0xff) < 100);
    }
}
