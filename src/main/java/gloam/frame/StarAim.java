package gloam.frame;

import java.util.List;

/**
 * Where a camera pointed by the stars in its frame.
 *
 * @param map      which direction falls where
 * @param matched  the stars that were found, brightest first
 * @param rmsDeg   how far they lie from where they should, in the mean
 * @param errorDeg one standard deviation of the aim and the roll
 */
public record StarAim(ImageMap map, List<Matched> matched, double rmsDeg, double errorDeg) {

    /** Copies the list. */
    public StarAim {
        matched = List.copyOf(matched);
    }

    /** A star and where it was found. */
    public record Matched(SkyStar star, Detection detection) {
    }
}
