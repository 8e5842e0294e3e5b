package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The integral of progress against closed forms.
 *
 * <p>Film of mid-tone H0 = 0.02 lx s and tc = tm^1.31, for which progress is ∫ (E/H0)^1.31 dt with time in
 * s; values independently computed. Tolerance 0.5 % where light changes: what the integral promises.
 */
class ExposureEngineReferenceTest {

    private static final double INTEGRAL = 0.005;
    private static final Instant OPEN = Instant.parse("2027-02-06T20:00:00Z");
    private static final FilmStock FAILING = Films.ofMidTone(0.02, Reciprocity.power(1.31, 1));
    private static final FilmStock PERFECT = Films.ofMidTone(0.02, Reciprocity.none());

    @ParameterizedTest
    @CsvSource({"1e-3, 20, 50.623, 0.3951", "1e-4, 200, 1033.59, 0.19350", "1e-5, 2000, 21103.2, 0.094772"})
    void constantLightTakesTheCorrectedTime(double illuminanceLx, double meteredS, double correctedS,
                                            double efficiency) {
        Exposure exposure = exposure(FAILING, LightCurve.constant(illuminanceLx), 10);
        assertEquals(meteredS, exposure.meteredS(), 1e-5 * meteredS); // values given to six digits
        assertEquals(correctedS, exposure.correctedS(), 1e-5 * correctedS);
        assertEquals(-Stops.between(1, efficiency), exposure.reciprocityStops(), 2e-4);
                // given to four digits
        Exposure told = ExposureEngine.exposure(FAILING, meteredS, 0);
        assertEquals(correctedS, told.correctedS(), 1e-5 * correctedS);
    }

    @Test
    void fadingLightTakesLonger() {
        LightCurve fading = fading(2e-4, 3000);
        assertEquals(460.152, exposure(FAILING, fading, 10).correctedS(), INTEGRAL * 460.152);
        assertEquals(101.705, exposure(FAILING, fading, 10).meteredS(), INTEGRAL * 101.705);
        assertEquals(101.705, exposure(PERFECT, fading, 10).correctedS(), INTEGRAL * 101.705);
        assertEquals(416.869, exposure(FAILING, LightCurve.constant(2e-4), 10).correctedS(), 0.001);
    }

    @Test
    void lightThatFadesTooFastNeverFinishes() {
        Exposure exposure = exposure(FAILING, fading(2e-4, 300), 10);
        assertTrue(exposure.neverFinishes());
        assertEquals(Double.POSITIVE_INFINITY, exposure.correctedS());
        assertEquals(0.549, Stops.factor(exposure.toneStops()), INTEGRAL * 0.549);
    }

    @Test
    void halvesInTwoOpeningsAddUpInEitherOrder() {
        // half of the progress at 2e-4 lx and half at 5e-5 lx takes 1489.79 s
        double brightS = 416.869 / 2;
        double dimS = 1489.79 - brightS;
        Instant later = OPEN.plusSeconds(7200);
        List<Interval> openings = List.of(Interval.lasting(OPEN, seconds(brightS)),
                Interval.lasting(later, seconds(dimS)));
        LightCurve dimmed = at -> at.isBefore(OPEN.plusSeconds(3600)) ? 2e-4 : 5e-5;
        ProgressCurve curve = new ProgressCurve(FAILING, dimmed, new Interval(OPEN, later.plusSeconds(7200)),
                Duration.ofSeconds(60));
        assertEquals(1, curve.progress(openings), 1e-5); // times given to six digits
    }

    @Test
    void lightThatGrowsInProportionToTime() {
        // ∫ (c t/H0)^P dt = (c/H0)^P T^(P+1)/(P+1): at c = 1e-7 lx/s, H0 = 0.02 lx s progress is 1 at T with
        // T^2.31 = 2.31 (2e5)^1.31; independently computed
        double closedS = Math.pow(2.31 * Math.pow(2e5, 1.31), 1 / 2.31);
        LightCurve growing = at -> 1e-7 * Duration.between(OPEN, at).toMillis() / 1000.0;
        assertEquals(closedS, exposure(FAILING, growing, 1).correctedS(), INTEGRAL * closedS);
    }

    @Test
    void contrastGrowsWithTheExponent() {
        // 5 stops of light at P = 1.31 come out as 6.55; printed to 0.01
        double ratio = ExposureEngine.ratePerS(FAILING, 3.2e-3) / ExposureEngine.ratePerS(FAILING, 1e-4);
        assertEquals(6.55, Stops.between(1, ratio), 0.005);
        assertEquals(6.55, 5 * ExposureEngine.exposure(FAILING, 1000, 0).contrast(), 1e-9); // rounding
    }

    @Test
    void spreadCoversHowFarPublishedSourcesLieApart() {
        // One film, metered 30 min: 4.0 h (Barnbaum 1994, p. 77), 9.3 h (Gainer 2003), 18.0 h (maker's table
        // continued). All three within twice the spread of their middle.
        Reciprocity table = Reciprocity.table(List.of(point(1, 2), point(10, 50), point(100, 1200)));
        FilmStock film = Films.print(400, table);
        Exposure exposure = ExposureEngine.exposure(film, 1800, 0);
        assertEquals(18.0 * 3600, exposure.correctedS(), 0.01 * 18 * 3600); // printed to three digits
        assertTrue(exposure.extrapolated());
        double span = Stops.between(4.0, 18.0);
        assertTrue(2 * exposure.spreadStops() > span && exposure.spreadStops() < span, exposure.toString());
    }

    private static ReciprocityTable.Point point(double meteredS, double correctedS) {
        return new ReciprocityTable.Point(meteredS, correctedS);
    }

    private static Exposure exposure(FilmStock film, LightCurve light, int hours) {
        return ExposureEngine.exposure(film, light, Interval.lasting(OPEN, Duration.ofHours(hours)), 0);
    }

    private static LightCurve fading(double startLx, double timeConstantS) {
        return at -> startLx * Math.exp(-Duration.between(OPEN, at).toMillis() / 1000.0 / timeConstantS);
    }

    private static Duration seconds(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }
}
