package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.answer.ExposureQuestion.Unknown;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.TrailLimit;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.planner.Preview;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.StandingSky;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExposuresTest {

    private static final Lens LENS = lens(150, 10, 8, 16, 32);
    private static final Preview FRAME = new Preview(FNumber.exact(2), 640, Duration.ofSeconds(30));
    private static final StandingSky DARK = new StandingSky(Direction.ofDegrees(0, -40),
            Direction.ofDegrees(180, -40),
            384_400, Angle.ofDegrees(90));
    private static final Instant EVENING = Instant.parse("2027-02-08T22:00:00Z");

    private static Lens lens(double focalLengthMm, double focusM, Double... fNumbers) {
        return new Lens(focalLengthMm, Stream.of(fNumbers).map(FNumber::exact).toList(), 0.9, focusM, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
    }

    private static Lens lens(double focalLengthMm, double focusM, int widest, int middle, int narrowest) {
        return lens(focalLengthMm, focusM, (double) widest, (double) middle, (double) narrowest);
    }

    private static ExposureQuestion question(Lens lens, Reciprocity law, List<KnownSky> skies,
            Unknown unknown) {
        return new ExposureQuestion(Films.print(640, law), lens, Optional.of(new Frame(90, 120)), skies,
                OptionalDouble.empty(), List.of(), TrailLimit.LEAST_DIFFERENCE_DENSITY, unknown);
    }

    private static Exposures answer(Lens lens, Reciprocity law, List<KnownSky> skies, Unknown unknown) {
        return Exposures.of(ExposuresTest::none, question(lens, law, skies, unknown));
    }

    private static Ephemeris none() {
        throw new AssertionError("a sky that is known needs no ephemeris");
    }

    /**
     * The transfer t2 = t1 (N2/N1)² (S1/S2) of the exposure equation (ISO 2720): 30 s at f/2 are 480, 1920
     * and 7680 s at f/8, f/16 and f/32 with the same speed and a lens at infinity; twice that for a stop
     * more.
     */
    @Test
    void timesGrowWithTheSquareOfTheFNumber() {
        Lens lens = lens(150, Double.POSITIVE_INFINITY, 8, 16, 32);
        List<KnownSky> metered = List.of(new KnownSky.Metered(FRAME));
        double[] plainS = {480, 1920, 7680};
        for (int i = 0; i < plainS.length; i++) {
            assertEquals(plainS[i], answer(lens, Reciprocity.none(), metered, new TimeFor(0, 1)).exposures()
                    .get(i).row()
                    .exposure().correctedS(), 1e-6 * plainS[i]); // rounding of doubles
            assertEquals(2 * plainS[i], answer(lens, Reciprocity.none(), metered, new TimeFor(1, 1))
            .exposures().get(i)
                    .row().exposure().correctedS(), 2e-6 * plainS[i]); // the same
        }
    }

    /** After twice the time of the mid-tone, without failure, the sky is a stop above it. */
    @Test
    void twiceTheTimeIsAStop() {
        Exposures after = answer(lens(150, Double.POSITIVE_INFINITY, 8, 16, 32), Reciprocity.none(),
                List.of(new KnownSky.Metered(FRAME)), new ToneAfter(Duration.ofSeconds(960)));
        assertEquals(1, after.exposures().get(0).row().skyToneStops(), 1e-6); // rounding of doubles
        assertEquals(-1, after.exposures().get(1).row().skyToneStops(), 1e-6);
        assertEquals(-3, after.exposures().get(2).row().skyToneStops(), 1e-6);
    }

    /** A magnitude is 2.512 times the light, 1.3288 stops. */
    @Test
    void readingsOfOneSkyAreComparedInStops() {
        LightFound light = answer(LENS, Reciprocity.none(),
                List.of(new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21)),
                new KnownSky.Measured(SkyBrightness.ofMagArcsec2(20))), new TimeFor(0, 1)).light();
        assertEquals(21, light.sky().magArcsec2(), 1e-9);
        assertEquals(1.3288, light.otherSkies().get(0).brighterStops(), 1e-4); // given to four digits
    }

    /**
     * The corner of 90 × 120 mm is 75 mm off the axis: at an image distance of 150 mm cos⁴ = 0.8², at 75 mm
     * 0.5².
     */
    @Test
    void cornersLoseByTheFourthPowerOfTheCosine() {
        double at150 = answer(lens(150, Double.POSITIVE_INFINITY, 8, 16, 32), Reciprocity.none(),
                List.of(new KnownSky.Metered(FRAME)), new TimeFor(0, 1)).light().cornerStops().orElseThrow();
        double at75 = answer(lens(75, Double.POSITIVE_INFINITY, 8, 16, 32), Reciprocity.none(),
                List.of(new KnownSky.Metered(FRAME)), new TimeFor(0, 1)).light().cornerStops().orElseThrow();
        assertEquals(2 * Math.log(0.8) / Math.log(2), at150, 1e-9);
        assertEquals(-2, at75, 1e-9);
    }

    static List<ReferenceTable.Row> blurs() {
        return ReferenceTable.read("thin-lens/blur-at-infinity.csv").stream().toList();
    }

    @ParameterizedTest
    @MethodSource("blurs")
    void aNearFocusBlursAsTheThinLensSays(ReferenceTable.Row row) {
        SpotWidths spot = SpotWidths.of(lens(150, 10, row.number("fNumber")),
                FNumber.exact(row.number("fNumber")));
        double blurUm = 1000 * row.number("blurMm");
        assertEquals(blurUm, spot.defocusUm(), 0.0005 * blurUm); // the table's tolerance
        assertEquals(2.44 * 0.55 * row.number("fNumber"), spot.diffractionUm(), 1e-6);
        assertEquals(Math.sqrt(Math.pow(spot.defocusUm(), 2) + Math.pow(spot.diffractionUm(), 2) + 40 * 40),
                spot.togetherUm(), 1e-9);
    }

    /**
     * An image of f²/(N c) away, 150² / (8 · 0.04) mm and the focal length, and from there on blurs of 40 µm
     * at most at infinity (the thin lens's hyperfocal distance).
     */
    @Test
    void theHyperfocalDistanceIsThatOfTheSpot() {
        assertEquals(0.15 + 150 * 150 / (8 * 0.04) / 1000, SpotWidths.of(LENS, FNumber.exact(8))
                .hyperfocalM(), 0.16);
    }

    /** Sheets a stop apart around the wanted tone: times in the proportion 1 : 2 : 4 without failure. */
    @Test
    void aBracketIsAStopApart() {
        Exposures answer = answer(lens(150, Double.POSITIVE_INFINITY, 8, 16, 32), Reciprocity.none(),
                List.of(new KnownSky.Metered(FRAME)), new TimeFor(0, 3));
        List<Double> timesS = answer.exposures().get(0).bracket().orElseThrow().exposuresS();
        assertEquals(3, timesS.size());
        assertEquals(240, timesS.get(0), 1e-3);
        assertEquals(480, timesS.get(1), 1e-3);
        assertEquals(960, timesS.get(2), 1e-3);
        assertTrue(answer(LENS, Reciprocity.none(), List.of(new KnownSky.Metered(FRAME)), new TimeFor(0, 1))
                .exposures()
                .get(0).bracket().isEmpty());
    }

    /** Under a sky that stands still the shutter closes when the time is up that a steady sky asks for. */
    @Test
    void aSkyThatChangesTellsWhenToClose() {
        Direction zenith = Direction.ZENITH;
        KnownSky changing = new KnownSky.Computed(Places.at(50, 10, 0), zenith, EVENING, false);
        KnownSky steady = new KnownSky.Computed(Places.at(50, 10, 0), zenith, EVENING, true);
        Lens lens = lens(150, Double.POSITIVE_INFINITY, 4.0);
        Exposures clocked = Exposures.of(() -> DARK,
                question(lens, Reciprocity.none(), List.of(changing), new TimeFor(-2, 1)));
        Exposures timed = Exposures.of(() -> DARK,
                question(lens, Reciprocity.none(), List.of(steady), new TimeFor(-2, 1)));
        double correctedS = timed.exposures().get(0).row().exposure().correctedS();
        assertTrue(timed.exposures().get(0).closeAt().isEmpty());
        assertEquals(correctedS, Duration.between(EVENING, clocked.exposures().get(0).closeAt().orElseThrow())
                .toMillis()
                / 1000.0, 1e-3 * correctedS); // the engine's integral against its closed form
        assertEquals(50, clocked.light().aimDeclination().degrees(), 1e-9); // of the zenith: the latitude
        // the site's extinction through one air mass
        assertEquals(0.2, clocked.light().stars().lossMag(), 1e-3);
    }

    /**
     * Three stops over the mid-tone no dark sky makes in a night at f/32: the shutter has no time to close.
     */
    @Test
    void whatNeverFinishesHasNoTimeToClose() {
        KnownSky changing = new KnownSky.Computed(Places.at(50, 10, 0), Direction.ZENITH, EVENING, false);
        Exposures never = Exposures.of(() -> DARK, question(lens(150, Double.POSITIVE_INFINITY, 32.0),
                Reciprocity.power(1.3, 1), List.of(changing), new TimeFor(3, 1)));
        assertTrue(never.exposures().get(0).row().exposure().neverFinishes());
        assertTrue(never.exposures().get(0).closeAt().isEmpty());
    }

    /** The Sun stands above the horizon: no film is exposed. */
    @Test
    void daylightIsRefused() {
        StandingSky day = new StandingSky(Direction.ofDegrees(0, 10), Direction.ofDegrees(180, -40), 384_400,
                Angle.ofDegrees(90));
        KnownSky changing = new KnownSky.Computed(Places.at(50, 10, 0), Direction.ZENITH, EVENING, false);
        ExposureQuestion asked = question(LENS, Reciprocity.none(), List.of(changing), new TimeFor(0, 1));
        assertThrows(BadInput.class, () -> Exposures.of(() -> day, asked));
    }
}
