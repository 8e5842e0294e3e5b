package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Projection;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Trails on a sky that only turns, where geometry gives the answers. */
class TrailEstimatorTest {

    private static final double TURN = TurningSky.TURN_RAD_S;
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    private static TrailEstimator at(double latitudeDeg) {
        return new TrailEstimator(new TurningSky(), Places.at(latitudeDeg, 0, 0)).airless();
    }

    /** A span with its middle at the moment at which right ascension 0 is on the meridian. */
    private static Interval around(double seconds) {
        Duration half = Duration.ofNanos(Math.round(seconds * 5e8));
        return new Interval(TurningSky.ZERO.minus(half), TurningSky.ZERO.plus(half));
    }

    private static Framing framing(double azimuthDeg, double altitudeDeg, double focalLengthMm,
                                   double sideMm) {
        return Framing.level(Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Cameras.rectilinear(focalLengthMm, sideMm, sideMm));
    }

    /**
     * Lengths by integration over the hour angle, computed with the exact rectilinear formula outside the
     * project, printed to 0.001 mm or 0.00001 mm; from 45° north, looking at the meridian.
     */
    @ParameterizedTest
    @CsvSource({
        "50,  45, 0,  900,  3.28263, 0.00001",
        "150, 45, 0,  3600, 39.605,  0.0005",
        "150, 90, 45, 3600, 27.924,  0.0005",
        "150, 45, 20, 3600, 39.620,  0.0005",
    })
    void lengthsAreThoseOfTheExactFormula(double focalLengthMm, double altitudeDeg, double declinationDeg,
                                          double seconds, double lengthMm, double withinMm) {
        Trail trail = at(45).trail(framing(180, altitudeDeg, focalLengthMm, 400),
                Star.at("", 0, declinationDeg), around(seconds), TEN_MINUTES).orElseThrow();
        assertEquals(lengthMm, trail.lengthMm(), withinMm);
    }

    @Test
    void aroundThePoleTrailsAreArcsOfCircles() {
        Interval hour = around(3600);
        Trail trail = at(45).trail(framing(0, 45, 150, 400), Star.at("", 0, 60), hour, TEN_MINUTES)
                .orElseThrow();
        double radiusMm = 150 * Math.tan(Math.toRadians(30));
        double angleRad = 3600 * TURN;
        assertEquals(22.735, trail.lengthMm(), 0.0005); // the same outside computation, printed to 0.001 mm
        assertEquals(radiusMm * angleRad, trail.lengthMm(), 1e-8); // chords of 2 min, their error taken out
        assertEquals(radiusMm * (1 - Math.cos(angleRad / 2)), trail.sagittaMm(), 1e-9);
        assertEquals(angleRad * Math.cos(Math.toRadians(60)), trail.arc().radians(), 1e-8);
        for (Trail.Point point : trail.points()) {
            assertEquals(radiusMm, Math.hypot(point.xMm(), point.yMm()), 1e-9); // rounding
        }
    }

    @ParameterizedTest
    @CsvSource({
        "45,  0,   45, 60,  180", // north: above the pole westward, to the left
        "-31, 180, 31, -60, 0",   // south: above the pole westward, to the right
        "45,  180, 45, 0,   0",   // the equator in the south, seen from the north: to the right
        "-31, 0,   59, 0,   180", // the equator in the north, seen from the south: to the left
    })
    void starsOnTheUpperMeridianGoWest(double latitudeDeg, double azimuthDeg, double altitudeDeg,
                                       double declinationDeg, double directionDeg) {
        Trail trail = at(latitudeDeg).trail(framing(azimuthDeg, altitudeDeg, 60, 200),
                Star.at("", 0, declinationDeg), around(1200), TEN_MINUTES).orElseThrow();
        // chord of 2 s
        assertEquals(0, Math.IEEEremainder(trail.direction().degrees() - directionDeg, 360), 1e-6);
    }

    @Test
    void starsRiseStraightUpOnTheEquatorAndSlantElsewhere() {
        Star rising = Star.at("", 90, 0);
        Interval span = around(600);
        assertEquals(90, at(0).trail(framing(90, 0, 60, 80), rising, span, TEN_MINUTES)
                .orElseThrow().direction().degrees(), 1e-6);
        // towards the south, the right, at the height of the equator
        assertEquals(90 - 45, at(45).trail(framing(90, 0, 60, 80), rising, span, TEN_MINUTES)
                .orElseThrow().direction().degrees(), 1e-6);
    }

    @Test
    void theImageOnTheAxisMovesWithTheFocalLengthAndTheCosineOfTheDeclination() {
        Trail trail = at(45).trail(framing(180, 75, 150, 80), Star.at("", 0, 30), around(60), TEN_MINUTES)
                .orElseThrow();
        double expectedMmS = 150 * TURN * Math.cos(Math.toRadians(30));
        assertEquals(expectedMmS, trail.passage().speedMmS(), expectedMmS * 1e-7); // chord of 2 s
    }

    @Test
    void entryAndExitAreFoundToTheMillisecond() {
        Trail trail = at(45).trail(framing(180, 45, 100, 80), Star.at("", 0, 0), around(6 * 3600),
                TEN_MINUTES).orElseThrow();
        double halfS = Math.atan(40.0 / 100) / TURN; // x = f tan(hour angle) on the equator
        Trail.Stretch stretch = trail.stretches().get(0);
        assertEquals(1, trail.stretches().size());
        assertEquals(Optional.of(Trail.Edge.LEFT), stretch.enters());
        assertEquals(Optional.of(Trail.Edge.RIGHT), stretch.leaves());
        assertEquals(-halfS, sinceZeroS(stretch.span().start()), 0.001);
        assertEquals(halfS, sinceZeroS(stretch.span().endExclusive()), 0.001);
        assertEquals(-40, stretch.start().xMm(), 1e-5);
        assertEquals(40, stretch.end().xMm(), 1e-5);
        assertEquals(80, trail.lengthMm(), 2e-5);
        assertTrue(trail.leavesFrame());
    }

    @Test
    void aCircleLargerThanTheFrameComesAndGoesAtEveryCorner() {
        double radiusMm = 45;
        double declinationDeg = 90 - Math.toDegrees(Math.atan(radiusMm / 100));
        Interval day = around(2 * Math.PI / TURN);
        Trail trail = at(45).trail(framing(0, 45, 100, 80), Star.at("", 45, declinationDeg), day, TEN_MINUTES)
                .orElseThrow();
        double insideRad = Math.PI / 2 - 2 * Math.acos(40 / radiusMm);
        assertEquals(5, trail.stretches().stream().filter(s -> s.span().seconds() > 1).count(),
                "four corners, the first cut in two by the start");
        assertEquals(4 * insideRad / TURN,
                trail.stretches().stream().mapToDouble(s -> s.span().seconds()).sum(), 0.01);
        assertEquals(4 * insideRad * radiusMm, trail.lengthMm(), 1e-4);
    }

    @Test
    void aShortCutOverACornerIsFound() {
        double radiusMm = 40 * Math.sqrt(2) - 0.001;
        double declinationDeg = 90 - Math.toDegrees(Math.atan(radiusMm / 100));
        Interval span = around(3 * 3600);
        Trail trail = at(45).trail(framing(0, 45, 100, 80), Star.at("", 45, declinationDeg), span,
                TEN_MINUTES).orElseThrow();
        double insideS = (Math.PI / 2 - 2 * Math.acos(40 / radiusMm)) / TURN;
        assertEquals(1, trail.stretches().size());
        assertTrue(insideS < 10, "shorter than a step of the search");
        assertEquals(insideS, trail.stretches().get(0).span().seconds(), 0.002);
        assertEquals(List.of(trail.stretches().get(0).span()), at(45)
                .track(framing(0, 45, 100, 80), Star.at("", 45, declinationDeg), span).visits(span));
    }

    @Test
    void whatStaysOutsideOrBehindDrawsNothing() {
        Interval hour = around(3600);
        assertEquals(Optional.empty(),
                at(45).trail(framing(0, 45, 100, 80), Star.at("", 0, 0), hour, TEN_MINUTES));
        assertEquals(Optional.empty(),
                at(45).trail(framing(180, 45, 100, 80), Star.at("", 0, 40), hour, TEN_MINUTES));
    }

    @Test
    void pointsAreSpacedFromTheOpeningAndHaveBothEnds() {
        Interval hour = around(3600);
        Trail whole = at(45).trail(framing(180, 45, 100, 80), Star.at("", 0, 0), hour, Duration.ofMinutes(25))
                .orElseThrow();
        assertEquals(List.of(hour.start(), hour.start().plusSeconds(1500), hour.start().plusSeconds(3000),
                hour.endExclusive()), whole.points().stream().map(Trail.Point::at).toList());
        assertFalse(whole.leavesFrame());
        assertEquals(Optional.empty(), whole.stretches().get(0).enters());
        Trail exact = at(45).trail(framing(180, 45, 100, 80), Star.at("", 0, 0), hour, Duration.ofMinutes(30))
                .orElseThrow();
        assertEquals(3, exact.points().size(), "the end is not given twice");
        Trail cut = at(45).trail(framing(180, 45, 100, 80), Star.at("", 18, 0), hour, Duration.ofMinutes(30))
                .orElseThrow();
        assertEquals(List.of(hour.start().plusSeconds(1800), hour.endExclusive()),
                cut.points().stream().map(Trail.Point::at).skip(1).toList());
    }

    @Test
    void lengthDoesNotDependOnTheSpacing() {
        Interval span = around(7200);
        Track track = at(45).track(framing(180, 45, 100, 80), Star.at("", 3, 12), span);
        assertEquals(track.trail(span, Duration.ofSeconds(7)).orElseThrow().lengthMm(),
                track.trail(span, Duration.ofHours(9)).orElseThrow().lengthMm());
    }

    @Test
    void severalOpeningsLeaveGaps() {
        Instant zero = TurningSky.ZERO;
        List<Interval> openings = List.of(new Interval(zero.minusSeconds(1800), zero.minusSeconds(600)),
                new Interval(zero.plusSeconds(600), zero.plusSeconds(1800)));
        Trail trail = at(45).track(framing(180, 45, 100, 80), Star.at("", 0, 0), around(3600))
                .trail(openings, TEN_MINUTES).orElseThrow();
        double innerMm = 100 * Math.tan(600 * TURN);
        double outerMm = 100 * Math.tan(1800 * TURN);
        assertEquals(List.of(openings.get(0), openings.get(1)),
                trail.stretches().stream().map(Trail.Stretch::span).toList());
        assertEquals(2 * (outerMm - innerMm), trail.lengthMm(), 1e-6);
        assertEquals(2 * innerMm, trail.gapsMm().get(0), 1e-9);
        assertEquals(1, trail.gapsMm().size());
        assertFalse(trail.leavesFrame());
    }

    @Test
    void anExposureForALengthLastsAsLongAsItTakes() {
        Track track = at(45).track(framing(180, 45, 150, 80), Star.at("", 0, 0), around(4 * 3600));
        double lastsS = 2 * Math.atan(30 / 2.0 / 150) / TURN; // length 2 f tan(half the angle)
        Duration lasts = track.lasts(TurningSky.ZERO, 30).orElseThrow();
        assertEquals(lastsS, lasts.toNanos() * 1e-9, 1e-3); // the image runs 0.01 mm in a second
        Instant open = TurningSky.ZERO.minusNanos(lasts.toNanos() / 2);
        assertEquals(lastsS / 2, sinceZeroS(track.closes(open, 30).orElseThrow()), 1e-3);
        assertEquals(Optional.empty(), track.lasts(TurningSky.ZERO, 1000));
        assertEquals(Optional.empty(), track.closes(TurningSky.ZERO, 1000));
    }

    @Test
    void aFisheyeSeesAStarFromRisingToSetting() {
        Framing wide = Framing.level(Direction.ZENITH, Cameras.of(10, 80, 80, Projection.EQUIDISTANT));
        Interval day = around(2 * Math.PI / TURN);
        Trail trail = at(0).trail(wide, Star.at("", 0, 0), day, TEN_MINUTES).orElseThrow();
        // From the equator it runs straight along x through the zenith at the even speed f ω; 80 mm are
        // 8 rad, more than the whole sky, so it stays on the frame.
        assertEquals(10 * TURN, trail.passage().speedMmS(), 1e-12);
        assertEquals(1, trail.stretches().size());
        assertFalse(trail.leavesFrame());
    }

    private static double sinceZeroS(Instant at) {
        return (at.getEpochSecond() - TurningSky.ZERO.getEpochSecond()) + at.getNano() * 1e-9;
    }
}
