package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.sheet.Setting;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;

/**
 * How coarsely wide light is looked up first.
 *
 * @param cells along each side of the frame
 * @param panel time between two looks at most
 */
record Fineness(int cells, Duration panel) {

    /** For a sky that varies over tens of degrees. */
    static final Fineness SMOOTH = new Fineness(8, Duration.ofMinutes(40));
    /** So that the narrow glow of a Moon that passes is not overlooked. */
    static final Fineness MOON = new Fineness(16, Duration.ofMinutes(10));

    private static final double MOON_NEAR_DEG = 8;
    private static final Duration MOON_STEP = Duration.ofMinutes(10);

    /**
     * What the sky over a frame asks for: more where the Moon stands in it or near while the shutter is open.
     */
    static Fineness of(Setting setting, TrailEstimator estimator) {
        double nearDeg = setting.framing().radius().degrees() + MOON_NEAR_DEG;
        Interval whole = setting.whole();
        for (Instant at = whole.start(); at.isBefore(whole.endExclusive()); at = at.plus(MOON_STEP)) {
            Direction moon = estimator.direction(Body.MOON, at);
            if (moon.altitude().degrees() > -1 && moon.to(setting.framing().aim()).degrees() < nearDeg) {
                return MOON;
            }
        }
        return SMOOTH;
    }
}
