package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.light.SkyLight;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The promise on coarse steps, kept where light changes fastest: dusk, dawn and moonrise, down to the
 * equator.
 */
class DuskPropertyTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final FilmStock FILM = Films.print(100, Reciprocity.power(1.5, 1));
    private static final Lens LENS =
            new Lens(150, List.of(FNumber.exact(12)), 0.9, Double.POSITIVE_INFINITY, 50, 0,
            Projection.RECTILINEAR, Vignetting.NONE);
    private static final Instant FIRST = Instant.parse("2027-01-01T00:00:00Z");

    record Case(Site site, Instant open, Direction direction) {

        LightCurve light() {
            SkyLight sky = new SkyLight(EPHEMERIS, site);
            return at -> FilmPlane.illuminanceLx(LENS, FNumber.exact(12), sky.at(direction, at).total());
        }

        Interval span() {
            return Interval.lasting(open, Duration.ofMinutes(90));
        }
    }

    /** Spans of an hour and a half that open or close in twilight. */
    static Stream<Named<Case>> dusks() {
        List<Site> sites = Places.all();
        return Samples.of(40, random -> {
            Site site = sites.get(random.nextInt(sites.size()));
            Direction direction = Direction.ofDegrees(random.nextDouble(360), random.nextDouble(5, 90));
            Instant open = FIRST.plusSeconds(random.nextInt(365 * 86_400));
            while (!twilight(site, open)) {
                open = open.plusSeconds(600);
            }
            return new Case(site, open, direction);
        });
    }

    @ParameterizedTest
    @MethodSource("dusks")
    void stepsOfTwoMinutesKeepTheIntegral(Case dusk) {
        assertEquals(1, progress(dusk, dusk.light(), 120) / progress(dusk, dusk.light(), 10), 0.005);
    }

    /** Spans of an hour and a half in which the Moon rises or sets. */
    static Stream<Named<Case>> moonrises() {
        List<Site> sites = List.of(Places.MID_NORTH, Places.MID_SOUTH, Places.EQUATOR);
        return Samples.of(20, random -> {
            Site site = sites.get(random.nextInt(sites.size()));
            Direction direction = Direction.ofDegrees(random.nextDouble(360), random.nextDouble(5, 90));
            Instant open = FIRST.plusSeconds(random.nextInt(365 * 86_400));
            while (moonUp(site, open) == moonUp(site, open.plusSeconds(5400))) {
                open = open.plusSeconds(600);
            }
            return new Case(site, open, direction);
        });
    }

    @ParameterizedTest
    @MethodSource("moonrises")
    void stepsOfTwoMinutesKeepTheIntegralAcrossMoonrise(Case moonrise) {
        assertEquals(1, progress(moonrise, moonrise.light(), 120) / progress(moonrise, moonrise.light(), 10),
                0.005);
    }

    private static boolean moonUp(Site site, Instant at) {
        return EPHEMERIS.position(Body.MOON, site, at).airlessAltitude().degrees() > 0;
    }

    @ParameterizedTest
    @MethodSource("dusks")
    void stepsOfFiveMinutesKeepItToTwoPerCent(Case dusk) {
        assertEquals(1, progress(dusk, dusk.light(), 300) / progress(dusk, dusk.light(), 10), 0.02);
    }

    @ParameterizedTest
    @MethodSource("dusks")
    void sampledLightKeepsItToo(Case dusk) {
        LightCurve sampled = dusk.light().sampled(dusk.span(), Duration.ofMinutes(2));
        assertEquals(1, progress(dusk, sampled, 10) / progress(dusk, dusk.light(), 10), 0.005);
    }

    private static double progress(Case dusk, LightCurve light, int stepS) {
        ProgressCurve curve = new ProgressCurve(FILM, light, dusk.span(), Duration.ofSeconds(stepS));
        return curve.progress(dusk.open, dusk.span().endExclusive());
    }

    private static boolean twilight(Site site, Instant at) {
        double altitudeDeg = EPHEMERIS.position(Body.SUN, site, at).airlessAltitude().degrees();
        return altitudeDeg < -2 && altitudeDeg > -17;
    }
}
