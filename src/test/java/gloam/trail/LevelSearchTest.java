package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelSearchTest {

    private static final Interval DAY =
            Interval.lasting(Instant.parse("2027-02-06T12:00:00Z"), Duration.ofDays(1));

    @Test
    void aStarRunsLevelWhenItStandsOnTheMeridian() {
        TrailEstimator estimator = new TrailEstimator(new TurningSky(), Places.at(50, 0, 0)).airless();
        Interval span = new Interval(TurningSky.ZERO.minusSeconds(7200), TurningSky.ZERO.plusSeconds(7200));
        List<LevelSearch.Level> found = Cameras.levelTrails(Cameras.rectilinear(100, 80, 80), 3)
                .find(estimator, Star.at("", 0, 10), span);
        assertEquals(1, found.size());
        LevelSearch.Level level = found.get(0);
        assertEquals(0, Duration.between(TurningSky.ZERO, level.best()).toNanos() * 1e-9, 0.01);
        assertEquals(0, level.off().degrees(), 1e-4);
        assertEquals(0, level.framing().aim().to(Direction.ofDegrees(180, 50)).degrees(), 1e-4);
        // Parallactic angle q: tan q = sin H / (tan φ cos δ − sin δ cos H), Meeus, Astronomical Algorithms,
        // (14.1).
        double hourRad = level.span().seconds() / 2 * TurningSky.TURN_RAD_S;
        double latitudeRad = Math.toRadians(50);
        double declinationRad = Math.toRadians(10);
        double parallacticRad = Math.atan2(Math.sin(hourRad), Math.tan(latitudeRad) * Math.cos(declinationRad)
                - Math.sin(declinationRad) * Math.cos(hourRad));
        assertEquals(3, Math.toDegrees(parallacticRad), 1e-4);
    }

    @ParameterizedTest
    @CsvSource({
        "44.2, MARS, 3, 0, 0, 0", "44.2, MOON, 10, 0, 0, 0", "-31.4, JUPITER, 5, 0, 0, 0",
        "0, VENUS, 20, 45, 0, 0",
        "78.2, MARS, 4, 0, 0, 0", "44.2, SATURN, 5, 30, 25, -20", "12.0, MARS, 3, 0, -30, 30",
    })
    void agreesWithTryingEveryMoment(double latitudeDeg, Body body, double toleranceDeg, double wantedDeg,
                                     double xMm, double yMm) {
        TrailEstimator estimator = new TrailEstimator(new AnalyticEphemeris(),
                Places.at(latitudeDeg, 10, 100));
        LevelSearch search = new LevelSearch(
                Framing.level(Direction.ofDegrees(0, 0), Cameras.rectilinear(100, 80, 80)),
                new Framing.Point(xMm, yMm), Angle.ofDegrees(wantedDeg), Angle.ofDegrees(toleranceDeg));
        List<Interval> found = search.find(estimator, body, DAY).stream().map(LevelSearch.Level::span)
                .toList();
        List<Interval> tried = tried(estimator, body, search);
        assertTrue(!tried.isEmpty(), "the case has something to find");
        assertEquals(tried.size(), found.size());
        for (int i = 0; i < tried.size(); i++) {
            assertEquals(0, secondsBetween(tried.get(i).start(), found.get(i).start()), TRIED_EVERY_S);
            assertEquals(0, secondsBetween(tried.get(i).endExclusive(), found.get(i).endExclusive()),
                    TRIED_EVERY_S);
        }
    }

    private static final int TRIED_EVERY_S = 10;

    private static List<Interval> tried(TrailEstimator estimator, Body body, LevelSearch search) {
        List<Interval> spans = new ArrayList<>();
        Instant since = null;
        for (Instant at = DAY.start(); at.isBefore(DAY.endExclusive()); at = at.plusSeconds(TRIED_EVERY_S)) {
            boolean level = runsSo(estimator, body, search, at);
            if (level && since == null) {
                since = at;
            } else if (!level && since != null) {
                spans.add(new Interval(since, at));
                since = null;
            }
        }
        if (since != null) {
            spans.add(new Interval(since, DAY.endExclusive()));
        }
        return spans;
    }

    /** Whether the line between the images five seconds before and after is as steep as wanted. */
    private static boolean runsSo(TrailEstimator estimator, Body body, LevelSearch search, Instant at) {
        Framing.Point place = search.place();
        return search.framing().placing(estimator.direction(body, at), place.xMm(), place.yMm())
                .map(framing -> {
                    Framing.Point from = framing.toFrame(estimator.direction(body, at.minusSeconds(5)))
                            .orElseThrow();
                    Framing.Point to = framing.toFrame(estimator.direction(body, at.plusSeconds(5)))
                            .orElseThrow();
                    double slopeDeg =
                            Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
                    double offDeg = (slopeDeg - search.wanted().degrees() + 720 + 90) % 180 - 90;
                    return Math.abs(offDeg) <= search.tolerance().degrees();
                }).orElse(false);
    }

    private static double secondsBetween(Instant a, Instant b) {
        return Duration.between(a, b).toMillis() / 1000.0;
    }

    /**
     * Of a part of the level time that holds the best moment that one stays the best, else the end nearest to
     * it.
     */
    @Test
    void aPartOfALevelKeepsTheBestMomentThatItHas() {
        TrailEstimator estimator = new TrailEstimator(new TurningSky(), Places.at(50, 0, 0)).airless();
        Star star = Star.at("", 0, 10);
        LevelSearch search = Cameras.levelTrails(Cameras.rectilinear(100, 80, 80), 3);
        LevelSearch.Level level = search.find(estimator, star,
                new Interval(TurningSky.ZERO.minusSeconds(7200), TurningSky.ZERO.plusSeconds(7200))).get(0);
        Interval around = new Interval(TurningSky.ZERO.minusSeconds(60), TurningSky.ZERO.plusSeconds(60));
        assertEquals(level.best(), level.within(around, search, estimator, star).best());
        assertEquals(around, level.within(around, search, estimator, star).span());
        Interval after = new Interval(TurningSky.ZERO.plusSeconds(120), TurningSky.ZERO.plusSeconds(300));
        LevelSearch.Level late = level.within(after, search, estimator, star);
        assertEquals(after.start(), late.best());
        assertTrue(Math.abs(late.off().degrees()) > 0.1, () -> late.off().degrees() + "°");
        Interval before = new Interval(TurningSky.ZERO.minusSeconds(300), TurningSky.ZERO.minusSeconds(120));
        assertEquals(before.endExclusive(), level.within(before, search, estimator, star).best());
    }
}
