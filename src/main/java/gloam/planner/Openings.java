package gloam.planner;

import gloam.trail.Framing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The openings that the conditions of a wish leave on a night, and the durations of each that they leave. */
final class Openings {

    private final Wish wish;
    private final NightSky sky;
    private final Aiming aiming;
    private final Moments moments;

    /** The openings of a wish at good moments. */
    Openings(Wish wish, NightSky sky, Aiming aiming, Moments moments) {
        this.wish = wish;
        this.sky = sky;
        this.aiming = aiming;
        this.moments = moments;
    }

    /**
     * The minutes of the openings in a run, five minutes apart and, where the camera does not follow, at its
     * start.
     */
    List<Integer> anchors(MinuteRun run) {
        BitSet good = moments.at(aiming.fixed() ? Condition.When.AT_OPENING : Condition.When.AT_MIDDLE);
        List<Integer> anchors = new ArrayList<>();
        int first = good.nextSetBit(run.first());
        for (int minute = first; minute >= 0 && minute < run.last(); minute = good.nextSetBit(minute + 1)) {
            if (minute % NightClock.NODE_MIN == 0 || minute == first && aiming.fixed()) {
                anchors.add(minute);
            }
        }
        return anchors;
    }

    /** The exposures that share a minute of a run. */
    Opening at(int anchorMin, MinuteRun run) {
        if (aiming.fixed()) {
            return new Opening(anchorMin, false,
                    Math.min(DurationLimits.longestMin(wish), run.last() - anchorMin));
        }
        int halfMin = Math.min(DurationLimits.longestMin(wish) / 2,
                Math.min(anchorMin - run.first(), run.last() - anchorMin));
        Framing framing = aiming.framing(anchorMin);
        int clearMin = 0;
        while (clearMin < halfMin && moonStaysOutside(framing, anchorMin, clearMin + NightClock.NODE_MIN)) {
            clearMin += NightClock.NODE_MIN;
        }
        return new Opening(anchorMin, true, 2 * Math.min(halfMin, clearMin));
    }

    private boolean moonStaysOutside(Framing framing, int middleMin, int halfMin) {
        return wish.letsMoonIn()
                || FrameEdge.moonOutsideDeg(sky, framing, middleMin - halfMin) >= 0
                && FrameEdge.moonOutsideDeg(sky, framing, middleMin + halfMin) >= 0;
    }

    /** The durations that an opening leaves of those wanted. */
    Bounds left(Opening opening) {
        int step = opening.stepMin();
        Bounds bounds = new Bounds(DurationLimits.shortestMin(wish), DurationLimits.longestMin(wish),
                DurationLimit.EXPOSURE, DurationLimit.EXPOSURE)
                .inStepsOf(step).atMost(opening.mostMin(), DurationLimit.SPAN);
        if (bounds.empty()) {
            return bounds;
        }
        for (Condition.When when : Condition.When.values()) {
            BitSet good = moments.at(when);
            if (good != moments.throughout()) {
                bounds = bounds.firstRunOf(min -> good.get(opening.at(when, min)), step,
                        DurationLimit.of(when));
            }
        }
        return bounds;
    }
}
