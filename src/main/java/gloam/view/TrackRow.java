package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
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
 * @param kind         {@code star}, {@code planet} or {@code moon}
 * @param magnitude    V magnitude; absent if not known
 * @param records      whether it shows on the sheet; absent without a film or a magnitude
 * @param stopsOverSky how far it rises above the sky around it, in stops; absent with {@code records}
 * @param points       along it, both ends included
 * @param lengthMm     its length on the sheet, in mm
 * @param lengthDeg    its length on the sky, in degrees
 * @param frameShare   its length as a share of the frame's longer side
 * @param directionDeg direction of motion at mid-exposure, in degrees from right through up
 * @param entersOver   edge over which it enters while the shutter is open: left, right, top or bottom
 * @param leavesOver   edge over which it leaves
 * @param leavesFrame  whether it leaves while the shutter is open
 * @param gapsMm       gaps between one opening and the next, in mm
 */
public record TrackRow(String name, String kind, OptionalDouble magnitude, Optional<Boolean> records,
                       OptionalDouble stopsOverSky, List<PointRow> points, double lengthMm, double lengthDeg,
                       double frameShare, double directionDeg, double sagittaMm, Optional<String> entersOver,
                       Optional<String> leavesOver, boolean leavesFrame, List<Double> gapsMm) {

    /** Where the image is at a moment, in mm to the right of the frame's centre and above it. */
    public record PointRow(OffsetDateTime at, double xMm, double yMm) {
    }

    /** The name as it heads a row. */
    @JsonIgnore
    String title() {
        return Wording.skyName(kind.equals("star"), name);
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
