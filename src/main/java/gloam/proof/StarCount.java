package gloam.proof;

import gloam.ephemeris.Star;
import gloam.trail.FramedTrails;
import gloam.trail.Trail;
import gloam.units.Angle;
import java.time.Duration;
import java.util.List;

/**
 * How many stars of a catalogue mark a sheet.
 *
 * @param recorded how many leave a visible trail
 * @param crossing how many run over the sheet above the skyline
 */
public record StarCount(int recorded, int crossing) {

    private static final Duration ENDS_ALONE = Duration.ofDays(1);

    /** The count of some stars on a sheet. */
    public static StarCount of(List<Star> stars, FramedTrails trails, ExposedFrame sheet) {
        List<Boolean> marks = stars.parallelStream().flatMap(star -> trails.of(star, ENDS_ALONE).stream()
                .map(trail -> records(star, trail, sheet))).toList();
        return new StarCount((int) marks.stream().filter(Boolean::booleanValue).count(), marks.size());
    }

    private static boolean records(Star star, Trail trail, ExposedFrame sheet) {
        return sheet.mark(trail, star.magnitude(), Angle.ZERO).records();
    }
}
