package gloam.planner;

import java.util.Arrays;

/**
 * What a sheet and each wish are worth to the rest of a trip, so that exposures of one night can be judged
 * alone: no timetable gains more than the bound and what its exposures gain over their prices.
 *
 * @param sheet the price of a sheet
 * @param wish  by wish, the price of serving it once, beside the sheet
 * @param bound what all sheets and wishes cost together
 */
record Prices(long sheet, long[] wish, long bound) {

    /**
     * Prices at which no exposure gains anything: each wish costs what it gains at best.
     *
     * @param most    by wish, the most that one of its exposures gains
     * @param repeats how often each may be served
     * @param sheets  how many sheets there are
     */
    static Prices of(long[] most, int[] repeats, int sheets) {
        long[] all = new long[Arrays.stream(repeats).sum()];
        int number = 0;
        for (int wish = 0; wish < repeats.length; wish++) {
            for (int time = 0; time < repeats[wish]; time++) {
                all[number++] = most[wish];
            }
        }
        Arrays.sort(all);
        long sheet = all.length > sheets ? all[all.length - sheets - 1] : 0;
        long[] prices = new long[repeats.length];
        long bound = sheet * sheets;
        for (int wish = 0; wish < repeats.length; wish++) {
            prices[wish] = Math.max(0, most[wish] - sheet);
            bound += prices[wish] * repeats[wish];
        }
        return new Prices(sheet, prices, bound);
    }

    /** What an exposure gains over its prices, never more than nothing. */
    long over(int number, long gain) {
        return gain - sheet - wish[number];
    }

    /** What something served gains over its prices. */
    long over(WishCounts counts, WishCounts.Served served, long gain) {
        long over = gain - sheet * served.sheets();
        for (int number = 0; number < counts.wishes(); number++) {
            over -= counts.often(served, number) * wish[number];
        }
        return over;
    }
}
