package gloam.planner;

import java.util.Comparator;
import java.util.Optional;

/**
 * A shot that is good for nothing.
 *
 * @param shot  the shot
 * @param blank why nothing would show, where that is it, and not what the shot misses
 */
record Failed(Shot shot, Optional<Reason> blank) {

    /** The nearest to being good first: by what shows, by what records, by the tone. */
    static final Comparator<Failed> ORDER = Comparator.comparing((Failed failed) -> failed.blank.isPresent())
            .thenComparingDouble(failed -> failed.shot.shortfallMag())
            .thenComparingDouble(failed -> Math.abs(failed.shot.toneStops()))
            .thenComparing(failed -> failed.shot.fNumber());
}
