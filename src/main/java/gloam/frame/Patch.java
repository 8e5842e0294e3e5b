package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.light.SkyBrightness;

/**
 * A piece of sky in a frame.
 *
 * @param xShare         its middle from the left edge, as a share of the frame's width
 * @param yShare         its middle from the upper edge, as a share of its height
 * @param widthShare     its width as a share of the frame's
 * @param heightShare    its height as a share of the frame's
 * @param direction      where its middle is seen
 * @param brightness     the sky there, without stars
 * @param scatterMag     how its parts differ, one standard deviation
 * @param sharedErrorMag one standard deviation of what all pieces of the frame are off by alike
 */
public record Patch(double xShare, double yShare, double widthShare, double heightShare, Direction direction,
                    SkyBrightness brightness,
                    double scatterMag, double sharedErrorMag) {
}
