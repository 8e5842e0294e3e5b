package gloam.trail;

import gloam.ephemeris.Target;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The way of a target over a camera's sheet during a span: asked of the ephemeris once, cheap for any
 * exposure in it.
 *
 * <p>Places run on beside the frame as far as the lens sees; lengths and trails end at the frame's edge.
 */
public final class Track {

    private static final double MOTION_STEP_S = 1;
    private static final double LENGTH_WITHIN_S = 1e-4;
    private static final int SOLVER_ORDER = 5;
    private static final int MOST_EVALUATIONS = 1000;
    private static final double SAME_MOMENT_S = 1e-3;

    private final Target target;
    private final FrameAxes axes;
    private final SkyPath path;

    Track(Target target, FrameAxes axes, SkyPath path) {
        this.target = target;
        this.axes = axes;
        this.path = path;
    }

    /**
     * The span for which the track is known; the questions below are for instants in it, its end included.
     */
    public Interval span() {
        return path.span();
    }

    /** The way of the target over the sky. */
    SkyPath path() {
        return path;
    }

    /** Where the image stands, on the frame or beside it; empty where the lens does not see. */
    public Optional<Framing.Point> at(Instant at) {
        return axes.toFrame(path.at(path.since(at)));
    }

    /** How the image moves; empty where the lens does not see. */
    public Optional<Motion> motion(Instant at) {
        return motion(axes, path, path.since(at));
    }

    /** Length of what is drawn on the frame during an exposure, in mm. */
    public double lengthMm(Interval exposure) {
        double fromS = path.since(exposure.start());
        double toS = path.since(exposure.endExclusive());
        return drawnMm(between(fromS, toS), fromS, toS);
    }

    /** When the image is on the frame during a span, in order. */
    public List<Interval> visits(Interval during) {
        return between(during).stream()
                .map(visit -> new Interval(path.instant(visit.fromS()), path.instant(visit.toS()))).toList();
    }

    /**
     * How long an exposure around an instant lasts until so much is drawn on the frame; empty when it is not
     * in the track's span.
     *
     * @param middle   mid exposure
     * @param lengthMm wanted length, positive
     */
    public Optional<Duration> lasts(Instant middle, double lengthMm) {
        double middleS = path.since(middle);
        double mostS = Math.min(middleS, path.span().seconds() - middleS);
        List<FrameVisits.Visit> visits = between(middleS - mostS, middleS + mostS);
        return solve(mostS, halfS -> drawnMm(visits, middleS - halfS, middleS + halfS), lengthMm)
                .map(halfS -> Duration.ofNanos(Math.round(2e9 * halfS)));
    }

    /**
     * When to close the shutter for that length of trail on the frame; empty when it does not get this long
     * in the track's span.
     *
     * @param open     when it is opened
     * @param lengthMm wanted length, positive
     */
    public Optional<Instant> closes(Instant open, double lengthMm) {
        double openS = path.since(open);
        double mostS = path.span().seconds() - openS;
        List<FrameVisits.Visit> visits = between(openS, path.span().seconds());
        return solve(mostS, lastsS -> drawnMm(visits, openS, openS + lastsS), lengthMm)
                .map(lastsS -> path.instant(openS + lastsS));
    }

    /** The trail of an exposure of one opening. */
    public Optional<Trail> trail(Interval exposure, Duration every) {
        return trail(List.of(exposure), every);
    }

    /**
     * The trail of an exposure of several openings, cut at the frame's edge; empty when the target never
     * enters.
     *
     * @param openings in order of time, without overlaps, inside the span
     * @param every    spacing of the trail's points, counted from each opening, positive
     */
    public Optional<Trail> trail(List<Interval> openings, Duration every) {
        List<Trail.Stretch> stretches = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        List<FrameVisits.Visit> visits = new ArrayList<>();
        for (Interval opening : openings) {
            for (FrameVisits.Visit visit : between(opening)) {
                visits.add(visit);
                stretches.add(stretch(visit, path.since(opening.start()), seconds(every)));
                curves.add(curve(visit.fromS(), visit.toS()));
            }
        }
        double arcRad = curves.stream().mapToDouble(curve -> curve.arc().radians()).sum();
        return middle(visits, openings)
                .map(middle -> new Trail(new Passage(target, middle.point, middle.motion.speedMmS()),
                stretches, curves.stream().mapToDouble(Curve::lengthMm).sum(), Angle.ofRadians(arcRad),
                middle.motion.direction(), curves.stream().mapToDouble(Curve::sagittaMm).max()
                .orElseThrow()));
    }

    /** The passage of the target over the frame in the same openings, without drawing it. */
    public Optional<Passage> passage(List<Interval> openings) {
        return middle(openings.stream().flatMap(opening -> between(opening).stream()).toList(), openings)
                .map(middle -> new Passage(target, middle.point, middle.motion.speedMmS()));
    }

    /**
     * Half-way through the longest visit, and the motion at the moment on the frame nearest to mid exposure.
     */
    private Optional<Middle> middle(List<FrameVisits.Visit> visits, List<Interval> openings) {
        double wantedS = path.since(Interval.span(openings).middle());
        return visits.stream().max(Comparator.comparingDouble(FrameVisits.Visit::lastsS))
                .flatMap(longest -> motion(axes, path, nearest(visits, wantedS))
                        .map(motion -> new Middle(point((longest.fromS() + longest.toS()) / 2), motion)));
    }

    private record Middle(Trail.Point point, Motion motion) {
    }

    private List<FrameVisits.Visit> between(Interval during) {
        return between(path.since(during.start()), path.since(during.endExclusive()));
    }

    private List<FrameVisits.Visit> between(double fromS, double toS) {
        return new FrameVisits(axes, path).between(fromS, toS);
    }

    /** Length drawn during a part of the time that some visits were looked for in. */
    private double drawnMm(List<FrameVisits.Visit> visits, double fromS, double toS) {
        return visits.stream().filter(visit -> visit.fromS() < toS && visit.toS() > fromS)
                .mapToDouble(visit -> curve(Math.max(visit.fromS(), fromS), Math.min(visit.toS(), toS))
                .lengthMm())
                .sum();
    }

    private Trail.Stretch stretch(FrameVisits.Visit visit, double openS, double everyS) {
        List<Trail.Point> points = new ArrayList<>(List.of(point(visit.fromS())));
        long first = (long) Math.floor((visit.fromS() + SAME_MOMENT_S - openS) / everyS) + 1;
        for (long i = first; openS + i * everyS < visit.toS() - SAME_MOMENT_S; i++) {
            points.add(point(openS + i * everyS));
        }
        points.add(point(visit.toS()));
        Interval span = new Interval(path.instant(visit.fromS()), path.instant(visit.toS()));
        return new Trail.Stretch(span, points, visit.enters(), visit.leaves());
    }

    private Trail.Point point(double sinceS) {
        Framing.Point place = axes.toFrame(path.at(sinceS)).orElseThrow();
        return new Trail.Point(path.instant(sinceS), place.xMm(), place.yMm());
    }

    /** The moment inside some visits nearest to another. */
    private static double nearest(List<FrameVisits.Visit> visits, double wantedS) {
        return visits.stream().map(visit -> clamped(wantedS, visit.fromS(), visit.toS()))
                .min(Comparator.comparingDouble(atS -> Math.abs(atS - wantedS))).orElseThrow();
    }

    /** The motion over a second before and one after, or what of them the path has and the lens sees. */
    static Optional<Motion> motion(FrameAxes axes, SkyPath path, double sinceS) {
        double endS = path.span().seconds();
        double fromS = seen(axes, path, clamped(sinceS - MOTION_STEP_S, 0, endS), sinceS);
        double toS = seen(axes, path, clamped(sinceS + MOTION_STEP_S, 0, endS), sinceS);
        return toS <= fromS ? Optional.empty() : axes.toFrame(path.at(fromS)).flatMap(from ->
                axes.toFrame(path.at(toS)).map(to -> Motion.of(from, to, toS - fromS)));
    }

    private static double seen(FrameAxes axes, SkyPath path, double wantedS, double otherwiseS) {
        return axes.toFrame(path.at(wantedS)).isPresent() ? wantedS : otherwiseS;
    }

    private Curve curve(double fromS, double toS) {
        return Curve.of(axes, path, fromS, toS);
    }

    /** When a length that grows from zero, or rests, reaches a value. */
    private static Optional<Double> solve(double mostS, DoubleUnaryOperator growingMm, double wantedMm) {
        if (mostS <= 0 || growingMm.applyAsDouble(mostS) < wantedMm) {
            return Optional.empty();
        }
        return Optional.of(new BracketingNthOrderBrentSolver(LENGTH_WITHIN_S, SOLVER_ORDER)
                .solve(MOST_EVALUATIONS,
                atS -> atS == 0 ? -wantedMm : growingMm.applyAsDouble(atS) - wantedMm, 0, mostS,
                AllowedSolution.ABOVE_SIDE));
    }

    private static double clamped(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() * 1e-9;
    }
}
