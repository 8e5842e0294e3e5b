package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkyColourReferenceTest {

    private static final Circumstances SKY = Circumstances.of(new AnalyticEphemeris(), Places.MID_NORTH,
            Instant.parse("2027-02-06T22:00:00Z"));

    @Test
    void moonlightTurnsTheSkyBlue() {
        // Sky model of Cerro Paranal: moonless V 21.83, B−V 0.95; full Moon 45° from the zenith V 18.01,
        // B−V 0.19; 0.01 because all are given to 0.01
        double dark = SkyBrightness.ofMagArcsec2(21.83).cdM2();
        double moonlit = SkyBrightness.ofMagArcsec2(18.01).cdM2();
        assertEquals(0.95, bv(dark, 0, 0), 1e-9);
        assertEquals(0.19, bv(dark, moonlit - dark, 0), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"5, 0.00", "6, -0.09", "7, -0.15", "8, -0.18", "9, -0.17", "10, -0.13", "11, -0.07"})
    void twilightIsBlue(double depressionDeg, double bv) {
        // Patat et al. 2006, A&A 455, 385, table 1: B less V of its polynomials, night sky included; 0.2
        // because the B and V measurements scatter by 0.12 and 0.18 mag about them
        double dark = SkyBrightness.ofMagArcsec2(21.61).cdM2();
        double twilight = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(depressionDeg)).cdM2();
        assertEquals(bv, bv(dark, 0, twilight), 0.2);
    }

    @ParameterizedTest
    @CsvSource({"0.19, 8240", "0.95, 4870", "1.03, 4670", "-0.18, 13100"})
    void coloursAreTemperatures(double bv, double kelvin) {
        // Ballesteros 2012, EPL 97, 34008; independently computed to three digits
        assertEquals(kelvin, SkyColour.temperatureK(bv), 0.005 * kelvin);
    }

    @Test
    void lightsMixBetweenTheirColours() {
        assertTrue(bv(1, 1, 0) > bv(0, 1, 0) && bv(1, 1, 0) < bv(1,
                0, 0));
    }

    /** Colour of luminances given by source. */
    private static double bv(double darkCdM2, double moonCdM2, double twilightCdM2) {
        double[] blueShares = Stream.of(LightSource.AIRGLOW, LightSource.MOON, LightSource.TWILIGHT)
                .mapToDouble(source -> SkyColour.blueShare(
                        source.model().over(Places.MID_NORTH).at(SKY).colourBv())).toArray();
        return SkyColour.bv(new double[] {darkCdM2, moonCdM2, twilightCdM2}, blueShares);
    }
}
