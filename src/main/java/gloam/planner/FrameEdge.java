package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.trail.Framing;

/** How far bodies stand outside a frame. */
final class FrameEdge {

    /** Half the Moon's disc and a rim for its glare, in degrees. */
    private static final double MOON_RIM_DEG = 0.5;
    /** Further below the horizon the Moon does not come into a frame before the night's next node. */
    private static final double MOON_FAR_DOWN_DEG = -3;

    private FrameEdge() {
    }

    /**
     * Degrees, roughly, by which the Moon stays outside a frame or below the horizon; negative when it shows.
     */
    static double moonOutsideDeg(NightSky sky, Framing framing, int minute) {
        Direction moon = sky.position(Body.MOON, minute).apparentDirection();
        double altitudeDeg = moon.altitude().degrees();
        double outsideDeg = altitudeDeg < MOON_FAR_DOWN_DEG ? -altitudeDeg
                : Math.max(-altitudeDeg, outsideDeg(framing, moon));
        return outsideDeg - MOON_RIM_DEG;
    }

    /**
     * Degrees, roughly, by which a body or star stands inside a frame and above the skyline; negative when it
     * does not.
     */
    static double insideDeg(NightSky sky, Framing framing, Target target, int minute) {
        Direction seen = sky.position(target, minute).apparentDirection();
        return Math.min(sky.clearanceDeg(seen), -outsideDeg(framing, seen));
    }

    /** Degrees, roughly, by which a direction lies outside a frame, negative inside. */
    static double outsideDeg(Framing framing, Direction direction) {
        double wideMm = framing.camera().frame().widthMm() / 2;
        double highMm = framing.camera().frame().heightMm() / 2;
        double outsideMm = framing.toFrame(direction)
                .map(point -> Math.max(Math.abs(point.xMm()) - wideMm, Math.abs(point.yMm()) - highMm))
                .orElse(wideMm + highMm);
        return Math.toDegrees(Math.atan(outsideMm / framing.camera().lens().focalLengthMm()));
    }
}
