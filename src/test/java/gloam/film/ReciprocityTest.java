package gloam.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.film.ReciprocityTable.Point;
import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReciprocityTest {

    @Test
    void powerLawWithAnotherOnsetStartsThereWithoutAStep() {
        Reciprocity law = Reciprocity.power(1.3, 10);
        assertEquals(10, law.correctedS(10));
        assertEquals(10 * Math.pow(10, 1.3), law.correctedS(100), 1e-9); // the same sum in another order
        assertEquals(5, law.correctedS(5));
    }

    @Test
    void darknessNeedsForEver() {
        for (Reciprocity law : laws()) {
            assertEquals(Double.POSITIVE_INFINITY, law.correctedS(Double.POSITIVE_INFINITY), law.toString());
            assertEquals(Double.POSITIVE_INFINITY, law.meteredS(Double.POSITIVE_INFINITY), law.toString());
            assertEquals(0, law.correctedS(0), law.toString());
        }
    }

    @Test
    void tableGoesBackAlongItsFirstStretchUntilItMeetsTheMeteredTime() {
        Reciprocity table = Reciprocity.table(List.of(new Point(1, 2), new Point(10, 40)));
        // slope log10(20) = 1.301; 2 t^1.301 = t at t = 2^(-1/0.301) = 0.1
        assertEquals(2 * Math.pow(0.5, 1.30103), table.correctedS(0.5), 1e-5); // the exponent is rounded
        assertEquals(0.09, table.correctedS(0.09));
        assertEquals(1, table.exponentAt(0.09));
    }

    @Test
    void tableIsCutToSquareLawBeyondItsEnd() {
        Reciprocity table = Reciprocity.table(List.of(new Point(1, 1), new Point(10, 1000)));
        assertEquals(4000, table.correctedS(20), 1e-9 * 4000);
    }

    @Test
    void tableRefusesWhatCannotBe() {
        BadInput shortens = assertThrows(BadInput.class,
                () -> Reciprocity.table(List.of(new Point(1, 1), new Point(10, 9))));
        assertEquals("reciprocity point 10.0 s -> 9.0 s shortens the metered time; "
                        + "a corrected time is never below it",
                shortens.getMessage());
        assertThrows(BadInput.class, () -> Reciprocity.table(List.of(new Point(1, 1))));
        assertThrows(BadInput.class, () -> Reciprocity.table(List.of(new Point(1, 3), new Point(2, 3))));
        assertThrows(BadInput.class, () -> new Point(-1, 3));
    }

    @Test
    void exponentsTheWrongWayRoundAreRefused() {
        assertThrows(BadInput.class, () -> Reciprocity.power(0.86, 1));
        assertThrows(BadInput.class, () -> Reciprocity.schwarzschild(1.16, 1));
    }

    private static List<Reciprocity> laws() {
        return List.of(Reciprocity.none(), Reciprocity.power(1.3, 1), new Reciprocity.AddedPower(0.1, 1.6),
                new Reciprocity.Catenary(0.3, 0.1, 0.1),
                Reciprocity.table(List.of(new Point(1, 2), new Point(10, 40))));
    }
}
