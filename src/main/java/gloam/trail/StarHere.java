package gloam.trail;

import gloam.ephemeris.Star;
import gloam.gear.Frame;
import java.util.Optional;

/**
 * What a star draws that stands at a point of the frame at mid exposure.
 *
 * @param where  the point's name
 * @param point  the point
 * @param star   the star's place
 * @param motion its motion at mid exposure
 * @param drawn  what it draws on the frame; empty where it only touches a corner
 */
public record StarHere(Where where, Framing.Point point, Star star, Motion motion, Optional<Trail> drawn) {

    /** The points for which figures are given, as seen in the scene. */
    public enum Where {
        CENTRE(0, 0), TOP_LEFT(-1, 1), TOP_RIGHT(1, 1), BOTTOM_LEFT(-1, -1), BOTTOM_RIGHT(1, -1);

        private final int right;
        private final int up;

        Where(int right, int up) {
            this.right = right;
            this.up = up;
        }

        /** The point on a frame of that size. */
        public Framing.Point on(Frame frame) {
            return new Framing.Point(right * frame.widthMm() / 2, up * frame.heightMm() / 2);
        }
    }
}
