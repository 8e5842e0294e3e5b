package gloam.planner;

/**
 * How much of an exposure lies in twilight.
 *
 * @param limits what a wish wants of it
 * @param dark   the minutes with the Sun below -18°; empty, the last before the first, where there are none
 */
record TwilightShare(Limits limits, MinuteRun dark) {

    /** Whether an exposure has as much of twilight as is wanted. */
    boolean suits(int openMin, int closeMin, MinuteProgress made) {
        return limits.twilightMin().margin(minutes(openMin, closeMin)) >= 0
                && limits.twilightPercent().margin(percent(openMin, closeMin, made)) >= 0;
    }

    /** How many minutes of an exposure lie in twilight. */
    int minutes(int openMin, int closeMin) {
        return closeMin - openMin - (darkTo(openMin, closeMin) - darkFrom(openMin, closeMin));
    }

    /** The share of the sky's tone that twilight makes, in per cent. */
    double percent(int openMin, int closeMin, MinuteProgress made) {
        return 100 * (1 - made.progress(darkFrom(openMin, closeMin), darkTo(openMin, closeMin))
                / made.progress(openMin, closeMin));
    }

    private int darkFrom(int openMin, int closeMin) {
        return Math.max(openMin, Math.min(closeMin, dark.first()));
    }

    private int darkTo(int openMin, int closeMin) {
        return Math.max(darkFrom(openMin, closeMin), Math.min(closeMin, dark.last()));
    }
}
