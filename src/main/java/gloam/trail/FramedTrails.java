package gloam.trail;

import gloam.ephemeris.Target;
import gloam.gear.Frame;
import gloam.gear.Skyline;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What runs over a frame above the skyline while the shutter is open. */
public final class FramedTrails {

    /** How much lower than at nine points of its rim a frame may look, and for what air and parallax do. */
    private static final double MARGIN_DEG = 5;

    private final TrailEstimator estimator;
    private final Framing framing;
    private final List<Interval> openings;
    private final Interval whole;
    private final boolean skylineMayShow;
    private final Predicate<Target> mayCross;

    /**
     * The trails over a frame.
     *
     * @param skyline  the site's
     * @param openings in order of time, at least one, without overlaps
     */
    public FramedTrails(TrailEstimator estimator, Skyline skyline, Framing framing, List<Interval> openings) {
        this.estimator = estimator;
        this.framing = framing;
        this.openings = List.copyOf(openings);
        this.whole = Interval.span(openings);
        this.mayCross = estimator.mayCross(framing, whole);
        this.skylineMayShow = lowestDeg(framing)
                < MARGIN_DEG + skyline.points().stream().mapToDouble(Skyline.Point::altitudeDeg).max()
                .orElse(0);
    }

    private static double lowestDeg(Framing framing) {
        Frame frame = framing.camera().frame();
        return IntStream.range(0, 9).mapToObj(i -> framing.toSky((i % 3 - 1) * frame.widthMm() / 2,
                (i / 3 - 1) * frame.heightMm() / 2)).mapToDouble(seen -> seen.altitude().degrees()).min()
                .orElse(0);
    }

    /** The trail of a target as far as it runs above the skyline, with a point every so often. */
    public Optional<Trail> of(Target target, Duration every) {
        return shown(target).flatMap(shown -> shown.track.trail(shown.openings, every));
    }

    /** How a target passes, as far as it runs above the skyline. */
    public Optional<Passage> passage(Target target) {
        return shown(target).flatMap(shown -> shown.track.passage(shown.openings));
    }

    /** A track, and when the shutter is open and no land stands before it. */
    private record Shown(Track track, List<Interval> openings) {
    }

    private Optional<Shown> shown(Target target) {
        if (!mayCross.test(target)) {
            return Optional.empty();
        }
        Track track = estimator.track(framing, target, whole);
        if (!skylineMayShow) {
            return Optional.of(new Shown(track, openings));
        }
        List<Interval> clear = track.visits(whole).isEmpty() ? List.of()
                : Interval.intersect(openings, estimator.clearOfSkyline(track));
        return Optional.of(new Shown(track, clear)).filter(shown -> !clear.isEmpty());
    }
}
