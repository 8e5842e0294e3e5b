package gloam.planner;

import java.util.Arrays;

/**
 * How often each wish of a trip may be served, and what can be added up within that and the sheets carried.
 *
 * <p>Counts are packed into words, each with a bit to spare that shows when it is passed.
 */
final class WishCounts {

    private final int[] repeats;
    private final int sheets;
    private final boolean scarce;
    private final int[] word;
    private final int[] shift;
    private final int[] bits;
    private final long[] room;
    private final long[] spare;

    /**
     * How often each wish has been served.
     *
     * @param words  the counts, packed
     * @param sheets how many sheets that took
     * @param last   a number for where and when the last of them was exposed; 0 where it does not matter
     */
    record Served(long[] words, int sheets, int last) {

        /** The same with the last at a place and time. */
        Served lastAt(int number) {
            return new Served(words, sheets, number);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Served served && last == served.last
                    && Arrays.equals(words, served.words);
        }

        @Override
        public int hashCode() {
            return Long.hashCode(words[0] * 0x9E3779B97F4A7C15L) + 31 * Arrays.hashCode(words) + last;
        }
    }

    /**
     * The counts of wishes.
     *
     * @param repeats how often each wish may be served, 0 or more
     * @param sheets  how many sheets there are
     */
    WishCounts(int[] repeats, int sheets) {
        this.repeats = repeats.clone();
        this.sheets = sheets;
        this.scarce = Arrays.stream(repeats).sum() > sheets;
        this.word = new int[repeats.length];
        this.shift = new int[repeats.length];
        this.bits = new int[repeats.length];
        int at = 0;
        for (int wish = 0; wish < repeats.length; wish++) {
            bits[wish] = Integer.SIZE - Integer.numberOfLeadingZeros(repeats[wish]);
            if (at % Long.SIZE + bits[wish] + 1 > Long.SIZE) {
                at = (at / Long.SIZE + 1) * Long.SIZE;
            }
            word[wish] = at / Long.SIZE;
            shift[wish] = at % Long.SIZE;
            at += bits[wish] + 1;
        }
        this.room = new long[at / Long.SIZE + 1];
        this.spare = new long[room.length];
        for (int wish = 0; wish < repeats.length; wish++) {
            room[word[wish]] |= (1L << bits[wish]) - 1 - repeats[wish] << shift[wish];
            spare[word[wish]] |= 1L << shift[wish] + bits[wish];
        }
    }

    /** The same of no more than what has been served. */
    WishCounts upTo(Served served) {
        int[] most = new int[repeats.length];
        Arrays.setAll(most, wish -> often(served, wish));
        return new WishCounts(most, served.sheets);
    }

    /** The same for one night, on which there are no more sheets than some. */
    WishCounts ofNight(int most) {
        return new WishCounts(repeats, Math.min(sheets, most));
    }

    /** Whether there are fewer sheets than wishes may be served with. */
    boolean scarce() {
        return scarce;
    }

    /** How many sheets are left after what has been served. */
    int sheetsLeft(Served served) {
        return sheets - served.sheets;
    }

    int wishes() {
        return repeats.length;
    }

    /** Nothing served. */
    Served nothing() {
        return new Served(new long[room.length], 0, 0);
    }

    /** Everything that may be served. */
    Served all() {
        Served all = nothing();
        for (int wish = 0; wish < repeats.length; wish++) {
            for (int time = 0; time < repeats[wish]; time++) {
                all = more(all, wish);
            }
        }
        return all;
    }

    /** How often a wish has been served. */
    int often(Served served, int wish) {
        return (int) (served.words[word[wish]] >>> shift[wish] & (1L << bits[wish]) - 1);
    }

    /** Whether a wish can be served once more. */
    boolean open(Served served, int wish) {
        return served.sheets < sheets && often(served, wish) < repeats[wish];
    }

    /** A wish, which is open, served once more. */
    Served more(Served served, int wish) {
        long[] words = served.words.clone();
        words[word[wish]] += 1L << shift[wish];
        return new Served(words, served.sheets + 1, served.last);
    }

    /** Whether both together are within what may be served. */
    boolean fit(Served some, Served others) {
        if (some.sheets + others.sheets > sheets) {
            return false;
        }
        for (int i = 0; i < room.length; i++) {
            if ((some.words[i] + others.words[i] + room[i] & spare[i]) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether two parts of one night, on which no wish is served twice, have no wish in common. */
    boolean apart(Served some, Served others) {
        for (int i = 0; i < room.length; i++) {
            if ((some.words[i] & others.words[i]) != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether what can be added to some can, as far as it is still open, be added to others that have served
     * no wish less often, sheets not being {@link #scarce}; not told where it matters what was exposed last.
     */
    boolean covers(Served others, Served some) {
        if (others.last != some.last) {
            return false;
        }
        for (int i = 0; i < room.length; i++) {
            if (((others.words[i] | spare[i]) - some.words[i] & spare[i]) != spare[i]) {
                return false;
            }
        }
        return true;
    }

    /** Both together, the last that of the others. */
    Served sum(Served some, Served others) {
        long[] words = some.words.clone();
        for (int i = 0; i < words.length; i++) {
            words[i] += others.words[i];
        }
        return new Served(words, some.sheets + others.sheets, others.last);
    }
}
