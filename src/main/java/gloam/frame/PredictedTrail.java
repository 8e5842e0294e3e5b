package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A trail as it is predicted for one opening of the shutter.
 *
 * @param opening  number of the opening, from 0 on
 * @param open     moments of it while the shutter was open, in order
 * @param begin    directions around its beginning, from as long before as to as long after, evenly in time;
 *                 none where land stands before it
 * @param end      the same around its end
 * @param everyDeg the sky's turn from one of those to the next
 */
public record PredictedTrail(int opening, List<Moment> open, List<Vector3D> begin, List<Vector3D> end,
        double everyDeg) {

    /**
     * A moment of a trail.
     *
     * @param at        when
     * @param direction where it is seen then
     */
    public record Moment(Instant at, Vector3D direction) {

        private Moment towards(Moment next, double share) {
            return new Moment(at.plusMillis(Math.round(share * Duration.between(at, next.at).toMillis())),
                    direction.scalarMultiply(1 - share).add(next.direction.scalarMultiply(share))
                    .normalize());
        }
    }

    private static final double OPEN_EVERY_S = 240;
    private static final int LEAST_OPEN = 8;
    private static final double AROUND_S = 600;
    private static final double AROUND_SHARE = 0.45;
    private static final int AROUND_POINTS = 80;
    private static final int FINER = 4;

    /** Copies the lists. */
    public PredictedTrail {
        open = List.copyOf(open);
        begin = List.copyOf(begin);
        end = List.copyOf(end);
    }

    /** The trails of a target in all openings, in order of time and without overlaps. */
    public static List<PredictedTrail> of(Ephemeris ephemeris, Site site, Target target,
            List<Interval> openings) {
        List<PredictedTrail> trails = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            Interval open = openings.get(i);
            double around = aroundS(openings, i);
            double every = 2 * around / AROUND_POINTS;
            int steps = (int) Math.max(LEAST_OPEN, Math.ceil(open.seconds() / OPEN_EVERY_S));
            trails.add(new PredictedTrail(i,
                    moments(ephemeris, site, target, open.start(), open.seconds() / steps, 0, steps),
                    whole(moments(ephemeris, site, target, open.start(), every, 0.5 - AROUND_POINTS / 2.0,
                    AROUND_POINTS - 1)), whole(moments(ephemeris, site, target, open.endExclusive(), every,
                    0.5 - AROUND_POINTS / 2.0, AROUND_POINTS - 1)), EarthTurn.degrees(every)));
        }
        return trails;
    }

    /** How far about an end it is looked at, so that no other end comes near. */
    private static double aroundS(List<Interval> openings, int number) {
        double least = Math.min(AROUND_S, AROUND_SHARE * openings.get(number).seconds());
        for (int next = Math.max(1, number); next <= number + 1 && next < openings.size(); next++) {
            least = Math.min(least, AROUND_SHARE * new Interval(openings.get(next - 1).endExclusive(),
                    openings.get(next).start()).seconds());
        }
        return least;
    }

    private static List<Vector3D> whole(List<Moment> around) {
        return around.size() < AROUND_POINTS ? List.of() : around.stream().map(Moment::direction).toList();
    }

    /** Moments from a step on, those above the skyline. */
    private static List<Moment> moments(Ephemeris ephemeris, Site site, Target target, Instant from,
            double everyS, double first, int steps) {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            Instant at = from.plusNanos(Math.round((first + i) * everyS * 1e9));
            Optional.of(ephemeris.position(target, site, at).apparentDirection()).filter(seen ->
                    seen.altitude().compareTo(site.skyline().altitudeAt(seen.azimuth())) > 0)
                    .ifPresent(seen -> moments.add(new Moment(at, seen.vector())));
        }
        return moments;
    }

    /** The directions of its moments. */
    List<Vector3D> directions() {
        return open.stream().map(Moment::direction).toList();
    }

    /** What of it was drawn before some moment; its end only where that is earlier. */
    PredictedTrail before(Instant cut) {
        List<Moment> early = open.stream().filter(moment -> moment.at.isBefore(cut)).toList();
        return new PredictedTrail(opening, early, early.isEmpty() ? List.of() : begin,
                early.size() < open.size() ? List.of() : end, everyDeg);
    }

    /** What of it was drawn from some moment on; its beginning only where that is later. */
    PredictedTrail from(Instant cut) {
        List<Moment> late = open.stream().filter(moment -> !moment.at.isBefore(cut)).toList();
        return new PredictedTrail(opening, late, late.size() < open.size() ? List.of() : begin,
                late.isEmpty() ? List.of() : end, everyDeg);
    }

    /** The same with moments between its own, straight on the sky. */
    PredictedTrail finer() {
        List<Moment> finer = IntStream.range(0, Math.max(0, FINER * (open.size() - 1))).mapToObj(i ->
                open.get(i / FINER).towards(open.get(i / FINER + 1), (double) (i % FINER) / FINER)).toList();
        return new PredictedTrail(opening, finer, begin, end, everyDeg);
    }
}
