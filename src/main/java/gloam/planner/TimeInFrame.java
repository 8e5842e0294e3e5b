package gloam.planner;

import java.util.BitSet;

/** For which part of an exposure the body that must record stands in the frame. */
final class TimeInFrame {

    private final int[] minutesUpTo;

    /** That of a wish; all of the time where the camera follows the body or none must record. */
    TimeInFrame(Wish wish, NightSky sky, Aiming aiming, Moments moments) {
        BitSet there = wish.records() instanceof Wish.Records.One one && aiming.fixed()
                ? sky.clock().where(moments.throughout(),
                        minute -> FrameEdge.insideDeg(sky, aiming.framing(minute), one.body(), minute))
                : moments.throughout();
        this.minutesUpTo = new int[sky.clock().minutes() + 2];
        for (int minute = 0; minute < minutesUpTo.length - 1; minute++) {
            minutesUpTo[minute + 1] = minutesUpTo[minute] + (there.get(minute) ? 1 : 0);
        }
    }

    /** The share of the exposure, 0 to 1. */
    double share(int openMin, int closeMin) {
        return (minutesUpTo[closeMin] - minutesUpTo[openMin]) / (double) (closeMin - openMin);
    }
}
