package gloam.planner;

import java.util.Arrays;

/** Collects the magnitudes of the so many stars that are easiest to record. */
final class EasiestStars {

    private final float[] least;
    private int size;

    /** Of so many stars at most, at least one. */
    EasiestStars(int most) {
        this.least = new float[most];
    }

    /** Whether a star of a magnitude would be among them. */
    boolean takes(float magnitude) {
        return size < least.length || magnitude < least[size - 1];
    }

    /** Adds a star, if it is one of them; an infinite magnitude is none. */
    void add(float magnitude) {
        if (!takes(magnitude) || magnitude == Float.POSITIVE_INFINITY) {
            return;
        }
        int at = size < least.length ? size++ : size - 1;
        while (at > 0 && least[at - 1] > magnitude) {
            least[at] = least[--at];
        }
        least[at] = magnitude;
    }

    /** Their magnitudes, growing. */
    float[] magnitudes() {
        return Arrays.copyOf(least, size);
    }
}
