package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.ephemeris.Direction;
import gloam.exposure.TrailLimit;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The light of a sky that is computed, its colour and the ground under it. */
class LightFoundTest {

    private static final Site SITE = Places.at(50, 10, 0);
    private static final Instant EVENING = Instant.parse("2027-02-08T22:00:00Z");
    private static final StandingSky DARK = sky(-40);

    private static StandingSky sky(double moonDeg) {
        return new StandingSky(Direction.ofDegrees(0, -40), Direction.ofDegrees(180, moonDeg), 384_400,
                Angle.ofDegrees(10));
    }

    private static Lens lens(Projection projection, double... fNumbers) {
        return new Lens(75, Arrays.stream(fNumbers).mapToObj(FNumber::exact).toList(), 0.9,
                Double.POSITIVE_INFINITY, 40, 0, projection, Vignetting.NONE);
    }

    private static ExposureQuestion question(Lens lens, Optional<Frame> frame, OptionalDouble reflectance,
            KnownSky... skies) {
        return new ExposureQuestion(Films.print(640, Reciprocity.none()), lens, frame, List.of(skies),
                reflectance,
                List.of(), TrailLimit.LEAST_DIFFERENCE_DENSITY, new TimeFor(0, 1));
    }

    private static KnownSky.Computed computed(double altitudeDeg) {
        return computed(SITE, altitudeDeg);
    }

    private static KnownSky.Computed computed(Site site, double altitudeDeg) {
        return new KnownSky.Computed(site, Direction.ofDegrees(180, altitudeDeg), EVENING, true);
    }

    private static LightFound found(StandingSky sky, OptionalDouble reflectance, KnownSky... skies) {
        return LightFound.of(() -> sky, question(lens(Projection.RECTILINEAR, 8), Optional.empty(),
                reflectance, skies));
    }

    /** Level ground of reflectance r under E lx has r E / π cd/m² (Lambert's law). */
    @Test
    void theGroundShinesByLambertsLaw() {
        LightFound light = found(DARK, OptionalDouble.of(0.3), computed(40));
        LightFound.Ground ground = light.ground().orElseThrow();
        assertEquals(0.3, ground.reflectance());
        assertEquals(new GroundLight(DARK, SITE).lux(EVENING), ground.lux());
        assertEquals(0.3 * ground.lux() / Math.PI, ground.cdM2(), 1e-9 * ground.cdM2());
        assertTrue(found(DARK, OptionalDouble.empty(), computed(40)).ground().isEmpty());
    }

    /**
     * Moonlight is whiter than the dark sky; a black body of colour index 0.92 has 4600 (1/(0.92² + 1.7) +
     * 1/(0.92² +
     * 0.62)) = 4945 K (Ballesteros 2012), colder bodies are redder.
     */
    @Test
    void moonlightIsNotTheColourOfTheDarkSky() {
        LightFound.Colour dark = found(DARK, OptionalDouble.empty(), computed(40)).colour().orElseThrow();
        LightFound.Colour moonlit = found(sky(60), OptionalDouble.empty(), computed(40)).colour()
                .orElseThrow();
        assertTrue(dark.bv() > 0.3 && dark.bv() < 1.5, dark::toString);
        assertTrue(moonlit.bv() != dark.bv());
        for (LightFound.Colour colour : List.of(dark, moonlit)) {
            assertEquals(4600 * (1 / (0.92 * colour.bv() + 1.7) + 1 / (0.92 * colour.bv() + 0.62)),
                    colour.temperatureK(), 1e-6);
        }
        assertTrue(found(DARK, OptionalDouble.empty(), new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21)))
                .colour()
                .isEmpty());
    }

    /** A computed sky, a city's of 16 mag/arcsec², tells place and aim though another one is exposed for. */
    @Test
    void theComputedSkyIsComparedAndKnowsTheStars() {
        LightFound light = found(DARK, OptionalDouble.empty(),
                new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21)),
                computed(Places.inACity(50, 10, 0), 90));
        assertEquals(21, light.sky().magArcsec2(), 1e-9);
        assertEquals(16, light.otherSkies().get(0).brightness().magArcsec2(), 0.01);
        assertEquals(5 * 0.4 * Math.log(10) / Math.log(2), light.otherSkies().get(0).brighterStops(), 0.02);
        assertEquals(50, light.aimDeclination().degrees(), 1e-9);
        assertEquals(0.2, light.stars().lossMag(), 1e-3); // one air mass
    }

    /**
     * An equisolid fisheye of 75 mm has no light beyond the rim of its image, 75 mm · 2 sin 45° = 106 mm off
     * the axis.
     */
    @Test
    void noLightFallsBeyondTheImage() {
        Lens fisheye = lens(Projection.EQUISOLID, 8);
        KnownSky dark = new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21));
        assertTrue(LightFound.of(() -> DARK,
                question(fisheye, Optional.of(new Frame(149, 149)), OptionalDouble.empty(),
                dark)).cornerStops().isPresent());
        assertTrue(LightFound.of(() -> DARK,
                question(fisheye, Optional.of(new Frame(151, 151)), OptionalDouble.empty(),
                dark)).cornerStops().isEmpty());
        assertTrue(LightFound.of(() -> DARK,
                question(fisheye, Optional.empty(), OptionalDouble.empty(), dark)).cornerStops()
                .isEmpty());
    }

    /**
     * Land of 18 % on a moonless night is darker than the sky: a steady sky and a steady ground are exposed
     * side by side.
     */
    @Test
    void theGroundHasItsOwnTone() {
        Exposures answer = Exposures.of(() -> DARK,
                question(lens(Projection.RECTILINEAR, 8), Optional.empty(),
                OptionalDouble.of(0.18), computed(90)));
        double ground = answer.light().ground().orElseThrow().cdM2();
        double skyOverGroundStops = Math.log(answer.light().sky().cdM2() / ground) / Math.log(2);
        assertEquals(0, answer.exposures().get(0).row().exposure().toneStops(), 1e-6);
        assertEquals(skyOverGroundStops, answer.exposures().get(0).row().skyToneStops(), 1e-6);
        assertTrue(answer.exposures().get(0).closeAt().isEmpty());
    }
}
