package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelPlacesTest {

    /** Units of the em in which the widths below are given. */
    private static final double EM = 2048;

    /**
     * Advance widths summed over the letters, from the table {@code hmtx} of DejaVu Serif 2.37: no name needs
     * more room than it gets, and none gets more than a tenth too much.
     */
    @ParameterizedTest
    @CsvSource({"Nahn, 5651", "Homam, 8124", "Sirius, 6062", "Wezen, 6927", "ω Psc, 5897",
        "Moon 17:00, 12435"})
    void aNameHasTheRoomThatItNeedsInAWideFont(String name, double needs) {
        assertTrue(fits(name, 1.1 * needs), name);
        assertEquals(false, fits(name, needs - 1), name);
    }

    /** Names stand half a letter's height beside what they name. */
    private static boolean fits(String name, double wide) {
        LabelPlaces places = new LabelPlaces(0, 0, wide + EM / 2, 4 * EM, EM);
        return places.take(name, List.of(new double[] {0, 2 * EM})).isPresent();
    }
}
