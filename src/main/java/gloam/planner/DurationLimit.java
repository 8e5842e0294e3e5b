package gloam.planner;

/** What limits the duration of an exposure. */
public enum DurationLimit {
    /** The shortest or longest exposure wanted. */
    EXPOSURE,
    /** The time in which the shutter may be open. */
    SPAN,
    /** A condition of the opening. */
    OPENING,
    /** A condition of the middle. */
    MIDDLE,
    /** A condition of the closing. */
    CLOSING,
    /** The length of the trail. */
    TRAIL,
    /** The tone of the sky. */
    TONE,
    /** The turn of the sky. */
    ARC,
    /** The share of twilight. */
    TWILIGHT_SHARE;

    /** What a condition limits by that must hold at a moment. */
    static DurationLimit of(Condition.When when) {
        return switch (when) {
            case THROUGHOUT -> SPAN;
            case AT_OPENING -> OPENING;
            case AT_MIDDLE -> MIDDLE;
            case AT_CLOSING -> CLOSING;
        };
    }
}
