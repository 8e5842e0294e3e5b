package gloam.trail;

import gloam.units.Angle;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A piece of a path that the lens sees, as a fine polyline on the sheet.
 *
 * <p>A chord of two minutes, 0.5° of the sky, falls short of its arc by 3e-6 of the length; as that error
 * goes with the square of the step, lengths with the whole and with the doubled step show it, and it is taken
 * out (Richardson).
 *
 * @param points on the sheet, in order of time, an odd number
 * @param arc    its length on the sky
 */
record Curve(List<Framing.Point> points, Angle arc) {

    private static final double CHORD_S = 120;
    private static final int LEAST_CHORDS = 8;
    private static final double CLOSED_MM = 1e-9;

    static Curve of(FrameAxes axes, SkyPath path, double fromS, double toS) {
        int chords = Math.max(LEAST_CHORDS, 2 * (int) Math.ceil((toS - fromS) / CHORD_S / 2));
        List<Vector3D> sky = IntStream.rangeClosed(0, chords)
                .mapToObj(i -> path.at(i == chords ? toS : fromS + (toS - fromS) * i / chords)).toList();
        List<Framing.Point> points = sky.stream().map(at -> axes.toFrame(at).orElseThrow()).toList();
        return new Curve(points, Angle.ofRadians(length(sky, Vector3D::angle)));
    }

    /** Its length on the sheet in mm. */
    double lengthMm() {
        return length(points, Framing.Point::distanceMm);
    }

    private static <P> double length(List<P> line, ToDoubleBiFunction<P, P> distance) {
        double fine = 0;
        double coarse = 0;
        for (int i = 2; i < line.size(); i += 2) {
            fine += distance.applyAsDouble(line.get(i - 2), line.get(i - 1))
                    + distance.applyAsDouble(line.get(i - 1), line.get(i));
            coarse += distance.applyAsDouble(line.get(i - 2), line.get(i));
        }
        return fine + (fine - coarse) / 3;
    }

    /** Its greatest distance from the chord between its ends (where it closes, from the ends) in mm. */
    double sagittaMm() {
        Framing.Point start = points.get(0);
        Framing.Point end = points.get(points.size() - 1);
        double chordMm = start.distanceMm(end);
        if (chordMm < CLOSED_MM) {
            return points.stream().mapToDouble(start::distanceMm).max().orElse(0);
        }
        double unitX = (end.xMm() - start.xMm()) / chordMm;
        double unitY = (end.yMm() - start.yMm()) / chordMm;
        return points.stream()
                .mapToDouble(p -> Math.abs((p.yMm() - start.yMm()) * unitX - (p.xMm() - start.xMm()) * unitY))
                .max().orElse(0);
    }
}
