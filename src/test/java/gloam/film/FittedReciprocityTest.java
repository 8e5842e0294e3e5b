package gloam.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FittedReciprocity.Doubt;
import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class FittedReciprocityTest {

    private static final Reciprocity TABLE = Reciprocity.table(List.of(new ReciprocityTable.Point(1, 2),
            new ReciprocityTable.Point(10, 50), new ReciprocityTable.Point(100, 1200)));

    @Test
    void aPowerLawStaysOne() {
        Reciprocity law = new FittedReciprocity(Reciprocity.power(1.2, 1), 1.5, 900, Doubt.NONE);
        for (double meteredS : new double[] {0.5, 1, 30, 3600}) {
            // the same law by its formula, tc = tm^(1 + 1.5 · 0.2); rounding only
            assertEquals(Reciprocity.power(1.3, 1).correctedS(meteredS), law.correctedS(meteredS),
                    1e-9 * meteredS);
        }
        assertEquals(1.3, law.exponentAt(100), 1e-12);
        assertEquals(900, law.coveredToS());
    }

    @Test
    void theFailureOfATableIsScaledInLogTime() {
        Reciprocity law = new FittedReciprocity(TABLE, 0.5, 100, Doubt.NONE);
        assertEquals(100 * Math.sqrt(12), law.correctedS(100), 1e-9);
        assertEquals(0, law.correctedS(0));
        // half of 1.380 less one, the slope of the table's last stretch
        assertEquals(1.190, law.exponentAt(30), 0.001);
    }

    @Test
    void itIsUndoneByItsInverse() {
        Reciprocity law = new FittedReciprocity(TABLE, 0.7, 100, Doubt.NONE);
        assertEquals(321, law.meteredS(law.correctedS(321)), 1e-6);
    }

    @Test
    void aScaleBeyondSenseIsRefused() {
        assertTrue(assertThrows(BadInput.class, () -> new FittedReciprocity(TABLE, 0, 100, Doubt.NONE))
                .getMessage()
                .startsWith("scale of the reciprocity failure 0 is out of range"));
    }

    /**
     * d log2 tc = P d(offset) + log2(tc/tm of the published law) d(scale), added as what is correlated adds.
     */
    @Test
    void doubtOfSpeedAndFailureAdd() {
        double failureStops = 0.2 * Math.log(100) / Math.log(2) * 0.1;
        assertEquals(1.3 * 0.5, doubtStops(new Doubt(0.5, 0, 0)), 1e-12);
        assertEquals(failureStops, doubtStops(new Doubt(0, 0.1, 0)), 1e-12);
        assertEquals(Math.hypot(1.3 * 0.5, failureStops), doubtStops(new Doubt(0.5, 0.1, 0)), 1e-12);
        assertEquals(1.3 * 0.5 - failureStops, doubtStops(new Doubt(0.5, 0.1, -1)), 1e-9);
    }

    private static double doubtStops(Doubt doubt) {
        return new FittedReciprocity(Reciprocity.power(1.2, 1), 1.5, 900, doubt).doubtStops(100);
    }
}
