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
        this.known = new int[sky.clock().nodes()];
    }

    /** How far before and after a minute, in minutes; without end where it does not matter. */
    int halfMin(int middleMin) {
        if (!matters) {
            return Integer.MAX_VALUE;
        }
        int node = middleMin / NightClock.NODE_MIN;
        return middleMin % NightClock.NODE_MIN == 0 ? atNode(node) : Math.min(atNode(node), atNode(node + 1));
    }

    private int atNode(int node) {
        if (known[node] == 0) {
            int middleMin = node * NightClock.NODE_MIN;
            Framing framing = aiming.framing(middleMin);
            int halfMin = 0;
            while (halfMin <= wish.longest().toMinutes() / 2
                    && outside(framing, middleMin - halfMin - NightClock.NODE_MIN)
                    && outside(framing, middleMin + halfMin + NightClock.NODE_MIN)) {
                halfMin += NightClock.NODE_MIN;
            }
            known[node] = 1 + halfMin;
        }
        return known[node] - 1;
    }

    private boolean outside(Framing framing, int minute) {
        return FrameEdge.moonOutsideDeg(sky, framing, minute) >= 0;
    }
}
