package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a star on a sky that only turns is seen over a skyline. */
class ClearOfSkylineTest {

    private static final double TURN = TurningSky.TURN_RAD_S;

    /** A span with its middle at the moment at which right ascension 0 is on the meridian. */
    private static Interval around(double seconds) {
        Duration half = Duration.ofNanos(Math.round(seconds * 5e8));
        return new Interval(TurningSky.ZERO.minus(half), TurningSky.ZERO.plus(half));
    }

    @Test
    void theSkylineHidesWhatIsBelowIt() {
        Site flat = Places.at(45, 0, 0);
        Interval day = around(2 * Math.PI / TURN);
        Star equator = Star.at("", 0, 0);
        List<Interval> overHorizon = new TrailEstimator(new TurningSky(), flat).airless()
                .clearOfSkyline(equator, day);
        assertEquals(1, overHorizon.size());
        assertEquals(-Math.PI / 2 / TURN, sinceZeroS(overHorizon.get(0).start()), 0.001);
        assertEquals(Math.PI / 2 / TURN, sinceZeroS(overHorizon.get(0).endExclusive()), 0.001);
        // A wall from azimuth 80° to 180° hides the eastern half: the star comes out on the meridian.
        Skyline wall = new Skyline(List.of(new Skyline.Point(80, 0), new Skyline.Point(80, 60),
                new Skyline.Point(180, 60), new Skyline.Point(180, 0)));
        Site walled = new Site("walled", flat.latitude(), flat.longitude(), 0, flat.zone(), 21.5, 0.2, wall);
        List<Interval> overWall = new TrailEstimator(new TurningSky(), walled).airless()
                .clearOfSkyline(equator, day);
        assertEquals(1, overWall.size());
        assertEquals(0, sinceZeroS(overWall.get(0).start()), 0.001);
    }

    private static double sinceZeroS(Instant at) {
        return (at.getEpochSecond() - TurningSky.ZERO.getEpochSecond()) + at.getNano() * 1e-9;
    }
}
