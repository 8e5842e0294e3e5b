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
    private final int[] served;

    /**
     * Tallies of wishes.
     *
     * @param repeats how often each wish may be served, not negative; {@link #size(int[])} must fit an int
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
        this.served = new int[size];
        for (int wish = 0; wish < repeats.length; wish++) {
            for (int tally = strides[wish]; tally < strides[wish] * (repeats[wish] + 1); tally++) {
                served[tally] = served[tally - strides[wish]] + 1;
            }
        }
    }

    /** How many tallies such wishes have, as a double because it can be huge. */
    static double size(int[] repeats) {
        return Arrays.stream(repeats).mapToDouble(repeat -> repeat + 1.0).reduce(1, (some, more) -> some * more);
    }

    /** The tallies that can be on the way to one of these. */
    Tally upTo(int tally) {
        return new Tally(IntStream.range(0, repeats.length).map(wish -> digit(tally, wish)).toArray(), sheets);
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
        return served[tally] < sheets && digit(tally, wish) < repeats[wish];
    }

    /** Whether a tally serves a wish. */
    boolean serves(int tally, int wish) {
        return digit(tally, wish) > 0;
    }

    /** Whether a tally serves no wish more often than another does. */
    boolean within(int tally, int other) {
        return IntStream.range(0, repeats.length).allMatch(wish -> digit(tally, wish) <= digit(other, wish));
    }

    private int digit(int tally, int wish) {
        return tally / strides[wish] % (repeats[wish] + 1);
    }
}
