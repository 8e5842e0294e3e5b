package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.Samples;
import gloam.units.Angle;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SkyLightPropertyTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Instant FIRST = Instant.parse("2027-01-01T00:00:00Z");
    private static final int STEP_S = 10;

    record Case(Site site, Instant at, Direction direction) {
    }

    static Stream<Named<Case>> cases() {
        List<Site> sites = Places.all();
        return Samples.of(400, random -> {
            Site site = sites.get(random.nextInt(sites.size()));
            Instant at = FIRST.plusSeconds(random.nextInt(365 * 86_400));
            Direction direction = Direction.ofDegrees(random.nextDouble(360), random.nextDouble(90));
            return new Case(random.nextBoolean() ? site : known(site, at, random), at, direction);
        });
    }

    /** The same site with its own air and darkness, some with towns, some measured about an instant. */
    private static Site known(Site site, Instant at, RandomGenerator random) {
        Site own = new Site(site.name(), site.latitude(), site.longitude(), site.heightM(), site.zone(),
                random.nextDouble(18, 22.5), random.nextDouble(0.05, 0.5), site.skyline());
        Site near = own.with(IntStream.range(0, random.nextInt(3)).mapToObj(town ->
                new LightDome(Angle.ofDegrees(random.nextInt(360)), random.nextBoolean()
                ? new LightDome.Town(random.nextDouble(1e3, 1e6), random.nextDouble(2, 100))
                : new LightDome.Measured(Angle.ofDegrees(random.nextDouble(5, 60)),
                random.nextDouble(17, 22)), 3000)).toList());
        return random.nextInt(4) > 0 ? near : SkyFit.of(EPHEMERIS, near.measured(List.of(new SkyReading(
                at.plusSeconds(random.nextInt(-20_000, 20_000)), Angle.ofDegrees(random.nextInt(360)),
                Angle.ofDegrees(random.nextDouble(5, 90)), random.nextDouble(14, 22), 0.1))));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void skyChangesWithoutCliffs(Case drawn) {
        assertSmooth(at -> new SkyLight(EPHEMERIS, drawn.site).at(drawn.direction, at).total().cdM2(),
                drawn.at);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void groundChangesWithoutCliffs(Case drawn) {
        assertSmooth(at -> new GroundLight(EPHEMERIS, drawn.site).lux(at), drawn.at);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void partsOnlyEverAdd(Case drawn) {
        SkyLight.Sample sample = new SkyLight(EPHEMERIS, drawn.site).at(drawn.direction, drawn.at);
        double total = sample.total().cdM2();
        assertTrue(total >= sample.of(LightSource.AIRGLOW).cdM2() && sample.of(LightSource.AIRGLOW)
                .cdM2() > 0);
        double sum = 0;
        for (LightSource source : LightSource.values()) {
            double without = sample.without(source).cdM2();
            assertEquals(total, without + sample.of(source).cdM2(), 1e-12 * total, source.name());
            sum += sample.of(source).cdM2();
        }
        assertEquals(total, sum, 1e-12 * total);
    }

    @Test
    void risingMoonComesIn() {
        // half an hour around every moonrise of two months at one site, every 10 s
        SkyLight sky = new SkyLight(EPHEMERIS, Places.MID_NORTH);
        Direction aim = Direction.ofDegrees(90, 20);
        boolean up = moonUp(FIRST);
        for (Instant at = FIRST; at.isBefore(FIRST.plusSeconds(60 * 86_400)); at = at.plusSeconds(300)) {
            if (!up && moonUp(at)) {
                for (int s = -900; s < 900; s += STEP_S) {
                    assertSmooth(moment -> sky.at(aim, moment).total().cdM2(), at.plusSeconds(s));
                }
            }
            up = moonUp(at);
        }
    }

    private static boolean moonUp(Instant at) {
        return EPHEMERIS.position(Body.MOON, Places.MID_NORTH, at).airlessAltitude().degrees() > -0.5;
    }

    /**
     * Twilight changes by 1.46 mag a degree at most, 8 % in 10 s at the equator's 0.042°, a rising Moon
     * less.
     */
    private static void assertSmooth(java.util.function.ToDoubleFunction<Instant> light, Instant at) {
        double ratio = light.applyAsDouble(at.plusSeconds(STEP_S)) / light.applyAsDouble(at);
        assertEquals(1, ratio, 0.08);
    }
}
