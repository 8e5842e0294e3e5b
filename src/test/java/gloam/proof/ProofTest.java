package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.exposure.ExposureEngine;
import gloam.exposure.FilmPlane;
import gloam.exposure.LightCurve;
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.light.SkyLight;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProofTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final OptionalDouble BLACK_LAND = OptionalDouble.empty();
    private static final Frame FRAME = new Frame(80, 60);
    private static final FilmStock FILM = Sheets.mono(Reciprocity.power(1.3, 1));

    /** Azimuth, altitude and time of a dark, a moonlit and a dusk sky. */
    @ParameterizedTest
    @CsvSource({"0, 41, 2027-02-06T21:00:00Z, 180", "100, 35, 2027-02-17T19:30:00Z, 60",
        "255, 25, 2027-02-08T17:40:00Z, 60"})
    void skyPixelsAreWhatTheExposureEngineSays(double azimuthDeg, double altitudeDeg, String open,
    int minutes) {
        Sheet sheet = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Sheets.lens(120, 11, 0.05), FRAME, FILM, Sheets.open(open, minutes));
        Raster raster = Raster.of(FRAME, 81);
        Proof proof = Proof.of(EPHEMERIS, sheet, BLACK_LAND, List.of(), raster);
        SkyLight sky = new SkyLight(EPHEMERIS, Places.MID_NORTH);
        for (int corner = 0; corner < 5; corner++) {
            int column = corner == 4 ? raster.widthPx() / 2 : corner % 2 * (raster.widthPx() - 1);
            int row = corner == 4 ? raster.heightPx() / 2 : corner / 2 * (raster.heightPx() - 1);
            Direction seen = sheet.first().framing().toSky(raster.xMm(column), raster.yMm(row));
            double cosine = seen.to(sheet.first().framing().aim()).cos();
            double fallOff = Math.pow(cosine, 4); // film-exposure handbooks' cos⁴ law
            LightCurve light = at -> fallOff
                    * FilmPlane.illuminanceLx(sheet.first().lens(), FNumber.exact(11),
                    sky.at(seen, at).total());
            double expected = ExposureEngine.progress(FILM, light, sheet.openings().get(0));
            // a tenth of the least visible half stop: nodes a degree apart, steps of five minutes
            assertEquals(0, Stops.between(expected, proof.progress(0, column, row)), 0.02);
        }
    }

    /**
     * A star of V = 0 on the celestial equator, as it crosses the meridian of a site with air that takes
     * nothing.
     */
    private record Crossing(Site site, Interval open, Star star, Direction aim) {

        static Crossing of() {
            Site base = Places.at(40, 0, 0);
            Site site = new Site(base.name(), base.latitude(), base.longitude(), 0, ZoneOffset.UTC, 22, 0,
                    Skyline.FLAT);
            Interval open = Sheets.open("2027-02-06T22:00:00Z", 10);
            SkyPosition probe = EPHEMERIS.position(Star.at("", 0, 0), site, open.middle());
            double turnDeg = hourAngleDeg(probe, site);
            Star near = Star.at("", (turnDeg + 360) % 360, 0);
            SkyPosition found = EPHEMERIS.position(near, site, open.middle());
            Star star = new Star("star", near.rightAscensionDeg(), -found.declination().degrees(), 0, 0, 0,
                    Double.NaN);
            return new Crossing(site, open, star,
                    new TrailEstimator(EPHEMERIS, site).direction(star, open.middle()));
        }

        private static double hourAngleDeg(SkyPosition position, Site site) {
            Angle azimuth = position.azimuth();
            Angle altitude = position.airlessAltitude();
            double west = -altitude.cos() * azimuth.sin();
            double south = altitude.sin() * site.latitude().cos()
                    - altitude.cos() * azimuth.cos() * site.latitude().sin();
            return Math.toDegrees(Math.atan2(west, south));
        }
    }

    /**
     * Exposure F/(s v) of a trail in lx s, computed outside the project from E0 = 2.54e-6 lx, f = 150 mm,
     * s = 50 µm, δ = 0, nothing lost: 2.6171 at f/5.6 and 0.56994 at f/12.
     */
    @ParameterizedTest
    @CsvSource({"5.6, 2.6171, 0.01", "12, 0.56994, 0.01", "12, 0.56994, 0.05", "12, 0.56994, 0.4"})
    void aTrailsExposureIsThatOfThePublishedFormula(double fNumber, double exposureLxS, double pixelMm) {
        Crossing crossing = Crossing.of();
        Frame frame = new Frame(8, 8);
        FilmStock film = Sheets.mono(Reciprocity.none());
        Sheet sheet = Sheets.sheet(crossing.site, crossing.aim, Sheets.lens(150, fNumber, 0.05), frame, film,
                crossing.open);
        Raster raster = Raster.of(frame, (int) Math.round(8 / pixelMm));
        Proof with = Proof.of(EPHEMERIS, sheet, BLACK_LAND, List.of(crossing.star), raster);
        Proof without = Proof.of(EPHEMERIS, sheet, BLACK_LAND, List.of(), raster);
        int column = raster.widthPx() / 2;
        double acrossMm = 0;
        for (int row = 0; row < raster.heightPx(); row++) {
            acrossMm += (with.progress(0, column, row) - without.progress(0, column, row)) * raster.pixelMm();
        }
        // 1 %: refraction slows the star by 0.03 %, pixels keep the light to 0.2 %, the vector has four
        // digits
        assertEquals(exposureLxS, acrossMm / 0.05 * film.midToneLxS(), 0.01 * exposureLxS);
    }

    @Test
    void theMiddleOfATrailStandsOverTheSkyAsTheTrailLimitSays() {
        Crossing crossing = Crossing.of();
        Frame frame = new Frame(8, 8);
        Lens lens = Sheets.lens(150, 11, 0.2);
        Sheet sheet = Sheets.sheet(crossing.site, crossing.aim, lens, frame, FILM, crossing.open);
        Raster raster = Raster.of(frame, 401);
        Star faint = new Star("faint", crossing.star.rightAscensionDeg(), crossing.star.declinationDeg(), 0,
                0, 4, Double.NaN);
        Proof proof = Proof.of(EPHEMERIS, sheet, BLACK_LAND, List.of(faint), raster);
        double trail = 0;
        for (int row = 0; row < raster.heightPx(); row++) {
            trail = Math.max(trail, proof.progress(0, 200, row));
        }
        double sky = proof.progress(0, 200, 5);
        double skyLx = FilmPlane.illuminanceLx(lens, FNumber.exact(11), new SkyLight(EPHEMERIS, crossing.site)
                .at(crossing.aim, crossing.open.middle()).total());
        double speedMmS = 150 * 7.292115e-5; // the Earth's turn, IERS Conventions 2010
        double evenStops = TrailLimit.stopsOverSky(new TrailLimit.Passing(new ExposedSheet(FILM, lens,
                FNumber.exact(11), 600, sky, skyLx), speedMmS, 0), 4, Angle.ZERO);
        // the trail limit takes the spot as even over its width; a Gaussian's peak is 0.939 of that
        double expected = sky + 0.939 * sky * (Stops.factor(evenStops) - 1);
        assertEquals(0, Stops.between(expected, trail), 0.02); // the pixel's own width, refraction
    }

    @Test
    void theLandHidesWhatStandsBehindItAndTheHorizonLiesWhereTheCameraIsLevel() {
        Sheet sheet = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(90, 0), Sheets.lens(120, 11, 0.05),
                FRAME, FILM, Sheets.open("2027-02-06T21:00:00Z", 60));
        Raster raster = Raster.of(FRAME, 80);
        Proof proof = Proof.of(EPHEMERIS, sheet, BLACK_LAND, List.of(), raster);
        for (int column = 0; column < raster.widthPx(); column++) {
            for (int row = 0; row < raster.heightPx(); row++) {
                assertEquals(row < raster.heightPx() / 2, proof.progress(0, column, row) > 0);
            }
        }
    }

    @Test
    void litLandIsGreyAndUnlitLandBlack() {
        Sheet land = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(90, 0), Sheets.lens(120, 11, 0.05),
                FRAME, FILM, Sheets.open("2027-02-20T21:00:00Z", 60));
        Raster raster = Raster.of(FRAME, 40);
        assertEquals(0, Proof.of(EPHEMERIS, land, BLACK_LAND, List.of(), raster).progress(0, 20, 28));
        assertTrue(Proof.of(EPHEMERIS, land, OptionalDouble.of(0.8), List.of(), raster).progress(0, 20,
                28) > 0);
    }

    @Test
    void theSameSheetGivesTheSamePicture() {
        Sheet sheet = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(180, 40), Sheets.lens(120, 11, 0.05),
                FRAME, Sheets.colour(), Sheets.open("2027-02-06T21:00:00Z", 30),
                Sheets.open("2027-02-06T22:00:00Z", 30));
        List<Star> stars = List.of(new Star("a", 80, -5, 0, 0, 1, 1.2), new Star("b", 84, 3, 0, 0, 2, -0.2));
        Picture first = Proof.of(EPHEMERIS, sheet, BLACK_LAND, stars, Raster.of(FRAME, 100))
                .picture(FilmStock.Kind.POSITIVE);
        Picture again = Proof.of(new AnalyticEphemeris(), sheet, BLACK_LAND, stars,
                Raster.of(FRAME, 100)).picture(FilmStock.Kind.POSITIVE);
        for (int row = 0; row < first.heightPx(); row++) {
            assertArrayEquals(first.row(row), again.row(row));
        }
    }

    @Test
    void aMoonlitSkyIsBlueOnColourFilm() {
        FilmStock even = new FilmStock("even", 400, FilmStock.Kind.POSITIVE, List.of(
                new FilmStock.Layer("red", Reciprocity.none()),
                new FilmStock.Layer("green", Reciprocity.none()),
                new FilmStock.Layer("blue", Reciprocity.none())), ToneCurve.PRINT, 0, "invented");
        Sheet moonlit = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(330, 40),
                Sheets.lens(120, 11, 0.05),
                FRAME, even, Sheets.open("2027-02-20T21:00:00Z", 60));
        Proof proof = Proof.of(EPHEMERIS, moonlit, BLACK_LAND, List.of(), Raster.of(FRAME, 20));
        assertTrue(proof.progress(2, 10, 5) > proof.progress(1, 10, 5));
        assertTrue(proof.progress(1, 10, 5) > proof.progress(0, 10, 5));
        assertTrue(proof.picture(FilmStock.Kind.POSITIVE)
                .level(10, 5, 2) > proof.picture(FilmStock.Kind.POSITIVE).level(10, 5, 0));
    }

    /** A level camera at an f-number for an hour of a night without Moon. */
    private static Setting setting(double azimuthDeg, double altitudeDeg, double fNumber, String open) {
        return Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Sheets.lens(120, fNumber, 0.05), FRAME, FILM, Sheets.open(open, 60)).first();
    }

    private static Proof proof(Setting... settings) {
        return Proof.of(EPHEMERIS, new Sheet(Places.MID_NORTH, FILM, List.of(settings)), BLACK_LAND,
                List.of(new Star("a", 80, -5, 0, 0, 1, 1.2)), Raster.of(FRAME, 80));
    }

    @Test
    void lightOfTwoAimsAndFNumbersAddsUpAndOrderDoesNotMatter() {
        Setting south = setting(180, 40, 8, "2027-02-06T21:00:00Z");
        Setting north = setting(0, 60, 16, "2027-02-06T22:30:00Z");
        Proof southAlone = proof(south);
        Proof northAlone = proof(north);
        Proof together = proof(south, north);
        Proof turned = proof(north, south);
        for (int pixel = 0; pixel < 80 * 60; pixel++) {
            int column = pixel % 80;
            int row = pixel / 80;
            double sum = southAlone.progress(0, column, row) + northAlone.progress(0, column, row);
            assertEquals(sum, together.progress(0, column, row), 1e-12 * sum); // rounding
            assertEquals(sum, turned.progress(0, column, row), 1e-12 * sum);
        }
    }

    @Test
    void landOfOneAimTakesNothingFromTheSkyOfAnother() {
        Setting horizon = setting(90, 0, 11, "2027-02-06T21:00:00Z");
        Setting sky = setting(0, 60, 11, "2027-02-06T22:30:00Z");
        assertEquals(0, proof(horizon).progress(0, 40, 50));
        assertTrue(proof(sky).progress(0, 40, 50) > 0);
        assertEquals(proof(sky).progress(0, 40, 50), proof(horizon, sky).progress(0, 40, 50));
        assertTrue(proof(horizon, sky).progress(0, 40, 10) > proof(sky).progress(0, 40, 10));
    }
}
