package gloam.trail;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds when a path lies inside the frame, and the edges it crosses. */
final class FrameVisits {

    /**
     * The sky turns by 0.5° in that time: an approach to the frame's edge is seen, however short the visit.
     */
    private static final double STEP_S = 120;

    private final FrameAxes axes;
    private final SkyPath path;

    FrameVisits(FrameAxes axes, SkyPath path) {
        this.axes = axes;
        this.path = path;
    }

    /** The visits between two moments, in order. */
    List<Visit> between(double fromS, double toS) {
        return Spells.of(this::inside, fromS, toS, STEP_S).stream()
                .map(spell -> new Visit(spell.fromS(), spell.toS(),
                        spell.fromS() == fromS ? Optional.empty() : Optional.of(nearestEdge(spell.fromS())),
                        spell.toS() == toS ? Optional.empty() : Optional.of(nearestEdge(spell.toS()))))
                .toList();
    }

    private double inside(double atS) {
        SkyVector direction = path.at(atS);
        double least = Double.POSITIVE_INFINITY;
        for (Trail.Edge edge : Trail.Edge.values()) {
            least = Math.min(least, axes.inside(direction, edge));
        }
        return least;
    }

    private Trail.Edge nearestEdge(double atS) {
        SkyVector direction = path.at(atS);
        return Stream.of(Trail.Edge.values())
                .min(Comparator.comparingDouble(edge -> axes.inside(direction, edge))).orElseThrow();
    }

    /**
     * A time inside the frame, in seconds from the start of the path.
     *
     * @param fromS  its start
     * @param toS    its end
     * @param enters the edge crossed at the start, empty where the search starts inside
     * @param leaves the edge crossed at the end, empty where the search ends inside
     */
    record Visit(double fromS, double toS, Optional<Trail.Edge> enters, Optional<Trail.Edge> leaves) {
    }
}
