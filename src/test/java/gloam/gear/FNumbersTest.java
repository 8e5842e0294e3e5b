package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FNumbersTest {

    /** Half a unit of the last digit printed. */
    private static final double PRINTED = 5e-5;

    /** ISO 517:2008, exact values of the markings, four decimals. */
    @ParameterizedTest
    @CsvSource({"1.4, 1.4142", "2.8, 2.8284", "5.6, 5.6569", "11, 11.3137", "22, 22.6274", "45, 45.2548", "90, 90.5097",
        "1, 1", "16, 16", "64, 64", "128, 128",
        "1.2, 1.1892", "1.7, 1.6818", "2.4, 2.3784", "3.3, 3.3636", "4.8, 4.7568", "6.7, 6.7272", "9.5, 9.5137",
        "19, 19.0273",
        "1.1, 1.1225", "1.6, 1.5874", "1.8, 1.7818", "2.2, 2.2449", "2.5, 2.5198", "3.2, 3.1748", "3.5, 3.5636",
        "4.5, 4.4898", "5.0, 5.0397", "6.3, 6.3496", "7.1, 7.1272", "9, 8.9797", "10, 10.0794", "14, 14.2544",
        "18, 17.9594", "20, 20.1587"})
    void markingsStandForTheirExactValues(double marking, double exact) {
        assertEquals(exact, FNumbers.exact(marking), PRINTED);
        assertEquals(marking, FNumbers.marking(FNumbers.exact(marking)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 11.3137, 15, 44.9, 180, 500})
    void numbersOffTheListStandForThemselves(double fNumber) {
        assertEquals(fNumber, FNumbers.exact(fNumber));
    }
}
