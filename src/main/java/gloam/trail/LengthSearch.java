package gloam.trail;

import gloam.ephemeris.Target;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds how long to expose from an opening on for a trail of a wanted length on the sheet, on the frame or
 * beside it.
 *
 * @param estimator how targets run
 * @param open      when the shutter opens
 * @param lengthMm  wanted length, more than 0
 */
public record LengthSearch(TrailEstimator estimator, Instant open, double lengthMm) {

    private static final Duration LONGEST = Duration.ofHours(16);
    private static final Duration FIRST_GUESS = Duration.ofHours(1);
    private static final Duration ENOUGH = Duration.ofMillis(100);
    private static final int MOST_ROUNDS = 50;

    /**
     * The exposure; empty where the trail does not get this long in 16 hours.
     *
     * @param shot what is in the camera if the shutter is open for a given time: an aim at mid exposure
     *             shifts with it
     */
    public Optional<Interval> find(Function<Interval, Shot> shot) {
        Interval found = Interval.lasting(open, FIRST_GUESS);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Shot now = shot.apply(found);
            Optional<Instant> close = estimator.track(now.framing, now.target,
                    Interval.lasting(open, LONGEST))
                    .closes(open, lengthMm);
            if (close.isEmpty() || !close.get().isAfter(open)) {
                return Optional.empty();
            }
            Duration missed = Duration.between(found.endExclusive(), close.get());
            found = new Interval(open, close.get());
            if (missed.abs().compareTo(ENOUGH) < 0) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /**
     * What draws in which camera.
     *
     * @param framing where the camera points
     * @param target  whose trail is to have the length
     */
    public record Shot(Framing framing, Target target) {
    }
}
