package gloam.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ToneCurveTest {

    @Test
    void negativePassesThePointsOfTheSpeedCriterion() {
        // ISO 6:1993: D = fog + 0.10 at Hm = 0.8/S, 0.80 more at log H = log Hm + 1.30; mid-tone at 8.125/S.
        // 0.005 because the curve's numbers are rounded to three digits
        double speedPoint = 0.8 / 8.125;
        double fog = ToneCurve.NEGATIVE.densityMin();
        assertEquals(fog + 0.10, ToneCurve.NEGATIVE.density(speedPoint), 0.005);
        assertEquals(fog + 0.90, ToneCurve.NEGATIVE.density(speedPoint * Math.pow(10, 1.30)), 0.005);
    }

    @Test
    void printShowsTheMidToneAsGreyOfEighteenPerCent() {
        // the common grey card; 0.74 is rounded
        assertEquals(-Math.log10(0.18), ToneCurve.PRINT.density(1), 0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.4, 0.9})
    void hasItsSlopeAtTheMidTone(double gamma) {
        ToneCurve curve = new ToneCurve(0.1, 2, 0.8, gamma);
        double h = 1e-4;
        double slope = (curve.density(Math.pow(10, h)) - curve.density(Math.pow(10, -h))) / (2 * h);
        assertEquals(gamma, slope, 1e-6); // the quotient's own error
        assertEquals(0.8, curve.density(1), 1e-12); // rounding
    }

    @Test
    void runsFromOneEndToTheOther() {
        assertEquals(ToneCurve.PRINT.densityMax(), ToneCurve.PRINT.density(0), 1e-12); // rounding
        assertEquals(ToneCurve.PRINT.densityMin(), ToneCurve.PRINT.density(Double.POSITIVE_INFINITY), 1e-12);
        assertEquals(ToneCurve.NEGATIVE.densityMin(), ToneCurve.NEGATIVE.density(0), 1e-12);
        for (double progress = 1e-3; progress < 1e3; progress *= 1.1) {
            assertTrue(ToneCurve.PRINT.density(progress * 1.1) < ToneCurve.PRINT.density(progress));
            assertTrue(ToneCurve.NEGATIVE.density(progress * 1.1) > ToneCurve.NEGATIVE.density(progress));
        }
    }

    @Test
    void canBeReadBackwards() {
        for (ToneCurve curve : List.of(ToneCurve.PRINT, ToneCurve.NEGATIVE)) {
            for (double progress = 1e-3; progress < 1e3; progress *= 1.3) {
                // near its ends the curve is flat and rounding counts a thousandfold
                assertEquals(progress, curve.progress(curve.density(progress)), 1e-9 * progress);
            }
        }
        assertEquals(Double.POSITIVE_INFINITY, ToneCurve.PRINT.progress(0.1));
        assertEquals(0, ToneCurve.PRINT.progress(1.9));
        assertEquals(0, ToneCurve.NEGATIVE.progress(0.05));
        assertEquals(Double.POSITIVE_INFINITY, ToneCurve.NEGATIVE.progress(2.4));
    }

    @Test
    void refusesAMidToneOutsideItsEnds() {
        assertThrows(BadInput.class, () -> new ToneCurve(0.1, 2, 2.1, 1));
        assertThrows(BadInput.class, () -> new ToneCurve(0.1, 2, 1, 0));
    }
}
