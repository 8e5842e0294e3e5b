package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A film without reciprocity failure under a steady sky: what is made is proportional to the time. */
class ExposedSheetTest {

    private static final Instant OPEN = Instant.parse("2027-02-06T20:00:00Z");
    private static final FNumber F8 = FNumber.marked(8);
    private static final Lens LENS = new Lens(120, List.of(F8), 0.9, Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE);
    private static final FilmStock FILM = Films.print(400, new Reciprocity.None());
    private static final SkyBrightness SKY = SkyBrightness.ofMagArcsec2(19);
    private static final double STAR_MM_S = 0.00875; // 120 mm on the equator: 120 · 7.29e-5

    @Test
    void toneGrowsByAStopForTwiceTheTime() {
        double one = sheet(600).skyToneStops();
        assertEquals(one + 1, sheet(1200).skyToneStops(), 1e-9);
        double metered = FILM.midToneLxS() / FilmPlane.illuminanceLx(LENS, F8, SKY);
        assertEquals(Math.log(600 / metered) / Math.log(2), one, 1e-9);
    }

    @Test
    void aStarRecordsUpToTheLimitAndStandsOverTheSky() {
        TrailLimit.Passing star = new TrailLimit.Passing(sheet(600), STAR_MM_S, 0);
        double limit = TrailLimit.magnitude(star);
        assertTrue(TrailLimit.records(star, limit - 0.01, Angle.ZERO));
        assertFalse(TrailLimit.records(star, limit + 0.01, Angle.ZERO));
        assertTrue(TrailLimit.stopsOverSky(star, limit - 3, Angle.ZERO)
                > TrailLimit.stopsOverSky(star, limit, Angle.ZERO));
        assertEquals(limit - 0.5, TrailLimit.magnitude(new TrailLimit.Passing(sheet(600), STAR_MM_S, 0.5)),
                1e-3, "half a magnitude lost in the air");
    }

    /** A light that could change but does not makes what a steady one makes. */
    @Test
    void changingSkyThatStandsStillIsSteady() {
        Interval night = Interval.lasting(OPEN, Duration.ofHours(6));
        SkyOnFilm changing = SkyOnFilm.changing(LENS, at -> SKY, night);
        SkyOnFilm steady = SkyOnFilm.steady(LENS, SKY);
        Exposure expected = steady.exposure(FILM, F8, -1);
        Exposure given = changing.exposure(FILM, F8, -1);
        assertEquals(expected.correctedS(), given.correctedS(), 1e-6 * expected.correctedS());
        assertEquals(-1, changing.toneStops(FILM, FILM.reciprocity(), F8, given.correctedS()), 1e-6);
        assertEquals(-1, steady.toneStops(FILM, FILM.reciprocity(), F8, expected.correctedS()), 1e-9);
    }

    /** On a sheet opened before only the rest is left to do, and the range of doubt is that of the whole. */
    @Test
    void whatWasMadeBeforeIsTakenOff() {
        double metered = FILM.midToneLxS() / FilmPlane.illuminanceLx(LENS, F8, SKY);
        Interval before = Interval.lasting(OPEN, Duration.ofNanos(Math.round(metered * 0.25e9)));
        Interval available = Interval.lasting(before.endExclusive().plusSeconds(60), Duration.ofHours(20));
        Exposure rest = ExposureEngine.exposure(FILM,
                LightCurve.constant(FilmPlane.illuminanceLx(LENS, F8, SKY)),
                new Shutter(List.of(before), available), 0);
        assertEquals(0.75 * metered, rest.meteredS(), 1e-3 * metered);
        assertEquals(0.75 * metered, rest.correctedS(), 1e-3 * metered);
        double doubt = Stops.factor(rest.spreadStops());
        assertEquals((1 / doubt - 0.25) * metered, rest.lowS(), 1e-3 * metered);
        assertEquals((doubt - 0.25) * metered, rest.highS(), 1e-3 * metered);
    }

    /** By constant light the same range is a factor up and down. */
    @Test
    void doubtIsAsManyStopsUpAsDown() {
        Exposure exposure = ExposureEngine.exposure(FILM, 300, -1);
        assertEquals(exposure.spreadStops(), Stops.between(exposure.correctedS(), exposure.highS()), 1e-9);
        assertEquals(exposure.spreadStops(), Stops.between(exposure.lowS(), exposure.correctedS()), 1e-9);
        assertEquals(150, exposure.meteredS(), 1e-9);
    }

    /** How dim the light is, not how long it is let in, tells how far a law is stretched. */
    @Test
    void stretchingALawDependsOnTheLightAlone() {
        FilmStock film = Films.print(400, new Reciprocity.PowerLaw(1.3, 1));
        double lx = film.midToneLxS() / (0.9 * film.reciprocity().coveredToS());
        Interval night = Interval.lasting(OPEN, Duration.ofHours(20));
        for (double toneStops : new double[] {-2, 0, 2}) {
            Exposure made = ExposureEngine.exposure(film, LightCurve.constant(lx), night, toneStops);
            assertFalse(made.extrapolated(), toneStops + " stops");
        }
        assertTrue(ExposureEngine.exposure(film, LightCurve.constant(0.5 * lx), night, -2).extrapolated());
    }

    private static ExposedSheet sheet(long seconds) {
        double skyLx = FilmPlane.illuminanceLx(LENS, F8, SKY);
        return new ExposedSheet(FILM, LENS, F8, seconds, seconds * ExposureEngine.ratePerS(FILM, skyLx),
                skyLx);
    }
}
