package gloam.view;

import gloam.answer.TripodView;
import gloam.ephemeris.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Where directions stand on the drawing of what is seen from behind the camera: azimuths across, altitudes
 * up, both alike in mm at the height that is aimed at.
 *
 * @param view   what is seen
 * @param left   the drawing's left edge, in mm
 * @param top    its upper edge
 * @param across mm for a degree of azimuth
 * @param up     mm for a degree of altitude
 */
record TripodPlane(TripodView view, double left, double top, double across, double up) {

    /** How wide it is at most, in mm. */
    static final double WIDTH = 170;

    private static final double MOST_HEIGHT = 150;
    private static final double BOTTOM_DEG = -5;
    private static final double LEAST_COSINE = 0.35;

    /** A plane for what is seen at an altitude. */
    static TripodPlane of(TripodView view, double altitudeDeg, double left, double top) {
        double cosine = Math.max(LEAST_COSINE, Math.cos(Math.toRadians(altitudeDeg)));
        double scale = Math.min(WIDTH / (view.rightDeg() - view.leftDeg()),
                cosine * MOST_HEIGHT / (view.topDeg() - BOTTOM_DEG));
        return new TripodPlane(view, left, top, scale, scale / cosine);
    }

    /** A line without the jumps from one edge of the view to the other. */
    List<List<Direction>> pieces(List<Direction> line) {
        List<List<Direction>> pieces = new ArrayList<>();
        List<Direction> piece = new ArrayList<>();
        for (Direction at : line) {
            if (!piece.isEmpty() && jumps(piece.get(piece.size() - 1), at)) {
                pieces.add(List.copyOf(piece));
                piece.clear();
            }
            piece.add(at);
        }
        pieces.add(piece);
        return pieces;
    }

    /** Whether two directions that follow each other stand at opposite edges. */
    boolean jumps(Direction one, Direction other) {
        return Math.abs(x(one) - x(other)) > WIDTH / 2;
    }

    /** The points of a line. */
    String points(List<Direction> line) {
        return line.stream().map(at -> Markup.number(x(at)) + "," + Markup.number(y(at)))
                .collect(Collectors.joining(" "));
    }

    /** A point of a path. */
    String point(Direction at) {
        return Markup.number(x(at)) + " " + Markup.number(y(at));
    }

    double x(double azimuthDeg) {
        return left + (azimuthDeg - view.leftDeg()) * across;
    }

    double x(Direction at) {
        double middleDeg = (view.leftDeg() + view.rightDeg()) / 2;
        return x(middleDeg + Math.IEEEremainder(at.azimuth().degrees() - middleDeg, 360));
    }

    double y(double altitudeDeg) {
        return top + (view.topDeg() - altitudeDeg) * up;
    }

    double y(Direction at) {
        return y(at.altitude().degrees());
    }

    double right() {
        return x(view.rightDeg());
    }

    double bottom() {
        return y(BOTTOM_DEG);
    }
}
