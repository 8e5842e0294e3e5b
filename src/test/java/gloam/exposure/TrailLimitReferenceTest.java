package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.TrailLimit.Passing;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Angle;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrailLimitReferenceTest {

    private static final double SIDEREAL_RAD_S = 7.292116e-5;
    /** So little sky that it does not count, so much time that no star stands still. */
    private static final double NO_SKY = 1e-9;
    private static final double LONG_S = 1e6;

    @ParameterizedTest
    @CsvSource({"5.6, 2.6171", "12, 0.56994"})
    void starOfMagnitudeZeroLaysDownItsExposure(double fNumber, double exposureLxS) {
        // F/(s v), F = E0 (π/4)(f/N)², f = 150 mm, s = 50 µm, declination 0, E0 = 2.54e-6 lx; independently
        // computed
        FilmStock film = Films.print(100, Reciprocity.none());
        double laidDown = extra(circumstances(film, fNumber, 150), 0) * film.midToneLxS();
        assertEquals(exposureLxS, laidDown, 5e-5 * exposureLxS); // given to five digits
    }

    @ParameterizedTest
    @CsvSource({"100, 4.63, 0.8", "100, 2.13, 8", "400, 6.14, 0.8", "400, 3.64, 8", "640, 6.65, 0.8",
            "640, 4.15, 8"})
    void faintStarsLayDownTheThresholdExposure(double iso, double magnitude, double thresholdTimesIso) {
        // 2.5 log10(H(m = 0)/H threshold) at f/12, thresholds 0.8/S and 8/S; independently computed to 0.01
        // mag
        FilmStock film = Films.print(iso, Reciprocity.none());
        double laidDown = extra(circumstances(film, 12, 150), magnitude) * film.midToneLxS();
        assertEquals(0, 2.5 * Math.log10(laidDown / (thresholdTimesIso / iso)), 0.006);
    }

    @Test
    void starIsSparedTheSkysReciprocityFailure() {
        // m = 3 at f/12, ISO 640, P = 1.31: H = 0.03596 lx s at an efficiency of 0.862; independently
        // computed with a mid-tone of 8.125/640 lx s, to three digits
        FilmStock film = Films.print(640, Reciprocity.power(1.31, 1));
        double laidDown = extra(circumstances(film, 12, 150), 3) * film.midToneLxS();
        assertEquals(0.03596 * 0.862, laidDown, 0.001 * laidDown);
    }

    @ParameterizedTest
    @CsvSource({"1.8, 50, 15.4", "1.7, 40, 13.84", "2, 24, 6", "2, 100, 25", "1.2, 50, 34.7"})
    void trailsAreAsStrongAsTheLensIsEffective(double fNumber, double focalLengthMm, double effectivenessMm) {
        // Lens effectiveness D²/f of the International Meteor Organization (imo.net, photographic equipment);
        // examples from a mailing list of 1999-06 and asterism.org, read before 2026-11-25. Against 50 mm at
        // f/1, 50 mm; 0.5 %, because they are printed to 0.1
        FilmStock film = Films.print(100, Reciprocity.none());
        double strength = extra(circumstances(film, fNumber, focalLengthMm), 0)
                / extra(circumstances(film, 1, 50), 0);
        assertEquals(effectivenessMm / 50, strength, 0.005 * strength);
    }

    @ParameterizedTest
    @CsvSource({"20, 0.19", "10, 0.94", "8, 1.18"})
    void meteorsRecordDownToAboutTheFirstMagnitude(double speedDegS, double limitMag) {
        // 50 mm at f/2, ISO 400, image 30 µm wide, threshold 0.8/S: independently computed to 0.01 mag.
        // Betlem et al. 1998, Astronomy and Astrophysics Supplement: such cameras recorded meteors of 0
        // (fast) to +1 mag (slow)
        FilmStock film = Films.print(400, Reciprocity.none());
        Passing passing = new Passing(new ExposedSheet(film, lens(50, 2, 30, 1), FNumber.exact(2), LONG_S,
                NO_SKY, 0), 50 * Math.toRadians(speedDegS), 0);
        double laidDown = extra(passing, limitMag) * film.midToneLxS();
        assertEquals(0, 2.5 * Math.log10(laidDown / (0.8 / 400)), 0.01);
    }

    @Test
    void starHalfAsFastRecordsDeeper() {
        // Declination 60°: half the speed, 2.5 log10 2 = 0.753 mag; rounding of the doubles and of the figure
        Lens lens = lens(150, 12, 50, 1);
        FilmStock film = Films.print(400, Reciprocity.none());
        double[] limits = new double[2];
        for (int i = 0; i < 2; i++) {
            double speedMmS = ExposureTable.PassingStars.of(lens, 60 * i, 0).imageSpeedMmS();
            limits[i] = TrailLimit.magnitude(new Passing(new ExposedSheet(film, lens, FNumber.exact(12),
                    LONG_S, NO_SKY, 0), speedMmS, 0));
        }
        assertEquals(0.753, limits[1] - limits[0], 0.001);
    }

    /**
     * Of what the source prints to a tenth its zero point is a part too: one within a twentieth suits all
     * rows.
     */
    @Test
    void satelliteTrailsLayDownTheirThreshold() {
        List<Row> rows = ReferenceTable.read("delft-1968/satellite-trails.csv").rows();
        double[] offMag = rows.stream().mapToDouble(TrailLimitReferenceTest::offThresholdMag).toArray();
        double most = Arrays.stream(offMag).max().orElseThrow();
        double least = Arrays.stream(offMag).min().orElseThrow();
        assertEquals(0, (most + least) / 2, 0.05, "the zero point, printed to 0.1");
        assertEquals(0, (most - least) / 2, 0.05, "the table, printed to 0.1");
    }

    private static double offThresholdMag(Row row) {
        // D = 210 mm, F = 1200 mm, τ = 0.78 (τ D²/F = 0.0288 m), image 25 µm wide, threshold 10^-2.5 lx s.
        // That source's zero point is m = -2.5 log E - 14.2 and its form is ours times 4/π (centre line of
        // a round disc).
        double fNumber = 1200 / 210.5;
        Lens lens = lens(1200, fNumber, 25, 0.78);
        FilmStock film = Films.print(100, Reciprocity.none());
        double speedMmS = 1200 * Math.toRadians(row.number("speedDegS"));
        Passing passing = new Passing(new ExposedSheet(film, lens, FNumber.exact(fNumber), LONG_S, NO_SKY, 0),
                speedMmS, 0);
        double theirsOverOurs = 4 / Math.PI * Math.pow(10, -0.4 * 14.2) / 2.54e-6;
        double laidDown = theirsOverOurs * extra(passing, row.number("limitMag")) * film.midToneLxS();
        return 2.5 * Math.log10(laidDown / Math.pow(10, -2.5));
    }

    @Test
    void wideLensOnATripodRecordsTheStarsItIsSaidTo() {
        // 50 mm at f/2, ISO 400: faintest trails about V = 8 (astro-photos.net, read before 2026-11-25).
        // One magnitude, because neither sky, spot nor film are stated there
        FilmStock film = Films.negative(400, Reciprocity.power(1.31, 1));
        Lens lens = lens(50, 2, 30, 0.9);
        double skyLx = 0.65 * 3.2e-4 / 4;
        double exposureS = 600;
        double skyProgress = exposureS * ExposureEngine.ratePerS(film, skyLx);
        double limit = TrailLimit.magnitude(new Passing(new ExposedSheet(film, lens, FNumber.exact(2),
                exposureS, skyProgress, skyLx), 50 * SIDEREAL_RAD_S, 0.35));
        assertEquals(8, limit, 1);
    }

    @Test
    void trailEqualsTheSkyWhereItsLightDoes() {
        // f = 150 mm, s = 50 µm, 1 h, L = 1.712e-4 cd/m²: V = 5.573, independently computed, at any
        // f-number and speed
        for (double fNumber : new double[] {5.6, 12}) {
            FilmStock film = Films.print(400, Reciprocity.none());
            double skyProgress = 3600 * Math.PI / 4 * 1.712e-4 / (fNumber * fNumber) / film.midToneLxS();
            Passing clear = circumstances(film, fNumber, 150);
            Passing passing = new Passing(new ExposedSheet(film, clear.sheet().lens(), FNumber.exact(fNumber),
                    3600, skyProgress, 0), clear.imageSpeedMmS(), 0);
            assertEquals(1, TrailLimit.stopsOverSky(passing, 5.573, Angle.ZERO), 0.001);
                    // as much again is one stop
        }
    }

    @Test
    void smallStopLeavesOnlyTheBrightest() {
        // Common practice, no source: on a small camera f/64 leaves the brightest planets and a star or
        // two, and the wide stop of a lens fixed at 3 m records more stars than the sharp small one
        // although it blurs them
        FilmStock film = Films.print(640, Reciprocity.power(1.2, 1));
        Lens lens = new Lens(120, List.of(FNumber.exact(12), FNumber.exact(64)), 0.85, 3, 60, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
        double wide = limit(film, lens, 12);
        double small = limit(film, lens, 64);
        assertTrue(lens.spotMm(FNumber.exact(12)) > lens.spotMm(FNumber.exact(64)));
        assertTrue(wide > small + 1, wide + " against " + small);
        assertTrue(small < 1.5 && small > -2, "limit at f/64 " + small);
    }

    @Test
    void moonsLightIsSpreadOverItsDisc() {
        Passing passing = circumstances(Films.print(100, Reciprocity.none()), 12, 150);
        double asStar = extra(passing, -12);
        double overSkyStops = TrailLimit.stopsOverSky(passing, -12, Angle.ofDegrees(0.26));
        double asDisc = NO_SKY * (Stops.factor(overSkyStops) - 1);
        double discMm = 2 * 150 * Math.tan(Math.toRadians(0.26));
        // width alone counts: F/(s v)
        assertEquals(asStar * 0.05 / Math.hypot(0.05, discMm), asDisc, 1e-6 * asDisc);
    }

    private static double limit(FilmStock film, Lens lens, double fNumber) {
        double skyLx = Math.PI / 4 * lens.throughput() * 4.3e-4 / (fNumber * fNumber);
        double exposureS = 3 * 3600;
        return TrailLimit.magnitude(new Passing(new ExposedSheet(film, lens, FNumber.exact(fNumber),
                exposureS, exposureS * ExposureEngine.ratePerS(film, skyLx), skyLx), 120 * SIDEREAL_RAD_S,
                0.25 * 1.4));
    }

    private static Passing circumstances(FilmStock film, double fNumber, double focalLengthMm) {
        return new Passing(new ExposedSheet(film, lens(focalLengthMm, fNumber, 50, 1), FNumber.exact(fNumber),
                LONG_S, NO_SKY, 0), focalLengthMm * SIDEREAL_RAD_S, 0);
    }

    /** A lens whose whole spot, diffraction included, has that width. */
    private static Lens lens(double focalLengthMm, double fNumber, double spotUm, double transmittance) {
        double diffractionUm = 2.44 * 0.550 * fNumber;
        return new Lens(focalLengthMm, List.of(FNumber.exact(fNumber)), transmittance,
                Double.POSITIVE_INFINITY,
                Math.sqrt(spotUm * spotUm - diffractionUm * diffractionUm), 0, Projection.RECTILINEAR,
                Vignetting.NONE);
    }

    private static double extra(Passing passing, double magnitude) {
        return passing.sheet().skyProgress()
                * (Stops.factor(TrailLimit.stopsOverSky(passing, magnitude, Angle.ZERO)) - 1);
    }
}
