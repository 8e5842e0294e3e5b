package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What timetables must still lose by the nights they need, of those that leave out no wish and no sheet
 * that is worth more than may be lost.
 */
final class StillNeeded {

    /** More than any timetable gains. */
    private static final long TOO_MUCH = Long.MAX_VALUE / 4;

    /** Putting off a wish that has one night left is at least that part of what may be lost; by trial. */
    private static final long URGENT_PART = 20;

    private final WishCounts counts;
    private final long mayLose;
    private final int[] must;
    private final boolean allSheets;
    private final Served all;
    /** By night, how often each wish can be served after it. */
    private final int[][] left;
    /** By night, how many sheets can be exposed after it, on one night and altogether. */
    private final int[] mostSheets;
    private final int[] leftSheets;

    /**
     * What is needed after each of some nights.
     *
     * @param ways what each can serve
     */
    StillNeeded(WishCounts counts, List<List<Served>> ways, Prices prices, long mayLose) {
        this.counts = counts;
        this.mayLose = mayLose;
        this.must = IntStream.range(0, counts.wishes()).filter(wish -> prices.wish()[wish] > mayLose)
                .toArray();
        this.allSheets = prices.sheet() > mayLose;
        this.all = counts.all();
        this.left = new int[ways.size()][counts.wishes()];
        this.mostSheets = new int[ways.size()];
        this.leftSheets = new int[ways.size()];
        for (int night = ways.size() - 2; night >= 0; night--) {
            int sheets = 0;
            int[] most = new int[counts.wishes()];
            for (Served way : ways.get(night + 1)) {
                sheets = Math.max(sheets, way.sheets());
                for (int wish = 0; wish < most.length; wish++) {
                    most[wish] = Math.max(most[wish], counts.often(way, wish));
                }
            }
            mostSheets[night] = Math.max(mostSheets[night + 1], sheets);
            leftSheets[night] = leftSheets[night + 1] + sheets;
            for (int wish = 0; wish < most.length; wish++) {
                left[night][wish] = left[night + 1][wish] + most[wish];
            }
        }
    }

    /** What is lost at least after a night by what has been served so far. */
    long least(Served served, int night) {
        int lacking = 0;
        for (int wish : must) {
            if (lacking(served, wish) > left[night][wish]) {
                return TOO_MUCH;
            }
            lacking += lacking(served, wish);
        }
        int sheets = allSheets ? counts.sheetsLeft(served) : lacking;
        if (lacking > counts.sheetsLeft(served) || sheets > leftSheets[night]) {
            return TOO_MUCH;
        }
        return sheets == 0 ? 0 : (sheets + mostSheets[night] - 1) / mostSheets[night] * Gain.NIGHT_OUT;
    }

    /**
     * How urgent it is after a night to serve what has not been served so far, as a loss: the fewer nights
     * are left for a wish, the more. Only says what to follow first, of what {@link #least} leaves possible.
     *
     * @param nights for how many nights out putting off a wish counts at least that has one night left
     */
    long urgency(Served served, int night, int nights) {
        long urgent = Math.max(nights * Gain.NIGHT_OUT, mayLose / URGENT_PART);
        long urgency = 0;
        for (int wish : must) {
            int lacking = lacking(served, wish);
            urgency += lacking == 0 ? 0 : urgent * lacking / left[night][wish];
        }
        return urgency;
    }

    private int lacking(Served served, int wish) {
        return counts.often(all, wish) - counts.often(served, wish);
    }
}
