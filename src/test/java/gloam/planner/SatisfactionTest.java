package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Common practice, no source: a quarter of a stop off is what was wanted, beyond it a Gaussian of 0.75 stop.
 */
class SatisfactionTest {

    @ParameterizedTest
    @CsvSource({"-2, 1", "-1.75, 1", "-2.25, 1", "-1, 0.60653", "-3, 0.60653", "-0.25, 0.13534"})
    void aToneIsMissedBothWays(double madeStops, double satisfaction) {
        // e^-1/2, e^-2
        assertEquals(satisfaction, Satisfaction.ofTone(new Wish.Tone.Near(-2), madeStops), 1e-5);
    }

    @ParameterizedTest
    @CsvSource({"-9, 1", "-1.75, 1", "-1, 0.60653"})
    void aLimitIsMissedUpwardsAlone(double madeStops, double satisfaction) {
        assertEquals(satisfaction, Satisfaction.ofTone(new Wish.Tone.AtMost(-2), madeStops), 1e-5);
        assertEquals(1, Satisfaction.ofTone(new Wish.Tone.Free(), madeStops));
    }

    /** Half a magnitude short is a standard deviation. */
    @ParameterizedTest
    @CsvSource({"-1, 1", "0, 1", "0.5, 0.60653", "1, 0.13534"})
    void starsThatAreTooFaintCount(double shortfallMag, double satisfaction) {
        assertEquals(satisfaction, Satisfaction.ofRecords(shortfallMag), 1e-5);
    }
}
