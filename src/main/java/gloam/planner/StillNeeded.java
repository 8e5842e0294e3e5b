package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** How many more nights timetables must take that leave out no wish that is worth more than may be lost. */
final class StillNeeded {

    /** More nights than there are. */
    private static final int NEVER = 10_000;

    private final WishCounts counts;
    private final int[] must;
    private final Served all;
    /** By night, how often each wish and how many sheets altogether can be served after it. */
    private final int[][] left;
    private final int[] mostSheets;

    /**
     * What is needed after each of some nights.
     *
     * @param ways what each can serve
     * @param must whether a wish must be served as often as it may be
     */
    StillNeeded(WishCounts counts, List<List<Served>> ways, IntPredicate must) {
        this.counts = counts;
        this.must = IntStream.range(0, counts.wishes()).filter(must).toArray();
        this.all = counts.all();
        this.left = new int[ways.size()][counts.wishes()];
        this.mostSheets = new int[ways.size()];
        for (int night = ways.size() - 2; night >= 0; night--) {
            mostSheets[night] = mostSheets[night + 1];
            int[] most = new int[counts.wishes()];
            for (Served way : ways.get(night + 1)) {
                mostSheets[night] = Math.max(mostSheets[night], way.sheets());
                for (int wish = 0; wish < most.length; wish++) {
                    most[wish] = Math.max(most[wish], counts.often(way, wish));
                }
            }
            for (int wish = 0; wish < most.length; wish++) {
                left[night][wish] = left[night + 1][wish] + most[wish];
            }
        }
    }

    /** How many nights after one are needed at least by what has been served so far. */
    int nights(Served served, int night) {
        int sheets = 0;
        for (int wish : must) {
            int lacking = counts.often(all, wish) - counts.often(served, wish);
            if (lacking > left[night][wish]) {
                return NEVER;
            }
            sheets += lacking;
        }
        return sheets == 0 ? 0 : (sheets + mostSheets[night] - 1) / mostSheets[night];
    }
}
