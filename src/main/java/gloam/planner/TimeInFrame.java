package gloam.planner;

import gloam.ephemeris.Target;
import java.util.BitSet;
import java.util.List;

/** For which part of an exposure all bodies and stars that must record stand in the frame. */
final class TimeInFrame {

    private final int[] minutesUpTo;

    /** That of a wish; all of the time where the camera follows something or none must record. */
    TimeInFrame(Wish wish, NightSky sky, Aiming aiming, Moments moments) {
        BitSet there = moments.throughout();
        for (Target target : aiming.fixed() ? wish.mustRecord() : List.<Target>of()) {
            there = sky.clock().where(there,
                    minute -> FrameEdge.insideDeg(sky, aiming.framing(minute), target, minute));
        }
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
