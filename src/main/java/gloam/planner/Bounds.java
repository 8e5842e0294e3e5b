package gloam.planner;

import java.util.function.IntPredicate;

/**
 * The durations, in whole minutes, that are left after aims have each cut theirs, and which aims cut last.
 *
 * @param leastMin the shortest left
 * @param mostMin  the longest left; less than the shortest when none is left
 * @param leastBy  what set the shortest
 * @param mostBy   what set the longest
 */
record Bounds(int leastMin, int mostMin, DurationLimit leastBy, DurationLimit mostBy) {

    /** Whether no duration is left. */
    boolean empty() {
        return leastMin > mostMin;
    }

    /** How far the two aims that exclude each other are apart, in minutes; not positive when they do not. */
    int gapMin() {
        return leastMin - mostMin;
    }

    /** What is left when the duration must be no shorter. */
    Bounds atLeast(int min, DurationLimit by) {
        return min > leastMin ? new Bounds(min, mostMin, by, mostBy) : this;
    }

    /** What is left when the duration must be no longer. */
    Bounds atMost(int min, DurationLimit by) {
        return min < mostMin ? new Bounds(leastMin, min, leastBy, by) : this;
    }

    /** What is left when durations come in steps from zero. */
    Bounds inStepsOf(int stepMin) {
        return new Bounds((leastMin + stepMin - 1) / stepMin * stepMin, mostMin / stepMin * stepMin, leastBy,
                mostBy);
    }

    /** What is left from the first good duration on to the last before one that is not good, in steps. */
    Bounds firstRunOf(IntPredicate good, int stepMin, DurationLimit by) {
        int first = leastMin;
        while (first <= mostMin && !good.test(first)) {
            first += stepMin;
        }
        int last = first;
        while (last + stepMin <= mostMin && good.test(last + stepMin)) {
            last += stepMin;
        }
        return atLeast(first, by).atMost(last, by);
    }

    /**
     * The shortest duration left, in steps, at which a growing condition holds; a step over the longest for
     * none.
     */
    int firstWhere(IntPredicate growing, int stepMin) {
        int low = 0;
        int high = empty() ? 0 : (mostMin - leastMin) / stepMin + 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (growing.test(leastMin + middle * stepMin)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return leastMin + low * stepMin;
    }
}
