package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.ExposureTable.PassingStars;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExposureTableReferenceTest {

    private static final Instant EVENING = Instant.parse("2027-02-08T20:00:00Z");

    /**
     * The transfer t2 = t1 (N2/N1)² (S1/S2) of the exposure equation (ISO 2720), worked by hand; the first
     * row is common practice, no source: 30 s at f/2 become 18 min at f/12.
     */
    @ParameterizedTest
    @CsvSource({"2, 640, 12, 640, 1080", "2, 3200, 12, 100, 34560", "4, 400, 16, 800, 240"})
    void frameFromAnotherCameraSetsTheMeteredTime(double frameN, double frameIso, double filmN,
            double filmIso,
                                                  double meteredS) {
        FilmStock film = film(filmIso, Reciprocity.none());
        Lens lens = lens(filmN, 0);
        SkyOnFilm sky = SkyOnFilm.steady(lens,
                FilmPlane.luminanceOfFrame(lens, FNumber.exact(frameN), frameIso, 30));
        Exposure exposure = table(film, lens, sky).toTone(FNumber.exact(filmN), 0).exposure();
        assertEquals(meteredS, exposure.meteredS(), 1e-6 * meteredS); // rounding of doubles
        assertEquals(meteredS, exposure.correctedS(), 1e-6 * meteredS);
    }

    @Test
    void filterOfTwoStopsTakesFourTimesAsLong() {
        FilmStock film = film(640, Reciprocity.none());
        Lens lens = lens(12, 2);
        SkyOnFilm sky = SkyOnFilm.steady(lens, FilmPlane.luminanceOfFrame(lens, FNumber.exact(2), 640, 30));
        assertEquals(4 * 1080, table(film, lens, sky).toTone(FNumber.exact(12), 0).exposure().meteredS(),
                1e-6 * 4320); // doubles
    }

    /** 1080^1.31 = 9414 and 1080^1.26 = 6639, computed with a calculator to four digits. */
    @ParameterizedTest
    @CsvSource({"1.31, 9414", "1.26, 6639"})
    void powerLawCorrectsTheMeteredTime(double exponent, double correctedS) {
        FilmStock film = film(640, Reciprocity.power(exponent, 1));
        Lens lens = lens(12, 0);
        SkyOnFilm sky = SkyOnFilm.steady(lens, FilmPlane.luminanceOfFrame(lens, FNumber.exact(2), 640, 30));
        assertEquals(correctedS, table(film, lens, sky).toTone(FNumber.exact(12), 0).exposure().correctedS(),
                0.5); // given to 1 s
    }

    @Test
    void toneAfterATimeIsTheToneThatNeedsIt() {
        FilmStock film = film(640, Reciprocity.power(1.3, 1));
        Lens lens = lens(11, 0);
        SkyOnFilm sky = SkyOnFilm.steady(lens, SkyBrightness.ofMagArcsec2(21));
        Exposure after = table(film, lens, sky).after(FNumber.exact(11), Duration.ofHours(2)).exposure();
        assertEquals(7200, after.correctedS(), 1); // the engine's integral against its closed form
        assertEquals(7200, table(film, lens, sky).toTone(FNumber.exact(11),
                after.toneStops()).exposure().correctedS(), 1);
    }

    @Test
    void fadingSkyMayNeverMakeTheTone() {
        FilmStock film = film(100, Reciprocity.power(1.31, 1));
        Lens lens = lens(16, 0);
        SkyOnFilm sky = SkyOnFilm.changing(lens,
                at -> new SkyBrightness(1e-3 * Math.exp(-Duration.between(EVENING, at).toSeconds() / 300.0)),
                new Interval(EVENING, EVENING.plus(Duration.ofHours(8))));
        Exposure exposure = table(film, lens, sky).toTone(FNumber.exact(16), 0).exposure();
        assertTrue(exposure.neverFinishes());
        assertTrue(exposure.toneStops() < 0);
    }

    /**
     * Aperture alone makes a trail's strength at one f-number ratio: twice the f-number costs
     * 1.505 mag (5 log10 2) where the sky is black and the film loses no speed.
     */
    @Test
    void trailLimitFollowsTheFNumber() {
        FilmStock film = film(640, Reciprocity.none());
        Lens lens = new Lens(150, List.of(FNumber.exact(8), FNumber.exact(16)), 0.9,
                Double.POSITIVE_INFINITY, 400, 0, Projection.RECTILINEAR,
                Vignetting.NONE);
        SkyOnFilm sky = SkyOnFilm.steady(lens, new SkyBrightness(1e-9));
        ExposureTable table = table(film, lens, sky);
        double lossMag = table.after(FNumber.exact(8), Duration.ofHours(1)).trailLimitMag()
                - table.after(FNumber.exact(16), Duration.ofHours(1)).trailLimitMag();
        assertEquals(1.505, lossMag, 0.01); // diffraction widens the wide spot by under 1 %
    }

    private static ExposureTable table(FilmStock film, Lens lens, SkyOnFilm sky) {
        return new ExposureTable(film, lens, Scene.of(sky, PassingStars.of(lens, 0, 0)));
    }

    private static Lens lens(double fNumber, double filterStops) {
        return new Lens(150, List.of(FNumber.exact(fNumber)), 0.85, Double.POSITIVE_INFINITY, 40, filterStops,
                Projection.RECTILINEAR, Vignetting.NONE);
    }

    private static FilmStock film(double iso, Reciprocity law) {
        return new FilmStock("test film", iso, FilmStock.Kind.POSITIVE,
                List.of(new FilmStock.Layer("mono", law)), ToneCurve.PRINT, 0, "test");
    }
}
