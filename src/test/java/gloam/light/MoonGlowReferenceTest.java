package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MoonGlowReferenceTest {

    private static final double MEAN_KM = 384_400;

    static Stream<Row> skies() {
        return ReferenceTable.read("krisciunas-schaefer-1991/moonlit-sky.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("skies")
    void moonlitSkyFollowsThePaper(Row row) {
        double moonNl = MoonGlow.nanolamberts(MoonGlow.meanIntensity(row.number("phaseDeg")),
                row.number("separationDeg"), row.number("moonZenithDeg"), row.number("zenithDeg"), 0.172);
        if (row.has("moonNanolamberts")) {
            assertEquals(row.number("moonNanolamberts"), moonNl, 5e-4 * moonNl);
        }
        if (row.has("totalMag")) {
            assertEquals(row.number("totalMag"), magnitude(moonNl + 79.0), 0.002);
        }
    }

    static Stream<Row> scattering() {
        return ReferenceTable.read("krisciunas-schaefer-1991/scattering.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("scattering")
    void scatteringFollowsThePaper(Row row) {
        double expected = row.number("scattering");
        double separationDeg = row.number("separationDeg");
        assertEquals(expected, MoonGlow.scattering(separationDeg), 5e-4 * expected);
    }

    static Stream<Row> phases() {
        return ReferenceTable.read("allen/moon-phase.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("phases")
    void moonWanesAsInTheHandbook(Row row) {
        double fainterMag = -2.5 * Math.log10(
                MoonGlow.meanIntensity(row.number("phaseDeg")) / MoonGlow.meanIntensity(0));
        assertEquals(row.number("fainterMag"), fainterMag, 0.12);
    }

    @Test
    void agreesWithASpectrographSimulation() {
        // Z 20, Zm 70, ρ 50, α 45, k 0.15, Moon only: 19.855 mag, documented value of a published
        // spectrograph-simulation library; printed to 0.001
        double moonNl = MoonGlow.nanolamberts(MoonGlow.meanIntensity(45), 50, 70, 20, 0.15);
        assertEquals(19.855, magnitude(moonNl), 0.001);
    }

    @Test
    void agreesWithTheSkyModelOfParanal() {
        // Noll et al. 2012, Jones et al. 2013: zenith V = 18.01 with the full Moon 45° high, 21.83 without.
        // 0.4 mag, because published models differ by 0.3 to 0.4; extinction 0.13 mag as there
        double moonCdM2 = luminanceCdM2(MoonGlow.intensity(0, MEAN_KM), 45, 45, 0.13);
        double dark = SkyBrightness.ofMagArcsec2(21.83).cdM2();
        assertEquals(18.01, new SkyBrightness(moonCdM2 + dark).magArcsec2(), 0.4);
    }

    @Test
    void quarterMoonGivesATenthToAnEleventhOfTheFull() {
        // common handbook ratio 10 to 11; the formula's own, independently computed, 10.99
        assertEquals(10.99, MoonGlow.meanIntensity(0) / MoonGlow.meanIntensity(90), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"0.99, 0.760", "0.95, 0.538", "0.9, 0.411", "0.75, 0.227", "0.5, 0.091", "0.25, 0.026"})
    void lightFallsFasterThanTheLitShare(double illuminatedFraction, double share) {
        // equation 20 at the phase angle of each fraction, independently computed to 0.001
        double phaseDeg = Math.toDegrees(Math.acos(2 * illuminatedFraction - 1));
        assertEquals(share, MoonGlow.meanIntensity(phaseDeg) / MoonGlow.meanIntensity(0), 6e-4);
    }

    @Test
    void fullMoonIsAStarOfItsMagnitude() {
        // V = -12.73 outside the air is 0.3139 lx with a V = 0 star of 2.54e-6 lx; the paper's 16.57 mag for
        // a foot-candle (10.7639 lx) stands for 2.535e-6. 0.3 % for that
        assertEquals(0.3139, MoonGlow.meanIntensity(0) * 10.7639, 0.003 * 0.3139);
    }

    @Test
    void nearMoonIsBrighter() {
        // inverse square, independently computed to three digits: perigee 356 500 km, apogee 406 700 km
        assertEquals(1.163, MoonGlow.intensity(90, 356_500) / MoonGlow.meanIntensity(90), 0.0005);
        assertEquals(0.893, MoonGlow.intensity(90, 406_700) / MoonGlow.meanIntensity(90), 0.0005);
    }

    @Test
    void fullMoonSurges() {
        // Krisciunas and Schaefer 1991, p. 1035: 35 % brighter at full, nothing from 7° on
        assertEquals(1.35, MoonGlow.intensity(0, MEAN_KM) / MoonGlow.meanIntensity(0), 1e-12);
        assertEquals(1, MoonGlow.intensity(7, MEAN_KM) / MoonGlow.meanIntensity(7), 1e-12);
    }

    @Test
    void moonOnTheHorizonLightsTheZenithAsTheSunDoesFourteenMagnitudesFainter() {
        // V of Sun -26.74 (Schaefer), of the full Moon -12.73 (Krisciunas and Schaefer); 0.1 mag because
        // extinction counts
        double moonCdM2 = luminanceCdM2(MoonGlow.meanIntensity(0), 90, 0, 0.2);
        assertEquals(TwilightGlow.zenithMagArcsec2(0) + 26.74 - 12.73,
                new SkyBrightness(moonCdM2).magArcsec2(), 0.1);
    }

    @Test
    void aureoleJoinsWithoutAStep() {
        for (double deg = 0.3; deg < 179; deg += 0.01) {
            double ratio = MoonGlow.scattering(deg + 0.01) / MoonGlow.scattering(deg);
            assertEquals(1, ratio, 0.07); // the inverse square alone falls by 6.5 % in 0.01° at 0.3°
        }
        assertTrue(MoonGlow.scattering(9.99) >= MoonGlow.scattering(10.01));
    }

    /** Equation 1 of the paper turned round: nanolamberts to V mag/arcsec². */
    private static double magnitude(double nanolamberts) {
        return (20.7233 - Math.log(nanolamberts / 34.08)) / 0.92104;
    }

    /** Of the zenith. */
    private static double luminanceCdM2(double intensity, double separationDeg, double moonAltitudeDeg,
                                        double extinctionMag) {
        return MoonGlow.strengthCdM2(intensity, moonAltitudeDeg, extinctionMag)
                * MoonGlow.scattering(separationDeg) * MoonGlow.scattered(0, extinctionMag);
    }
}
