package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardNormalTest {

    @ParameterizedTest
    // Abramowitz and Stegun 1964, table 26.1
    @CsvSource({"0, 0.5", "1, 0.8413447", "-1.96, 0.0249979", "2.5758293, 0.995", "-7, 0", "6, 1"})
    void theNormalDistributionIsThatOfTheTables(double x, double share) {
        assertEquals(share, StandardNormal.below(x), 1e-7); // the last digit of the published values
    }
}
