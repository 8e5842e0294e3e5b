package gloam.view;

import gloam.answer.Trails;
import gloam.trail.Trail;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One trail.
 *
 * @param kind         star, planet, moon or sun
 * @param magnitude    V; null where it is not known
 * @param records      whether it shows on the sheet; null when no film was given or the magnitude is unknown
 * @param stopsOverSky how far it stands over the sky around it, in stops; null as {@code records} is
 * @param points       along it, both ends included
 * @param lengthMm     on the sheet
 * @param lengthDeg    on the sky
 * @param frameShare   its length over the frame's longer side
 * @param directionDeg of the motion at mid exposure
 * @param entersOver   the edge it comes in over while the shutter is open: left, right, top or bottom
 * @param leavesOver   the edge it goes out over
 * @param leavesFrame  whether it goes out over an edge while the shutter is open
 * @param gapsMm       lengths left undrawn between one opening and the next
 */
public record TrackRow(String name, String kind, OptionalDouble magnitude, Optional<Boolean> records,
                       OptionalDouble stopsOverSky, List<PointRow> points, double lengthMm, double lengthDeg,
                       double frameShare, double directionDeg, double sagittaMm, Optional<String> entersOver,
                       Optional<String> leavesOver, boolean leavesFrame, List<Double> gapsMm) {

    /** Where an image stands at a moment. */
    public record PointRow(OffsetDateTime at, double xMm, double yMm) {
    }

    static TrackRow of(Trails.Track track, SiteClock clock) {
        Trail trail = track.trail();
        return new TrackRow(track.name(), Label.of(track.kind()),
                Finite.of(track.magnitude()), track.mark().map(Trails.Mark::records),
                track.mark().map(how -> OptionalDouble.of(how.stopsOverSky())).orElse(OptionalDouble.empty()),
                trail.points().stream().map(point -> new PointRow(clock.at(point.at()),
                        point.xMm(), point.yMm())).toList(),
                trail.lengthMm(), trail.arc().degrees(),
                track.frameShare(), trail.direction().positive().degrees(),
                trail.sagittaMm(), edge(trail.stretches().stream().map(Trail.Stretch::enters)
                        .flatMap(Optional::stream).findFirst()),
                edge(trail.stretches().stream().map(Trail.Stretch::leaves).flatMap(Optional::stream)
                        .reduce((first, last) -> last)),
                trail.leavesFrame(), trail.gapsMm());
    }

    private static Optional<String> edge(Optional<Trail.Edge> edge) {
        return edge.map(Label::of);
    }
}
