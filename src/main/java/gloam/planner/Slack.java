package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How exactly the times of an exposure are to be kept. Between the earliest and the latest opening, the
 * closing as planned, every limit of the wish holds and the sky's tone stays within half a stop of the
 * planned one; so between the earliest and the latest closing, the opening as planned. The times of the
 * sheets before and after are left as they are.
 *
 * @param openEarliest      the earliest opening
 * @param openLatest        the latest one
 * @param closeEarliest     the earliest closing
 * @param closeLatest       the latest one
 * @param openedEarlyStops  by how much the tone changes if it is opened {@link #ASTRAY_MIN} early; empty
 *                          where the shutter must not be open then
 * @param closedLateStops   the same if it is closed so much late
 * @param late              what to do where it is opened late, for each of {@link #LATE_MIN}
 */
public record Slack(Instant openEarliest, Instant openLatest, Instant closeEarliest, Instant closeLatest,
        OptionalDouble openedEarlyStops, OptionalDouble closedLateStops, List<LateOpening> late) {

    /** Within it a tone stays as planned, as brackets and the journal have it. */
    public static final double SAME_TONE_STOPS = 0.5;
    /** From such a slack on a time need not be kept to the minute; common practice, no source. */
    public static final int EASY_MIN = 10;
    /** So many minutes early or late show what a minute matters. */
    public static final int ASTRAY_MIN = 2;
    /** How late an opening is thought of, in minutes. */
    public static final List<Integer> LATE_MIN = List.of(5, 10, 20, 40);

    /** Copies the list. */
    public Slack {
        late = List.copyOf(late);
    }

    /** The times of a sheet of several openings, all of which are to be kept. */
    static Slack none(Interval whole) {
        return new Slack(whole.start(), whole.start(), whole.endExclusive(), whole.endExclusive(),
                OptionalDouble.empty(), OptionalDouble.empty(), List.of());
    }

    /** Whether it matters by the minute when it is opened. */
    public boolean opensToTheMinute() {
        return !easy(openEarliest, openLatest) && matters(openedEarlyStops);
    }

    /** Whether it matters by the minute when it is closed. */
    public boolean closesToTheMinute() {
        return !easy(closeEarliest, closeLatest) && matters(closedLateStops);
    }

    /** Whether one of its ends need not be kept to the minute. */
    boolean easy() {
        return easy(openEarliest, openLatest) || easy(closeEarliest, closeLatest);
    }

    /** The latest of the late openings that still have a closing, in minutes late; 0 for none. */
    int mostLateMin() {
        return late.stream().filter(opening -> opening.close.isPresent()).mapToInt(LateOpening::lateMin).max()
                .orElse(0);
    }

    private static boolean easy(Instant earliest, Instant latest) {
        return Duration.between(earliest, latest).toMinutes() >= EASY_MIN;
    }

    private static boolean matters(OptionalDouble astrayStops) {
        return astrayStops.isPresent() && Math.abs(astrayStops.getAsDouble()) >= Miss.LEAST_STOPS;
    }

    /**
     * An exposure that is opened late.
     *
     * @param lateMin by how many minutes
     * @param close   when to close it then; empty where no closing keeps the limits
     */
    public record LateOpening(int lateMin, Optional<Close> close) {
    }

    /**
     * The closing that keeps the limits and makes the tone nearest to the planned one; where the next sheet's
     * time has to give way, the next one can still be opened so late.
     *
     * @param at           when
     * @param skyToneStops the tone it makes
     * @param aim          where the frame's centre has to look, elsewhere than planned only where the camera
     *                     follows something
     */
    public record Close(Instant at, double skyToneStops, Direction aim) {
    }
}
