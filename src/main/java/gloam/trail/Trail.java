package gloam.trail;

import gloam.ephemeris.Target;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a target draws on the frame while the shutter is open.
 *
 * @param passage   what draws, and how it passes
 * @param stretches the parts inside the frame in order of time, at least one: one per opening and visit
 * @param lengthMm  length drawn on the sheet, all stretches together, in mm
 * @param arc       length drawn as an angle on the sky
 * @param direction of the motion, from +x towards +y, 0 (included) to 360° (left out), at mid exposure,
 *                  or at the moment in the frame nearest to it
 * @param sagittaMm greatest distance from the chord of its stretch in mm, never negative
 */
public record Trail(Passage passage, List<Stretch> stretches, double lengthMm, Angle arc, Angle direction,
                    double sagittaMm) {

    /** Refuses a trail of nothing and numbers that are not finite. */
    public Trail {
        Finite.check(lengthMm, "length in mm");
        Finite.check(sagittaMm, "sagitta in mm");
        stretches = List.copyOf(stretches);
        if (stretches.isEmpty()) {
            throw new IllegalArgumentException("a trail has a stretch");
        }
    }

    /** What draws. */
    public Target target() {
        return passage.target();
    }

    /** All points in order of time; each stretch gives both its ends. */
    public List<Point> points() {
        return stretches.stream().flatMap(stretch -> stretch.points().stream()).toList();
    }

    /** Whether the target goes out over an edge of the frame while the shutter is open. */
    public boolean leavesFrame() {
        return stretches.stream().anyMatch(stretch -> stretch.leaves().isPresent());
    }

    /** The undrawn lengths between one stretch and the next, straight across, in mm. */
    public List<Double> gapsMm() {
        return IntStream.range(1, stretches.size())
                .mapToObj(i -> stretches.get(i - 1).end().distanceMm(stretches.get(i).start()))
                .toList();
    }

    /**
     * One unbroken part of a trail, inside the frame.
     *
     * @param span   when it is drawn; the end is the instant of closing or leaving
     * @param points along it, both ends included, in order of time
     * @param enters the edge it comes in over, empty when it is in the frame at opening and where it comes in
     *               over the rim of a fisheye's image circle
     * @param leaves the edge it goes out over, empty when it is in the frame at closing and where it goes out
     *               over that rim
     */
    public record Stretch(Interval span, List<Point> points, Optional<Edge> enters, Optional<Edge> leaves) {

        /** Keeps its own list of points. */
        public Stretch {
            points = List.copyOf(points);
        }

        /** Its first point. */
        public Point start() {
            return points.get(0);
        }

        /** Its last point. */
        public Point end() {
            return points.get(points.size() - 1);
        }
    }

    /**
     * Where the image stands at an instant.
     *
     * @param at  when
     * @param xMm to the right as seen in the scene, from the frame's centre
     * @param yMm up as seen in the scene, from the frame's centre
     */
    public record Point(Instant at, double xMm, double yMm) {

        /** Refuses what is not finite. */
        public Point {
            Finite.check(xMm, "x in mm");
            Finite.check(yMm, "y in mm");
        }

        /** Straight distance to another point in mm. */
        public double distanceMm(Point other) {
            return Math.hypot(other.xMm - xMm, other.yMm - yMm);
        }
    }

    /** A side of the frame, as seen in the scene. */
    public enum Edge {
        LEFT, RIGHT, TOP, BOTTOM;

        boolean alongX() {
            return this == LEFT || this == RIGHT;
        }

        int sign() {
            return this == RIGHT || this == TOP ? 1 : -1;
        }
    }
}
