package gloam.planner;

import gloam.trail.Framing;
import gloam.trail.Track;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How long the trail at the frame's centre gets with the time the shutter is open; taken once for a framing.
 */
final class TrailGrowth {

    /** Straight from step to step: a thousandth short. */
    private static final Duration STEP = Duration.ofMinutes(20);

    private final int halfMin;
    private final double[] fromMiddleS;
    private final double[] drawnMm;

    private TrailGrowth(int halfMin, double[] fromMiddleS, double[] drawnMm) {
        this.halfMin = halfMin;
        this.fromMiddleS = fromMiddleS;
        this.drawnMm = drawnMm;
    }

    /**
     * The growth of the trail of a target that stands at the frame's centre at a minute of the night.
     *
     * @param halfMin how far from there on either side it is followed, whole steps
     */
    static TrailGrowth of(NightSky sky, Framing framing, Aiming aiming, int middleMin, int halfMin) {
        Interval longest = sky.clock().span(middleMin - halfMin, middleMin + halfMin);
        Track track = sky.trails().track(framing, aiming.centre(framing, longest), longest);
        Instant middle = longest.middle();
        List<Interval> visits = track.visits(longest);
        Interval visit = visits.stream().filter(one -> one.contains(middle)).findFirst()
                .orElse(visits.get(0));
        List<Instant> at = new ArrayList<>(List.of(visit.start()));
        for (Instant next = longest.start(); next.isBefore(visit.endExclusive()); next = next.plus(STEP)) {
            if (next.isAfter(visit.start())) {
                at.add(next);
            }
        }
        at.add(visit.endExclusive());
        double[] fromMiddleS = new double[at.size()];
        double[] drawnMm = new double[at.size()];
        Framing.Point before = track.at(visit.start()).orElseThrow();
        for (int i = 0; i < fromMiddleS.length; i++) {
            Framing.Point point = track.at(at.get(i)).orElseThrow();
            fromMiddleS[i] = Duration.between(middle, at.get(i)).toMillis() / 1000.0;
            drawnMm[i] = i == 0 ? 0 : drawnMm[i - 1] + point.distanceMm(before);
            before = point;
        }
        return new TrailGrowth(halfMin, fromMiddleS, drawnMm);
    }

    /** How long an exposure it tells of, in minutes. */
    int longestMin() {
        return 2 * halfMin;
    }

    /**
     * Length on the sheet in mm after that many minutes, those before and after the middle equal; cut by the
     * frame.
     */
    double lengthMm(int durationMin) {
        return drawnMm(durationMin * 30.0) - drawnMm(durationMin * -30.0);
    }

    private double drawnMm(double atS) {
        int after = 1;
        while (after < fromMiddleS.length - 1 && fromMiddleS[after] < atS) {
            after++;
        }
        double share = (atS - fromMiddleS[after - 1]) / (fromMiddleS[after] - fromMiddleS[after - 1]);
        return drawnMm[after - 1] + Math.max(0, Math.min(1, share)) * (drawnMm[after] - drawnMm[after - 1]);
    }
}
