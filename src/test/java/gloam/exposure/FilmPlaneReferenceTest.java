package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.units.Angle;
import gloam.units.Stops;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmPlaneReferenceTest {

    /** A lens with q = π/4 · transmittance = 0.65, as the meter equation takes it. */
    private static final Lens METERED = lens(0.65 / (Math.PI / 4));

    @ParameterizedTest
    @CsvSource({"2, 100, 12, 100, 30, 1080", "2, 3200, 12, 100, 30, 34560"})
    void frameFromAnotherCameraGivesTheMeteredTime(double frameFNumber, double frameIso, double fNumber,
                                                   double iso, double frameS, double meteredS) {
        // t2 = t1 (N2/N1)² (S1/S2), independently computed. First row also common practice, no source: 30 s
        // at f/2 becomes 18 min at f/12 on film of the same speed before reciprocity failure
        SkyBrightness sky = FilmPlane.luminanceOfFrame(METERED, FNumber.exact(frameFNumber), frameIso,
                frameS);
        FilmStock film = Films.print(iso, Reciprocity.none());
        assertEquals(meteredS, FilmPlane.meteredS(film, METERED, FNumber.exact(fNumber), sky),
                1e-9 * meteredS); // rounding
    }

    @ParameterizedTest
    @CsvSource({"1.31, 9414, 3.12", "1.26, 6639, "})
    void reciprocityComesLast(double exponent, double correctedS, Double stops) {
        // 1080 s metered, tc = tm^P; independently computed to four digits
        FilmStock film = Films.print(100, Reciprocity.power(exponent, 1));
        Exposure exposure = ExposureEngine.exposure(film, 1080, 0);
        assertEquals(correctedS, exposure.correctedS(), 0.5);
        if (stops != null) {
            assertEquals(stops, exposure.reciprocityStops(), 0.005);
        }
    }

    @Test
    void meterEquationGivesTheBrightnessOfASunlitScene() {
        // N²/t = L S/K, K = 12.5 (ISO 2720): f/16 at 1/S means 3200 cd/m²; EV 15 at ISO 100 is 4096 cd/m²
        // (photography forum post 1770208, read before 2026-11-25). Exact.
        assertEquals(3200, FilmPlane.luminanceOfFrame(METERED, FNumber.exact(16), 100, 1 / 100.0).cdM2(),
                1e-9);
        assertEquals(0.125, FilmPlane.luminanceOfFrame(METERED, FNumber.exact(1), 100, 1).cdM2(),
                1e-12); // EV 0
        assertEquals(4096, FilmPlane.luminanceOfFrame(METERED, FNumber.exact(Math.sqrt(Math.pow(2, 15))),
                100, 1).cdM2(), 1e-9);
        // the same post's worked example: 3200 cd/m² at f/16 for 1/125 s is 0.065 lx s
        double illuminanceLx = FilmPlane.illuminanceLx(METERED, FNumber.exact(16), new SkyBrightness(3200));
        assertEquals(0.065, illuminanceLx / 125, 1e-12);
    }

    @Test
    void transmittanceOfNineTenthsGivesTheMetersConstant() {
        // q = π/4 · 0.90 · 0.98 (mechanical vignetting) · cos⁴ 10° = 0.6516, independently computed to four
        // digits
        Lens lens = lens(0.90);
        double onAxis = FilmPlane.illuminanceLx(lens, FNumber.exact(1), new SkyBrightness(1));
        assertEquals(0.6516,
                onAxis * 0.98 * lens.relativeIllumination(Angle.ofDegrees(10), FNumber.exact(8)), 5e-5);
    }

    @Test
    void transmittanceCountsAsAHigherFNumber() {
        // T = N/√τ: f/2 at τ = 0.8 is T 2.236, independently computed to four digits
        SkyBrightness sky = new SkyBrightness(1);
        double throughGlass = FilmPlane.illuminanceLx(lens(0.8), FNumber.exact(2), sky);
        assertEquals(throughGlass, FilmPlane.illuminanceLx(lens(1), FNumber.exact(2.236), sky),
                5e-4 * throughGlass);
    }

    @ParameterizedTest
    @CsvSource({"100, 5.6, 22549", "640, 12, 16178"})
    void darkSkyNeedsHours(double iso, double fNumber, double publishedS) {
        // sky of 22 mag/arcsec² to the mid-tone without failure, independently computed with a mid-tone of
        // 8/S lx s
        FilmStock film = Films.print(iso, Reciprocity.none());
        double meteredS = FilmPlane.meteredS(film, METERED, FNumber.exact(fNumber),
                SkyBrightness.ofMagArcsec2(22));
        assertEquals(0, Stops.between(publishedS, meteredS), 0.03); // 8.125/S here
    }

    @Test
    void darkSkyThroughASmallStopLeavesAFilmLittleOfItsSpeed() {
        // 21.6 mag/arcsec² at f/12 is 1.12e-6 lx; ISO 640 is metered at 1.14e4 s and keeps 0.055 of its speed
        // at P = 1.31. Independently computed to three and two digits
        SkyBrightness sky = SkyBrightness.ofMagArcsec2(21.6);
        assertEquals(1.12e-6, FilmPlane.illuminanceLx(METERED, FNumber.exact(12), sky), 0.005e-6);
        FilmStock film = Films.print(640, Reciprocity.power(1.31, 1));
        double meteredS = FilmPlane.meteredS(film, METERED, FNumber.exact(12), sky);
        assertEquals(1.14e4, meteredS, 0.005e4);
        assertEquals(0.055, meteredS / film.reciprocity().correctedS(meteredS), 5e-4);
    }

    @ParameterizedTest
    @CsvSource({"0.2", "0.65", "0.9", "1"})
    void previewMetersTheFilmWhateverBothLensesPass(double transmittance) {
        // 30 s at f/2 are 1080 s at f/12, by the exposure equation; only the stated luminance hangs on the
        // glass
        Lens glass = lens(transmittance);
        SkyBrightness sky = FilmPlane.luminanceOfFrame(glass, FNumber.exact(2), 640, 30);
        assertEquals(1080, FilmPlane.meteredS(Films.print(640, Reciprocity.none()), glass, FNumber.exact(12),
                sky), 1e-9 * 1080);
    }

    private static Lens lens(double transmittance) {
        return new Lens(150, List.of(FNumber.exact(12)), transmittance, Double.POSITIVE_INFINITY, 50, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
    }
}
