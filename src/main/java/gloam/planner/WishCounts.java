package gloam.planner;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Numbers every way in which a trip's wishes can be served so far: how often each of them, within its repeats and the
 * sheets carried. A count is a number in mixed base, one digit a wish; 0 is nothing served.
 */
final class WishCounts {

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
    WishCounts(int[] repeats, int sheets) {
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
        for (int count = 1; count < size; count++) {
            for (int wish = 0; wish < repeats.length; wish++) {
                digits[wish][count] = (byte) (count / strides[wish] % (repeats[wish] + 1));
                served[count] += digits[wish][count];
            }
        }
    }

    /** How many counts such wishes have, as a double because it can be huge. */
    static double size(int[] repeats) {
        return Arrays.stream(repeats).mapToDouble(repeat -> repeat + 1.0).reduce(1, (some, more) -> some * more);
    }

    /** The counts that can be on the way to one of these. */
    WishCounts upTo(int count) {
        return new WishCounts(IntStream.range(0, repeats.length).map(wish -> digits[wish][count]).toArray(), sheets);
    }

    /** How many counts there are. */
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

    /** What serving a wish once more adds to a count. */
    int stride(int wish) {
        return strides[wish];
    }

    /** Whether a count keeps to the sheets. */
    boolean affordable(int count) {
        return served[count] <= sheets;
    }

    /** Whether a wish can be served once more after a count. */
    boolean open(int count, int wish) {
        return served[count] < sheets && digits[wish][count] < repeats[wish];
    }

    /** How often a count serves a wish. */
    int often(int count, int wish) {
        return digits[wish][count];
    }

    /** Whether a count serves no wish more often than another does. */
    boolean within(int count, int other) {
        return IntStream.range(0, repeats.length).allMatch(wish -> digits[wish][count] <= digits[wish][other]);
    }
}
