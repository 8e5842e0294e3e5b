package gloam.planner;

import gloam.ephemeris.Target;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * How long the trail at the frame's centre gets with the time the shutter is open; taken once for a framing.
 */
final class TrailGrowth {

    /** Straight from step to step: a thousandth short. */
    private static final Duration STEP = Duration.ofMinutes(20);

    private final double[] fromMiddleS;
    private final double[] drawnMm;

    private TrailGrowth(double[] fromMiddleS, double[] drawnMm) {
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
        Target centre = aiming.centre(framing, longest);
        Instant middle = longest.middle();
        Trail trail = sky.trails().trail(framing, centre, longest, STEP).orElseThrow();
        List<Trail.Point> points = trail.stretches().stream()
                .filter(stretch -> !stretch.span().start().isAfter(middle) && stretch.span().endExclusive()
                .isAfter(middle))
                .findFirst().orElseGet(() -> trail.stretches().get(0)).points();
        double[] fromMiddleS = new double[points.size()];
        double[] drawnMm = new double[points.size()];
        for (int i = 0; i < fromMiddleS.length; i++) {
            fromMiddleS[i] = Duration.between(middle, points.get(i).at()).toMillis() / 1000.0;
            drawnMm[i] = i == 0 ? 0 : drawnMm[i - 1] + points.get(i - 1).distanceMm(points.get(i));
        }
        return new TrailGrowth(fromMiddleS, drawnMm);
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
