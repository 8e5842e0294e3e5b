package gloam.trail;

import java.util.List;
import java.util.Optional;

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
        return Spells.of(atS -> axes.inside(path.at(atS)), fromS, toS, STEP_S).stream()
                .map(spell -> new Visit(spell.fromS(), spell.toS(),
                        spell.fromS() == fromS ? Optional.empty() : crossed(spell.fromS()),
                        spell.toS() == toS ? Optional.empty() : crossed(spell.toS())))
                .toList();
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
    }
}
