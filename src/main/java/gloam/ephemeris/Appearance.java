package gloam.ephemeris;

import gloam.units.Angle;

/**
 * How a body looks from a site.
 *
 * @param body                which body
 * @param position            where it stands
 * @param phaseAngle          angle Sun–body–observer, 0 (full) to 180° (new); 0 for the Sun
 * @param illuminatedFraction lit share of the disc, 0 to 1; 1 for the Sun
 * @param magnitude           apparent V magnitude outside the atmosphere
 * @param semidiameter        half the angle of its disc
 */
public record Appearance(Body body, SkyPosition position, Angle phaseAngle, double illuminatedFraction,
                         double magnitude, Angle semidiameter) {

    /** The angle of its disc. */
    public Angle diameter() {
        return semidiameter.plus(semidiameter);
    }
}
