package gloam.answer;

import static gloam.answer.Framed.EPHEMERIS;
import static gloam.answer.Framed.EVENING;
import static gloam.answer.Framed.SITE;
import static gloam.answer.Framed.STAR_DEG_H;
import static gloam.answer.Framed.camera;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.support.StandingSky;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class PointingTest {

    /**
     * Towards a direction the aim is that; towards a target the camera turns until it stands at its place.
     */
    @Test
    void aPointingPutsItsTargetAtItsPlace() {
        Star vega = Star.at("Vega", 279.2347, 38.7837);
        Pointing.Standpoint from = new Pointing.Standpoint(EPHEMERIS, SITE, true);
        Pointing kept = new Pointing(camera(), Angle.ZERO,
                new Pointing.Keeping(vega, new Framing.Point(10, -5)));
        Framing framing = kept.framing(from, EVENING.plus(Duration.ofHours(8)));
        SkyPosition there = EPHEMERIS.position(vega, SITE, EVENING.plus(Duration.ofHours(8)));
        Framing.Point at = framing.toFrame(new Direction(there.azimuth(), there.airlessAltitude()))
                .orElseThrow();
        assertEquals(10, at.xMm(), 1e-6);
        assertEquals(-5, at.yMm(), 1e-6);
        Direction south = Direction.ofDegrees(180, 49);
        assertEquals(south, new Pointing(camera(), Angle.ZERO, new Pointing.Towards(south))
                .framing(from, EVENING).aim());
    }

    /**
     * 10 mm at 100 mm on the equator of the sky are 0.1 rad on the chord of the tangent: 2 · atan(0.05) at
     * 15.041°/h.
     */
    @Test
    void aTrailIsAsLongAsAskedFor() {
        Pointing.Standpoint from = new Pointing.Standpoint(EPHEMERIS, SITE, true);
        Pointing pointing = new Pointing(camera(), Angle.ZERO,
                new Pointing.Towards(Direction.ofDegrees(180, 49)));
        Interval open = pointing.untilLength(from, EVENING, 10).orElseThrow();
        double wantedS = 3600 * Math.toDegrees(2 * Math.atan(0.05)) / STAR_DEG_H;
        assertEquals(wantedS, open.seconds(), 0.5); // the equator's bend on the sheet and 0.1 s of the search
        assertTrue(pointing.untilLength(from, EVENING, 1000).isEmpty());
    }

    /**
     * 50 mm beside the axis at 100 mm is 27° of the horizon at most: what stands 10° from the zenith is never
     * so far left.
     */
    @Test
    void aPlaceThatNoAimReachesIsRefused() {
        StandingSky high = new StandingSky(Direction.ofDegrees(0, -40), Direction.ofDegrees(180, 80), 384_400,
                Angle.ofDegrees(90));
        Pointing.Standpoint from = new Pointing.Standpoint(high, SITE, true);
        Pointing beside = new Pointing(camera(), Angle.ZERO,
                new Pointing.Keeping(Body.MOON, new Framing.Point(-50, 0)));
        assertThrows(BadInput.class, () -> beside.framing(from, EVENING));
        assertThrows(BadInput.class, () -> new Pointing(camera(), Angle.ZERO,
                new Pointing.Towards(Direction.ofDegrees(180, 49))).untilLength(from, EVENING, 0.009));
    }
}
