package gloam.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A point of a predicted trail, and how far across it the ridge lies.
 *
 * @param point  its direction
 * @param x      across the trail, to the right as a share of the length 1
 * @param y      across the trail, downwards
 * @param found  where the ridge lies, in pixels along that line
 */
record Across(Vector3D point, double x, double y, double found) {

    /** The points of trails near which a ridge lies, each with it. */
    static List<Across> of(Ridges ridges, ImageMap map, List<PredictedTrail> trails, int reachPx) {
        List<Across> across = new ArrayList<>();
        for (PredictedTrail predicted : trails) {
            List<Vector3D> trail = predicted.directions();
            for (int i = 0; i + 1 < trail.size(); i++) {
                Optional<double[]> here = map.toImage(trail.get(i)).filter(map::contains);
                Optional<double[]> next = map.toImage(trail.get(i + 1));
                if (here.isPresent() && next.isPresent()) {
                    add(across, ridges, trail.get(i), here.get(), next.get(), reachPx);
                }
            }
        }
        return across;
    }

    private static void add(List<Across> across, Ridges ridges, Vector3D point, double[] here, double[] next,
            int reachPx) {
        double length = Math.hypot(next[0] - here[0], next[1] - here[1]);
        if (length == 0) {
            return;
        }
        double x = -(next[1] - here[1]) / length;
        double y = (next[0] - here[0]) / length;
        ridges.acrossPx(here[0], here[1], x, y, reachPx).ifPresent(away -> across.add(new Across(point, x, y,
                x * here[0] + y * here[1] + away)));
    }

    /** Where the point lies on its line by a map; far away where the map does not see it. */
    double along(ImageMap map) {
        return map.toImage(point).map(place -> x * place[0] + y * place[1]).orElse(0.0);
    }
}
