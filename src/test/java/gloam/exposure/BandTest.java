package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandTest {

    /**
     * Planck's law at 650, 550 and 450 nm for Ballesteros's temperatures over that for 5500 K, computed
     * outside the project with the CODATA constant.
     */
    @ParameterizedTest
    @CsvSource({"-0.2, 0.6809732, 1.7806111", "0.17, 0.7920156, 1.4159470", "0.95, 1.0962825, 0.8734673",
        "1.5, 1.3794507, 0.6246166"})
    void colouredLightReachesTheLayersByPlancksLaw(double colourBv, double red, double blue) {
        assertEquals(red, Band.RED.share(colourBv), 1e-6); // digits of the reference
        assertEquals(1, Band.GREEN.share(colourBv), 1e-12);
        assertEquals(blue, Band.BLUE.share(colourBv), 1e-6);
        assertEquals(1, Band.ALL.share(colourBv));
    }

    @Test
    void lightOfUnknownColourIsWhite() {
        assertEquals(1, Band.BLUE.share(Double.NaN));
    }
}
