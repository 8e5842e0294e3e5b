package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotPropertyTest {

    @ParameterizedTest
    @CsvSource({"0", "1e-5", "0.01", "0.3", "2.5"})
    void allTheLightArrivesWhateverTheLength(double lengthMm) {
        for (Spot spot : new Spot[] {new Spot.Soft(0.03), new Spot.Disc(0.08)}) {
            assertEquals(1, onSheet(spot, lengthMm), 2e-3);
                    // sum over squares of 2 µm; a disc has sharp edges
        }
    }

    private static double onSheet(Spot spot, double lengthMm) {
        double stepMm = 0.002;
        double sum = 0;
        for (double along = -spot.reachMm() - stepMm; along < lengthMm + spot.reachMm() + stepMm;
                along += stepMm) {
            for (double aside = -spot.reachMm(); aside <= spot.reachMm(); aside += stepMm) {
                sum += spot.perMm2(along, aside, lengthMm) * stepMm * stepMm;
            }
        }
        return sum;
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.4, 0.02", "0.2, 1.3, -0.01", "-0.05, 0.2, 0"})
    void aLineInTwoPiecesIsTheWholeLine(double alongMm, double lengthMm, double asideMm) {
        for (Spot spot : new Spot[] {new Spot.Soft(0.03), new Spot.Disc(0.08)}) {
            double firstMm = 0.3 * lengthMm;
            double secondMm = lengthMm - firstMm;
            double pieces = (firstMm * spot.perMm2(alongMm, asideMm, firstMm)
                    + secondMm * spot.perMm2(alongMm - firstMm, asideMm, secondMm)) / lengthMm;
            assertEquals(spot.perMm2(alongMm, asideMm, lengthMm), pieces, 1e-9); // rounding
        }
    }
}
