package gloam.answer;

import gloam.answer.Trails.Edge;
import gloam.answer.Trails.EdgePoint;
import gloam.answer.Trails.SkylinePoint;
import gloam.ephemeris.Direction;
import gloam.gear.Frame;
import gloam.gear.Skyline;
import gloam.trail.Framing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Where round directions and the skyline fall on a frame. */
final class FrameMarks {

    private static final double[] STEPS_DEG = {0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 45, 90};
    private static final int MOST_INTERVALS = 6;
    private static final int SAMPLES = 200;
    private static final double SKYLINE_STEP_DEG = 0.5;
    /** How far beside the frame the skyline is followed, in half diagonals. */
    private static final double BESIDE = 1.5;

    private final Framing framing;
    private final Frame frame;

    FrameMarks(Framing framing) {
        this.framing = framing;
        this.frame = framing.camera().frame();
    }

    /** Round azimuths on the lower edge and round altitudes on the left one. */
    List<EdgePoint> edges() {
        List<EdgePoint> marks = new ArrayList<>(marks(Edge.BOTTOM));
        marks.addAll(marks(Edge.LEFT));
        return marks;
    }

    private List<EdgePoint> marks(Edge edge) {
        List<Framing.Point> points = IntStream.rangeClosed(0, SAMPLES)
                .mapToObj(i -> point(edge, (double) i / SAMPLES)).filter(framing::images).toList();
        double[] degrees = new double[points.size()];
        for (int i = 0; i < degrees.length; i++) {
            degrees[i] = degrees(edge, points.get(i), i == 0 ? 0 : degrees[i - 1]);
        }
        double range = DoubleStream.of(degrees).max().orElse(0) - DoubleStream.of(degrees).min().orElse(0);
        double stepDeg = DoubleStream.of(STEPS_DEG).filter(step -> range <= MOST_INTERVALS * step).findFirst()
                .orElse(STEPS_DEG[STEPS_DEG.length - 1]);
        List<EdgePoint> marks = new ArrayList<>();
        for (int i = 1; i < degrees.length; i++) {
            double roundDeg = stepDeg * Math.floor(Math.max(degrees[i - 1], degrees[i]) / stepDeg);
            if (roundDeg > Math.min(degrees[i - 1], degrees[i])) {
                double share = (roundDeg - degrees[i - 1]) / (degrees[i] - degrees[i - 1]);
                Framing.Point at = new Framing.Point(
                        points.get(i - 1).xMm() + share * (points.get(i).xMm() - points.get(i - 1).xMm()),
                        points.get(i - 1).yMm() + share * (points.get(i).yMm() - points.get(i - 1).yMm()));
                Direction seen = framing.toSky(at.xMm(), at.yMm());
                marks.add(new EdgePoint(edge, at, edge == Edge.BOTTOM
                        ? Direction.ofDegrees((roundDeg % 360 + 360) % 360, seen.altitude().degrees())
                        : Direction.ofDegrees(seen.azimuth().positive().degrees(), roundDeg)));
            }
        }
        return marks;
    }

    private Framing.Point point(Edge edge, double share) {
        return edge == Edge.BOTTOM
                ? new Framing.Point((share - 0.5) * frame.widthMm(), -frame.heightMm() / 2)
                : new Framing.Point(-frame.widthMm() / 2, (share - 0.5) * frame.heightMm());
    }

    /** Altitude, or azimuth without a jump from the one beside it. */
    private double degrees(Edge edge, Framing.Point point, double besideDeg) {
        Direction seen = framing.toSky(point.xMm(), point.yMm());
        return edge == Edge.LEFT ? seen.altitude().degrees()
                : besideDeg + Math.IEEEremainder(seen.azimuth().degrees() - besideDeg, 360);
    }

    /** The skyline from left to right as far as it runs on the frame or near it; empty where it does not. */
    List<SkylinePoint> skyline(Skyline skyline) {
        int steps = (int) (90 / SKYLINE_STEP_DEG);
        List<SkylinePoint> near = IntStream.rangeClosed(-steps, steps).mapToObj(step ->
                framing.aim().azimuth().degrees() + step * SKYLINE_STEP_DEG).map(azimuthDeg -> {
            Direction level = Direction.ofDegrees((azimuthDeg % 360 + 360) % 360, 0);
            Direction seen = new Direction(level.azimuth(), skyline.altitudeAt(level.azimuth()));
            return framing.toFrame(seen).map(point -> new SkylinePoint(point, seen));
        }).flatMap(Optional::stream).filter(at -> Math.hypot(at.point().xMm(), at.point().yMm())
                < BESIDE * frame.halfDiagonalMm()).toList();
        return near.stream().anyMatch(at -> frame.contains(at.point().xMm(), at.point().yMm())) ? near
                : List.of();
    }
}
