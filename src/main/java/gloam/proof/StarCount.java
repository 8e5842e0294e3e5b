package gloam.proof;

import gloam.ephemeris.Star;
import gloam.trail.FramedTrails;
import gloam.units.Angle;
import java.util.List;

/**
 * How many stars of a catalogue mark a sheet.
 *
 * @param recorded how many leave a visible trail
 * @param crossing how many run over the sheet above the skyline
 */
public record StarCount(int recorded, int crossing) {

    /** The count of some stars on a sheet. */
    public static StarCount of(List<Star> stars, FramedTrails trails, ExposedFrame sheet) {
        List<Boolean> marks = stars.parallelStream().flatMap(star -> trails.passage(star).stream()
                .map(passage -> sheet.mark(passage, star.magnitude(), Angle.ZERO).records())).toList();
        return new StarCount((int) marks.stream().filter(Boolean::booleanValue).count(), marks.size());
    }
}
