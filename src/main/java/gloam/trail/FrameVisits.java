package gloam.trail;

import gloam.ephemeris.EarthTurn;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Finds when a path lies inside the frame, and the edges it crosses. */
final class FrameVisits {

    /**
     * In a step the sky turns by that share of the frame's shorter side: short visits are at a corner, and
     * turn once.
     */
    private static final double SHARE = 1.0 / 16;
    /** The sky turns by 0.5° and by 2° in these times. */
    private static final double LEAST_STEP_S = 120;
    private static final double MOST_STEP_S = 480;

    private final FrameAxes axes;
    private final SkyPath path;
    private final double stepS;

    FrameVisits(FrameAxes axes, SkyPath path) {
        this.axes = axes;
        this.path = path;
        this.stepS = Math.max(LEAST_STEP_S,
                Math.min(MOST_STEP_S, SHARE * axes.shorterSideRad() / EarthTurn.RAD_S));
    }

    /** The visits between two moments, in order. */
    List<Visit> between(double fromS, double toS) {
        Instant from = path.instant(fromS);
        Instant to = path.instant(toS);
        if (!from.isBefore(to)) {
            return List.of();
        }
        return FunctionOfTime.ofSeconds(new Interval(from, to), stepS, s -> axes.inside(path.at(fromS + s)))
                .crossings(0).above().stream().map(span -> visit(span, from, to)).toList();
    }

    private Visit visit(Interval span, Instant from, Instant to) {
        double fromS = path.since(span.start());
        double toS = path.since(span.endExclusive());
        return new Visit(fromS, toS, span.start().equals(from) ? Optional.empty() : crossed(fromS),
                span.endExclusive().equals(to) ? Optional.empty() : crossed(toS));
    }

    private Optional<Trail.Edge> crossed(double atS) {
        return axes.crossed(path.at(atS));
    }

    /**
     * A time inside the frame, in seconds from the start of the path.
     *
     * @param fromS  its start
     * @param toS    its end
     * @param enters the edge crossed at the start, empty where the search starts inside and where the lens
     *               begins to see
     * @param leaves the edge crossed at the end, empty where the search ends inside and where the lens ceases
     *               to see
     */
    record Visit(double fromS, double toS, Optional<Trail.Edge> enters, Optional<Trail.Edge> leaves) {

        double lastsS() {
            return toS - fromS;
        }
    }
}
