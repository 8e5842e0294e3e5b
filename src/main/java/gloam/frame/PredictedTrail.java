package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A trail as it is predicted for one opening of the shutter.
 *
 * @param opening  number of the opening, from 0 on
 * @param open     directions along it while the shutter was open, in order
 * @param begin    directions around its beginning, from as long before as to as long after, evenly in time;
 *                 none where land stands before it
 * @param end      the same around its end
 * @param everyDeg the sky's turn from one of those to the next
 */
public record PredictedTrail(int opening, List<Vector3D> open, List<Vector3D> begin, List<Vector3D> end,
        double everyDeg) {

    private static final double OPEN_EVERY_S = 240;
    private static final int LEAST_OPEN = 8;
    private static final double AROUND_S = 600;
    private static final double AROUND_SHARE = 0.45;
    private static final int AROUND_POINTS = 80;

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
                    points(ephemeris, site, target, open.start(), open.seconds() / steps, 0, steps),
                    whole(points(ephemeris, site, target, open.start(), every, 0.5 - AROUND_POINTS / 2.0,
                    AROUND_POINTS - 1)), whole(points(ephemeris, site, target, open.endExclusive(), every,
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

    private static List<Vector3D> whole(List<Vector3D> points) {
        return points.size() < AROUND_POINTS ? List.of() : points;
    }

    /** Directions from a step on, those above the skyline. */
    private static List<Vector3D> points(Ephemeris ephemeris, Site site, Target target, Instant from,
            double everyS, double first, int steps) {
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            Instant at = from.plusNanos(Math.round((first + i) * everyS * 1e9));
            Optional.of(ephemeris.position(target, site, at).apparentDirection()).filter(seen ->
                    seen.altitude().compareTo(site.skyline().altitudeAt(seen.azimuth())) > 0)
                    .map(Direction::vector).ifPresent(points::add);
        }
        return points;
    }
}
