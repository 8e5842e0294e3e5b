package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkyBrightnessTest {

    @ParameterizedTest
    @CsvSource({"16, 4.300e-2", "17, 1.712e-2", "18, 6.814e-3", "19, 2.713e-3", "20, 1.080e-3",
            "21, 4.300e-4",
        "21.5, 2.713e-4", "16.6, 2.474e-2", "21.31, 3.232e-4", "21.6, 2.474e-4", "22.0, 1.712e-4"})
    void magnitudesAreLuminances(double magArcsec2, double cdM2) {
        // 1.08e5 · 10^(−0.4 μ); 21.31 ↔ 323.16 µcd/m² is published (lightpollution.pk.edu.pl), 22.0 ↔
        // 1.7e-4 by Falchi et al. 2016; four digits
        assertEquals(cdM2, SkyBrightness.ofMagArcsec2(magArcsec2).cdM2(), 5e-4 * cdM2);
        assertEquals(magArcsec2, new SkyBrightness(cdM2).magArcsec2(), 5e-4);
    }

    @Test
    void zeroPointIsThatOfAStarOverASquareArcsecond() {
        // V = 0 is 2.54e-6 lx (Allen; Schaefer 1990; Crumey 2014); 0.1 % because 1.08e5 is rounded
        double zeroLx = 2.54e-6;
        double arcsecARad = 206264.806;
        assertEquals(zeroLx * arcsecARad * arcsecARad, SkyBrightness.ofMagArcsec2(0).cdM2(), 0.001 * 1.08e5);
    }

    @ParameterizedTest
    @CsvSource({"21.587, 79.0", "22.0, 54.0"})
    void nanolambertsAreThoseOfTheMoonlightPaper(double magArcsec2, double nanolamberts) {
        // Krisciunas and Schaefer 1991, equation 1; 21.587 and 79.0 from memory. 0.6 % because their formula
        // lies 0.45 % higher than the zero point here and the values are given to three digits
        assertEquals(nanolamberts, SkyBrightness.ofMagArcsec2(magArcsec2).cdM2() * 1e5 * Math.PI,
                0.006 * nanolamberts);
    }

    @ParameterizedTest
    @CsvSource({"0.01, 21.6", "0.11, 21.5", "0.33, 21.3", "1, 20.8", "3, 20.1", "9, 19.1", "27, 18.0"})
    void artificialLightBrightensASkyAsTheWorldAtlasSays(double overNatural, double magArcsec2) {
        // Steps of the world atlas of night-sky brightness as widely copied, for a natural sky of 21.6; 0.06
        // because they are printed to 0.1
        SkyBrightness natural = SkyBrightness.ofMagArcsec2(21.6);
        SkyBrightness total = natural.plus(new SkyBrightness(overNatural * natural.cdM2()));
        assertEquals(magArcsec2, total.magArcsec2(), 0.06);
    }

    @Test
    void lightAddsUp() {
        SkyBrightness one = SkyBrightness.ofMagArcsec2(20);
        assertEquals(20 - 2.5 * Math.log10(2), one.plus(one).magArcsec2(), 1e-12); // rounding
        assertEquals(Double.POSITIVE_INFINITY, SkyBrightness.NONE.magArcsec2());
    }

    @Test
    void refusesWhatIsNoLuminance() {
        assertThrows(IllegalArgumentException.class, () -> new SkyBrightness(-1e-9));
        assertThrows(IllegalArgumentException.class, () -> new SkyBrightness(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new SkyBrightness(Double.POSITIVE_INFINITY));
    }
}
