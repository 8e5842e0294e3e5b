package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExposurePropertyTest {

    private static final Instant OPEN = Instant.parse("2027-02-06T20:00:00Z");
    private static final Interval NIGHT = Interval.lasting(OPEN, Duration.ofHours(10));

    /** Two lights, each of an exponential and a steady part, and a film. */
    record Case(FilmStock film, double firstLx, double secondLx, double timeConstantS, double toneStops) {

        LightCurve first() {
            return at -> firstLx * Math.exp(-sinceOpen(at) / timeConstantS) + firstLx / 10;
        }

        LightCurve second() {
            return at -> secondLx * (1 + Math.sin(sinceOpen(at) / timeConstantS));
        }
    }

    static Stream<Named<Case>> cases() {
        return Samples.of(100, random -> new Case(film(random), logUniform(random, 1e-7, 1e-3),
                logUniform(random, 1e-7, 1e-3), random.nextDouble(1800, 20_000), random.nextDouble(-6, 1)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void orderOfSimultaneousLightsDoesNotMatter(Case drawn) {
        LightCurve oneWay = at -> drawn.first().illuminanceLx(at) + drawn.second().illuminanceLx(at);
        LightCurve otherWay = at -> drawn.second().illuminanceLx(at) + drawn.first().illuminanceLx(at);
        assertEquals(ExposureEngine.progress(drawn.film, oneWay, NIGHT),
                ExposureEngine.progress(drawn.film, otherWay, NIGHT));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void lightsTogetherDoAtLeastWhatTheyDoApart(Case drawn) {
        LightCurve both = at -> drawn.first().illuminanceLx(at) + drawn.second().illuminanceLx(at);
        double apart = ExposureEngine.progress(drawn.film, drawn.first(), NIGHT)
                + ExposureEngine.progress(drawn.film, drawn.second(), NIGHT);
        // 1 % because both sides are integrals good to 0.5 %
        assertTrue(ExposureEngine.progress(drawn.film, both, NIGHT) >= 0.99 * apart);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void doublingTheLightHalvesTheMeteredTime(Case drawn) {
        LightCurve light = LightCurve.constant(1000 * drawn.firstLx);
        double fullS = ExposureEngine.exposure(drawn.film, light, NIGHT, 0).meteredS();
        double doubleS = ExposureEngine.exposure(drawn.film, light.times(2), NIGHT, 0).meteredS();
        assertTrue(fullS < NIGHT.seconds());
        assertEquals(fullS / 2, doubleS, 1e-6 * fullS); // clock reading to a nanosecond
    }

    @ParameterizedTest
    @MethodSource("cases")
    void correctedIsNeverBelowMetered(Case drawn) {
        Exposure exposure = ExposureEngine.exposure(drawn.film, drawn.first(), NIGHT, drawn.toneStops);
        // clock reading to a nanosecond
        assertTrue(exposure.correctedS() >= exposure.meteredS() * (1 - 1e-6));
        assertTrue(exposure.reciprocityStops() >= 0);
        assertTrue(exposure.lowS() <= exposure.correctedS() && exposure.correctedS() <= exposure.highS());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void moreLightOrALighterToneNeverGoTheWrongWay(Case drawn) {
        double plainS = correctedS(drawn.film, drawn.first(), drawn.toneStops);
        double brighterS = correctedS(drawn.film, drawn.first().times(1.5), drawn.toneStops);
        double lighterS = correctedS(drawn.film, drawn.first(), drawn.toneStops + 0.5);
        assertTrue(brighterS <= plainS && plainS <= lighterS, brighterS + " " + plainS + " " + lighterS);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void integralOverConstantLightIsTheLawItself(Case drawn) {
        double correctedS = drawn.film.reciprocity().correctedS(drawn.film.midToneLxS() / drawn.firstLx);
        assertEquals(NIGHT.seconds() / correctedS,
                ExposureEngine.progress(drawn.film, LightCurve.constant(drawn.firstLx), NIGHT),
                1e-9 * NIGHT.seconds() / correctedS); // rounding
    }

    @ParameterizedTest
    @MethodSource("cases")
    void progressIsReachedWhereItIsReached(Case drawn) {
        ProgressCurve curve = new ProgressCurve(drawn.film, drawn.first(), NIGHT, Duration.ofMinutes(2));
        double all = curve.progress(NIGHT.start(), NIGHT.endExclusive());
        Instant open = OPEN.plusSeconds(4321);
        double wanted = 0.3 * curve.progress(open, NIGHT.endExclusive());
        Instant close = curve.reached(open, wanted).orElseThrow();
        assertEquals(wanted, curve.progress(open, close), 1e-9 * all); // clock reading to a nanosecond
        assertTrue(curve.reached(open, all * 1.01).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void closingAndOpeningAgainAtOnceChangesNothing(Case drawn) {
        Exposure whole = ExposureEngine.exposure(drawn.film, drawn.first(), NIGHT, drawn.toneStops);
        if (whole.neverFinishes()) {
            return;
        }
        Instant pause = OPEN.plusNanos(Math.round(whole.correctedS() * 0.4e9));
        Shutter again = new Shutter(List.of(new Interval(OPEN, pause)),
                new Interval(pause, NIGHT.endExclusive()));
        Exposure rest = ExposureEngine.exposure(drawn.film, drawn.first(), again, drawn.toneStops);
        // clock reading to a nanosecond
        assertEquals(0.6 * whole.correctedS(), rest.correctedS(), 1e-6 * whole.correctedS());
        assertEquals(whole.reciprocityStops(), rest.reciprocityStops(), 1e-6);
        assertEquals(whole.spreadStops(), rest.spreadStops(), 1e-6);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void earlierOpeningShortensWhatIsLeftToGive(Case drawn) {
        Interval early = Interval.lasting(OPEN, Duration.ofMinutes(20));
        Interval late = new Interval(OPEN.plusSeconds(3600), NIGHT.endExclusive());
        double without = ExposureEngine.exposure(drawn.film, drawn.first(), late, drawn.toneStops)
                .correctedS();
        Exposure with = ExposureEngine.exposure(drawn.film, drawn.first(), new Shutter(List.of(early), late),
                drawn.toneStops);
        assertTrue(with.correctedS() <= without);
        assertTrue(with.correctedS() > 0 || with.toneStops() >= drawn.toneStops - 1e-9); // rounding
        assertTrue(with.lowS() <= with.correctedS() && with.correctedS() <= with.highS());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void moreTimeNeverMakesTheSkyDarker(Case drawn) {
        double before = Double.NEGATIVE_INFINITY;
        for (int minutes = 1; minutes < 600; minutes += 60) {
            Interval open = Interval.lasting(OPEN, Duration.ofMinutes(minutes));
            double tone = ExposureEngine.toneStops(ExposureEngine.progress(drawn.film, drawn.first(), open));
            assertTrue(tone > before);
            before = tone;
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void spreadNeverShrinksOutsideTheTable(Case drawn) {
        double coveredS = Math.min(1e4, drawn.film.reciprocity().coveredToS());
        double before = ExposureEngine.spreadStops(drawn.film, coveredS);
        for (double meteredS = coveredS; meteredS < 1e6; meteredS *= 1.5) {
            double spread = ExposureEngine.spreadStops(drawn.film, meteredS);
            assertTrue(spread >= before - 1e-12); // rounding
            before = spread;
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void sampledLightMakesTheSameProgress(Case drawn) {
        double straight = ExposureEngine.progress(drawn.film, drawn.first(), NIGHT);
        LightCurve sampled = drawn.first().sampled(NIGHT, Duration.ofMinutes(2));
        assertEquals(straight, ExposureEngine.progress(drawn.film, sampled, NIGHT), 0.005 * straight);
    }

    @Test
    void darknessNeverFinishes() {
        for (Reciprocity law : List.of(Reciprocity.none(), Reciprocity.power(1.3, 1))) {
            FilmStock film = Films.print(100, law);
            Exposure exposure = ExposureEngine.exposure(film, LightCurve.constant(0), NIGHT, 0);
            assertTrue(exposure.neverFinishes());
            assertEquals(Double.NEGATIVE_INFINITY, exposure.toneStops());
        }
    }

    @Test
    void toneIsCountedInStopsFromTheMidTone() {
        assertEquals(0, ExposureEngine.toneStops(1));
        assertEquals(-2, ExposureEngine.toneStops(0.25), 1e-12);
        FilmStock film = Films.print(100, Reciprocity.power(1.3, 1));
        LightCurve steady = LightCurve.constant(1e-4);
        // clock reading to a nanosecond
        assertEquals(correctedS(film, steady, 0) / 4, correctedS(film, steady, -2), 1e-6);
    }

    private static double correctedS(FilmStock film, LightCurve light, double toneStops) {
        return ExposureEngine.exposure(film, light, NIGHT, toneStops).correctedS();
    }

    private static double sinceOpen(Instant at) {
        return Duration.between(OPEN, at).toMillis() / 1000.0;
    }

    private static FilmStock film(RandomGenerator random) {
        double iso = logUniform(random, 25, 3200);
        return Films.print(iso, switch (random.nextInt(5)) {
            case 0 -> Reciprocity.none();
            case 1 -> Reciprocity.power(random.nextDouble(1, 2), 1);
            case 2 -> new Reciprocity.AddedPower(random.nextDouble(0.01, 0.2), 1.62);
            case 3 -> new Reciprocity.Catenary(random.nextDouble(0.1, 0.5), 0.1, 0.1);
            default -> Reciprocity.table(List.of(new ReciprocityTable.Point(1, 1),
                    new ReciprocityTable.Point(10, random.nextDouble(10, 60)),
                    new ReciprocityTable.Point(100, random.nextDouble(200, 1200))));
        });
    }

    private static double logUniform(RandomGenerator random, double least, double most) {
        return Math.exp(random.nextDouble(Math.log(least), Math.log(most)));
    }
}
