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
        int darkFrom = Math.max(openMin, Math.min(closeMin, dark.first()));
        int darkTo = Math.max(darkFrom, Math.min(closeMin, dark.last()));
        int twilightMin = closeMin - openMin - (darkTo - darkFrom);
        double share = 1 - made.progress(darkFrom, darkTo) / made.progress(openMin, closeMin);
        return limits.twilightMin().margin(twilightMin) >= 0 && limits.twilightPercent().margin(100 * share) >= 0;
    }
}
