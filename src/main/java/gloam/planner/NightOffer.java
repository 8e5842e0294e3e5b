package gloam.planner;

import java.util.List;

/**
 * The most that each tally is worth which one night can come to, at whichever of its sites that is.
 *
 * @param tally  the tallies
 * @param micros the worth of each, {@link NightSweep#UNREACHED} of those that no site comes to
 * @param site   the first site that makes it so much
 */
record NightOffer(Tally tally, long[] micros, int[] site) {

    /** The offer of a night, by the worth that its tallies have at each site. */
    static NightOffer of(Tally tally, List<long[]> sites) {
        long[] micros = sites.get(0).clone();
        int[] site = new int[micros.length];
        for (int number = 1; number < sites.size(); number++) {
            for (int served = 0; served < micros.length; served++) {
                if (sites.get(number)[served] > micros[served]) {
                    micros[served] = sites.get(number)[served];
                    site[served] = number;
                }
            }
        }
        return new NightOffer(tally, micros, site);
    }

    /** The most that every tally is worth after the night, by what it is before. */
    long[] after(long[] before) {
        return new Join(before).after();
    }

    /** What the night serves on the way to a tally's worth: nothing where that can be had before, of equals the first. */
    int leadingTo(int reached, long worth, long[] before) {
        int served = 0;
        while (!(micros[served] != NightSweep.UNREACHED && tally.within(served, reached)
                && before[reached - served] + micros[served] == worth)) {
            served++;
        }
        return served;
    }

    /** Every tally before the night with every one of the night that it leaves open. */
    private final class Join {

        private final long[] before;
        private final int[] nextBefore;
        private final int[] nextOffered = next(micros);
        private final long[] after;

        Join(long[] before) {
            this.before = before;
            this.nextBefore = next(before);
            this.after = before.clone();
        }

        long[] after() {
            if (tally.wishes() > 0) {
                join(tally.wishes() - 1, 0, 0);
            }
            return after;
        }

        /** Joins the tallies that go on from two, which leave open how often a wish and those before it are served. */
        private void join(int wish, int had, int served) {
            int stride = tally.stride(wish);
            int repeats = tally.repeats(wish);
            for (int more = 0; more <= repeats; more++) {
                int from = served + more * stride;
                for (int times = 0; nextOffered[from] < from + stride && times <= repeats - more; times++) {
                    int with = had + times * stride;
                    if (nextBefore[with] >= with + stride) {
                        continue;
                    }
                    if (wish > 0) {
                        join(wish - 1, with, from);
                    } else if (before[with] + micros[from] > after[with + from] && tally.affordable(with + from)) {
                        after[with + from] = before[with] + micros[from];
                    }
                }
            }
        }

        /** The first tally from each on that can be reached. */
        private static int[] next(long[] worth) {
            int[] next = new int[worth.length];
            int known = Integer.MAX_VALUE;
            for (int served = worth.length - 1; served >= 0; served--) {
                known = worth[served] == NightSweep.UNREACHED ? known : served;
                next[served] = known;
            }
            return next;
        }
    }
}
