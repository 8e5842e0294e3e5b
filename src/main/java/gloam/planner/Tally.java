package gloam.planner;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Numbers every way in which a trip's wishes can be served so far: how often each of them, within its repeats and the
 * sheets carried. A tally is a number in mixed base, one digit a wish; 0 is nothing served.
 */
final class Tally {

    private final int[] repeats;
    private final int sheets;
    private final int[] strides;
    private final byte[][] digits;
    private final int[] served;

    /**
     * Tallies of wishes.
     *
     * @param repeats how often each wish may be served, 0 to 127; {@link #size(int[])} must fit an int
     * @param sheets  how many sheets there are
     */
    Tally(int[] repeats, int sheets) {
        this.repeats = repeats.clone();
        this.sheets = sheets;
        this.strides = new int[repeats.length];
        int size = 1;
        for (int wish = 0; wish < repeats.length; wish++) {
            strides[wish] = size;
            size *= repeats[wish] + 1;
        }
        this.digits = new byte[repeats.length][size];
        this.served = new int[size];
        for (int tally = 1; tally < size; tally++) {
            for (int wish = 0; wish < repeats.length; wish++) {
                digits[wish][tally] = (byte) (tally / strides[wish] % (repeats[wish] + 1));
                served[tally] += digits[wish][tally];
            }
        }
    }

    /** How many tallies such wishes have, as a double because it can be huge. */
    static double size(int[] repeats) {
        return Arrays.stream(repeats).mapToDouble(repeat -> repeat + 1.0).reduce(1, (some, more) -> some * more);
    }

    /** The tallies that can be on the way to one of these. */
    Tally upTo(int tally) {
        return new Tally(IntStream.range(0, repeats.length).map(wish -> digits[wish][tally]).toArray(), sheets);
    }

    /** How many tallies there are. */
    int size() {
        return served.length;
    }

    /** How many wishes there are. */
    int wishes() {
        return repeats.length;
    }

    /** How often a wish may be served. */
    int repeats(int wish) {
        return repeats[wish];
    }

    /** What serving a wish once more adds to a tally. */
    int stride(int wish) {
        return strides[wish];
    }

    /** Whether a tally keeps to the sheets. */
    boolean affordable(int tally) {
        return served[tally] <= sheets;
    }

    /** Whether a wish can be served once more after a tally. */
    boolean open(int tally, int wish) {
        return served[tally] < sheets && digits[wish][tally] < repeats[wish];
    }

    /** Whether a tally serves a wish. */
    boolean serves(int tally, int wish) {
        return digits[wish][tally] > 0;
    }

    /** Whether a tally serves no wish more often than another does. */
    boolean within(int tally, int other) {
        return IntStream.range(0, repeats.length).allMatch(wish -> digits[wish][tally] <= digits[wish][other]);
    }
}
