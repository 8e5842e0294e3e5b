package gloam.planner;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Numbers every way in which a trip's wishes can be served so far: how often each of them, within its repeats and the
 * sheets carried. A tally is a number in mixed base, one digit a wish; 0 is nothing served.
 */
final class Tally {

    private final int[] strides;
    private final int[][] open;
    private final int size;

    /**
     * Tallies of wishes.
     *
     * @param repeats how often each wish may be served, each at least 1; {@link #size(int[])} must fit an int
     * @param sheets  how many sheets there are
     */
    Tally(int[] repeats, int sheets) {
        strides = new int[repeats.length];
        int product = 1;
        for (int wish = 0; wish < repeats.length; wish++) {
            strides[wish] = product;
            product *= repeats[wish] + 1;
        }
        size = product;
        int[] served = new int[size];
        for (int tally = 1; tally < size; tally++) {
            int top = topDigit(tally);
            served[tally] = served[tally - strides[top]] + 1;
        }
        open = new int[repeats.length][];
        for (int wish = 0; wish < repeats.length; wish++) {
            int stride = strides[wish];
            int base = repeats[wish] + 1;
            open[wish] = IntStream.range(0, size)
                    .filter(tally -> served[tally] < sheets && tally / stride % base < base - 1).toArray();
        }
    }

    private int topDigit(int tally) {
        int found = Arrays.binarySearch(strides, tally);
        return found >= 0 ? found : -found - 2;
    }

    /** How many tallies such wishes have, as a double because it can be huge. */
    static double size(int[] repeats) {
        return Arrays.stream(repeats).mapToDouble(repeat -> repeat + 1.0).reduce(1, (some, more) -> some * more);
    }

    /** How many tallies there are. */
    int size() {
        return size;
    }

    /** What serving a wish once more adds to a tally. */
    int stride(int wish) {
        return strides[wish];
    }

    /** The tallies, growing, from which a wish can be served once more. */
    int[] openFor(int wish) {
        return open[wish];
    }
}
