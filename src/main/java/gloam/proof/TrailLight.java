package gloam.proof;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.units.Angle;

/**
 * Something that draws a trail, and its light.
 *
 * @param target       what
 * @param magnitude    V outside the air
 * @param colourBv     B−V, NaN where unknown
 * @param semidiameter half the angle of its disc, zero for a star
 */
record TrailLight(Target target, double magnitude, double colourBv, Angle semidiameter) {

    static TrailLight of(Star star) {
        return new TrailLight(star, star.magnitude(), star.colourBv(), Angle.ZERO);
    }

    static TrailLight of(Body body, Appearance seen) {
        return new TrailLight(body, seen.magnitude(), colourBv(body), seen.semidiameter());
    }

    /**
     * Mean B−V: Moon by Krisciunas and Schaefer 1991; planets by Mallama et al. 2017, Icarus 282, 19, from
     * memory.
     */
    private static double colourBv(Body body) {
        return switch (body) {
            case SUN -> 0.65;
            case MOON -> 0.91;
            case MERCURY -> 0.97;
            case VENUS -> 0.81;
            case MARS -> 1.43;
            case JUPITER -> 0.87;
            case SATURN -> 1.09;
            case URANUS -> 0.50;
            case NEPTUNE -> 0.41;
        };
    }
}
