package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.gear.Vignetting;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.trail.Cameras;
import gloam.trail.LevelSearch;
import gloam.trail.TrailEstimator;
import gloam.units.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelSpansTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final int TRIED_EVERY_S = 10;
    private static final LocalDate FIRST = LocalDate.of(2027, 2, 8);

    @ParameterizedTest
    @CsvSource({"44.2, MARS, 4, 0", "44.2, MOON, 8, 60", "-31.4, JUPITER, 10, 0", "60, SATURN, 25, 12"})
    void spansAreThoseOfTryingEveryMoment(double latitudeDeg, Body body, double withinDeg,
            double skylineDeg) {
        Site base = Places.at(latitudeDeg, 10, 100);
        Site site = new Site("site", base.latitude(), base.longitude(), 100, base.zone(), 21.6, 0.2,
                new Skyline(List.of(new Skyline.Point(0, skylineDeg))));
        Camera camera = camera();
        LevelSpans answer = LevelSpans.of(EPHEMERIS, site, new LevelSpans.Wanted(body,
                Cameras.levelTrails(camera, withinDeg), FIRST, FIRST.plusDays(8)));
        List<Instant> found = answer.spans().stream().map(span -> span.level().span())
                .flatMap(span -> Stream.of(span.start(), span.endExclusive())).toList();
        List<Instant> tried = tried(site, body, withinDeg, camera);
        assertTrue(!tried.isEmpty(), "the case has something to find");
        assertEquals(tried.size(), found.size(), () -> tried + " " + found);
        for (int i = 0; i < tried.size(); i++) {
            assertEquals(0, Duration.between(tried.get(i), found.get(i)).toMillis() / 1000.0, TRIED_EVERY_S);
        }
    }

    private static Camera camera() {
        return new Camera("camera", new Lens(100, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY,
                40, 0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 80), Duration.ZERO);
    }

    /** Full Moon on 20 February 2027: up all night that evening, down all night two weeks before. */
    @Test
    void aSpanTellsWhetherTheMoonIsUp() {
        assertEquals(List.of(true), moonUp(LocalDate.of(2027, 2, 20)));
        assertEquals(List.of(false), moonUp(LocalDate.of(2027, 2, 6)));
    }

    private static List<Boolean> moonUp(LocalDate evening) {
        LevelSearch search = Cameras.levelTrails(camera(), 10);
        return LevelSpans.of(EPHEMERIS, Places.MID_NORTH,
                new LevelSpans.Wanted(Body.MARS, search, evening, evening))
                .spans().stream().map(LevelSpans.Span::moonUp).distinct().toList();
    }

    @Test
    void theSunAndTooManyNightsAreRefused() {
        LevelSearch search = Cameras.levelTrails(camera(), 10);
        assertThrows(BadInput.class, () -> new LevelSpans.Wanted(Body.SUN, search, FIRST, FIRST));
        assertThrows(BadInput.class, () -> new LevelSpans.Wanted(Body.MARS, search, FIRST,
                FIRST.minusDays(1)));
        assertThrows(BadInput.class, () -> new LevelSpans.Wanted(Body.MARS, search, FIRST,
                FIRST.plusDays(800)));
        assertEquals(FIRST.plusDays(799), new LevelSpans.Wanted(Body.MARS, search, FIRST, FIRST.plusDays(799))
                .last());
    }

    /** Starts and ends, one after the other. */
    private static List<Instant> tried(Site site, Body body, double withinDeg, Camera camera) {
        TrailEstimator estimator = new TrailEstimator(EPHEMERIS, site);
        List<Instant> changes = new ArrayList<>();
        Instant end = Night.spanOf(site, FIRST.plusDays(8)).endExclusive();
        boolean before = false;
        for (Instant at = Night.spanOf(site, FIRST)
                .start(); at.isBefore(end); at = at.plusSeconds(TRIED_EVERY_S)) {
            boolean now = EPHEMERIS.position(Body.SUN, site, at).airlessAltitude().degrees() < -18
                    && clear(estimator.direction(body, at), site)
                    && level(estimator, body, at, withinDeg, camera);
            if (now != before) {
                changes.add(at);
            }
            before = now;
        }
        return changes;
    }

    private static boolean clear(Direction seen, Site site) {
        return seen.altitude().compareTo(site.skyline().altitudeAt(seen.azimuth())) >= 0;
    }

    private static boolean level(TrailEstimator estimator, Body body, Instant at, double withinDeg,
            Camera camera) {
        Framing framing = Framing.level(estimator.direction(body, at), camera);
        Framing.Point from = framing.toFrame(estimator.direction(body, at.minusSeconds(5))).orElseThrow();
        Framing.Point to = framing.toFrame(estimator.direction(body, at.plusSeconds(5))).orElseThrow();
        double slopeDeg = Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
        return Math.abs(Math.IEEEremainder(slopeDeg, 180)) <= withinDeg;
    }
}
