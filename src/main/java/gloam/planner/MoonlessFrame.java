package gloam.planner;

import gloam.trail.Framing;

/** How long the Moon stays out of the frame of a camera that follows something. For one thread at a time. */
final class MoonlessFrame {

    private final Wish wish;
    private final NightSky sky;
    private final Aiming aiming;
    private final boolean matters;
    private final int[] known;

    MoonlessFrame(Wish wish, NightSky sky, Aiming aiming) {
        this.wish = wish;
        this.sky = sky;
        this.aiming = aiming;
        this.matters = !aiming.fixed() && !wish.letsMoonIn();
        this.known = new int[sky.clock().minutes() + 1];
    }

    /** How far before and after a minute, in minutes; without end where it does not matter. */
    int halfMin(int middleMin) {
        if (!matters) {
            return Integer.MAX_VALUE;
        }
        if (known[middleMin] == 0) {
            Framing framing = aiming.framing(middleMin);
            int halfMin = 0;
            while (halfMin <= wish.longest().toMinutes() / 2
                    && FrameEdge.moonOutsideDeg(sky, framing, middleMin - halfMin - NightClock.NODE_MIN) >= 0
                    && FrameEdge.moonOutsideDeg(sky, framing, middleMin + halfMin + NightClock.NODE_MIN)
                    >= 0) {
                halfMin += NightClock.NODE_MIN;
            }
            known[middleMin] = 1 + halfMin;
        }
        return known[middleMin] - 1;
    }
}
