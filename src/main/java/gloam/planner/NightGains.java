package gloam.planner;

import java.util.List;

/**
 * The most that each count gains which one night can come to, at whichever of its sites that is.
 *
 * @param counts the counts
 * @param gains the gain of each, {@link NightSchedules#UNREACHED} of those that no site comes to
 * @param site   the first site that makes it so much
 */
record NightGains(WishCounts counts, long[] gains, int[] site) {

    /** The offer of a night, by the worth that its counts have at each site. */
    static NightGains of(WishCounts counts, List<long[]> sites) {
        long[] gains = sites.get(0).clone();
        int[] site = new int[gains.length];
        for (int number = 1; number < sites.size(); number++) {
            for (int served = 0; served < gains.length; served++) {
                if (sites.get(number)[served] > gains[served]) {
                    gains[served] = sites.get(number)[served];
                    site[served] = number;
                }
            }
        }
        for (int served = 1; served < gains.length; served++) {
            gains[served] -= gains[served] == NightSchedules.UNREACHED ? 0 : Gain.NIGHT_OUT;
        }
        return new NightGains(counts, gains, site);
    }

    /** The most that every count is worth after the night, by what it is before. */
    long[] after(long[] before) {
        return new Join(before).after();
    }

    /** What the night serves on the way to a count's worth: nothing where that can be had before, of equals the first. */
    int leadingTo(int reached, long worth, long[] before) {
        int served = 0;
        while (!(gains[served] != NightSchedules.UNREACHED && counts.within(served, reached)
                && before[reached - served] + gains[served] == worth)) {
            served++;
        }
        return served;
    }

    /** Every count before the night with every one of the night that it leaves open. */
    private final class Join {

        private final long[] before;
        private final int[] nextBefore;
        private final int[] nextOffered = next(gains);
        private final long[] after;

        Join(long[] before) {
            this.before = before;
            this.nextBefore = next(before);
            this.after = before.clone();
        }

        long[] after() {
            if (counts.wishes() > 0) {
                join(counts.wishes() - 1, 0, 0);
            }
            return after;
        }

        /** Joins the counts that go on from two, which leave open how often a wish and those before it are served. */
        private void join(int wish, int had, int served) {
            int stride = counts.stride(wish);
            int repeats = counts.repeats(wish);
            for (int more = 0; more <= repeats; more++) {
                int from = served + more * stride;
                for (int times = 0; nextOffered[from] < from + stride && times <= repeats - more; times++) {
                    int with = had + times * stride;
                    if (nextBefore[with] >= with + stride) {
                        continue;
                    }
                    if (wish > 0) {
                        join(wish - 1, with, from);
                    } else if (before[with] + gains[from] > after[with + from] && counts.affordable(with + from)) {
                        after[with + from] = before[with] + gains[from];
                    }
                }
            }
        }

        /** The first count from each on that can be reached. */
        private static int[] next(long[] worth) {
            int[] next = new int[worth.length];
            int known = Integer.MAX_VALUE;
            for (int served = worth.length - 1; served >= 0; served--) {
                known = worth[served] == NightSchedules.UNREACHED ? known : served;
                next[served] = known;
            }
            return next;
        }
    }
}
