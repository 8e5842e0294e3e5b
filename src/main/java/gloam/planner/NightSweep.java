package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * One night at one site: the best worth of every tally after it, given the best worth of every tally before.
 *
 * <p>Goes through the candidates by opening time; what an exposure leads to counts from its close plus the changeover.
 */
final class NightSweep<T> {

    /** The worth of a tally that cannot be reached. */
    static final long UNREACHED = Long.MIN_VALUE / 2;

    private final Tally tally;
    private final List<Candidate<T>> byOpen;
    private final int[] byFree;
    private final int changeoverMin;

    /**
     * A night.
     *
     * @param candidates in {@link Candidate#ORDER}
     */
    NightSweep(Tally tally, List<Candidate<T>> candidates, int changeoverMin) {
        this.tally = tally;
        this.byOpen = candidates;
        this.changeoverMin = changeoverMin;
        Integer[] order = new Integer[candidates.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingInt(i -> candidates.get(i).closeMin()));
        this.byFree = Arrays.stream(order).mapToInt(i -> i).toArray();
    }

    /** The worth of every tally after the night. */
    long[] after(long[] before) {
        return sweep(before, new long[byOpen.size()][], false);
    }

    private long[] sweep(long[] before, long[][] pending, boolean keep) {
        long[] now = before.clone();
        int freed = 0;
        for (int i = 0; i <= byOpen.size(); i++) {
            int openMin = i < byOpen.size() ? byOpen.get(i).openMin() : Integer.MAX_VALUE;
            while (freed < byFree.length && free(byFree[freed]) <= openMin) {
                int done = byFree[freed++];
                take(now, done, pending[done]);
                pending[done] = keep ? pending[done] : null;
            }
            if (i < byOpen.size()) {
                pending[i] = exposed(now, byOpen.get(i));
            }
        }
        return now;
    }

    private int free(int index) {
        return byOpen.get(index).closeMin() + changeoverMin;
    }

    /** The worth of the tallies that an exposure leads to, in the order of the tallies that are open for its wish. */
    private long[] exposed(long[] now, Candidate<T> candidate) {
        int[] open = tally.openFor(candidate.wish());
        long micros = candidate.micros();
        long[] led = new long[open.length];
        for (int i = 0; i < open.length; i++) {
            led[i] = now[open[i]] + micros;
        }
        return led;
    }

    private void take(long[] now, int index, long[] led) {
        int wish = byOpen.get(index).wish();
        int[] open = tally.openFor(wish);
        int stride = tally.stride(wish);
        for (int i = 0; i < open.length; i++) {
            now[open[i] + stride] = Math.max(now[open[i] + stride], led[i]);
        }
    }

    /** What an exposure adds to a tally. */
    int stride(Candidate<T> candidate) {
        return tally.stride(candidate.wish());
    }

    /** The exposures, in order of time, that lead from {@code before} to the best worth of a tally after the night. */
    List<Candidate<T>> leadingTo(int reached, long[] before) {
        long[][] pending = new long[byOpen.size()][];
        long worth = sweep(before, pending, true)[reached];
        List<Candidate<T>> chosen = new ArrayList<>();
        int at = reached;
        int latestMin = Integer.MAX_VALUE;
        while (before[at] != worth) {
            int last = last(pending, at, worth, latestMin);
            Candidate<T> candidate = byOpen.get(last);
            chosen.add(candidate);
            at -= stride(candidate);
            worth -= candidate.micros();
            latestMin = candidate.openMin();
        }
        Collections.reverse(chosen);
        return chosen;
    }

    private int last(long[][] pending, int at, long worth, int latestMin) {
        for (int i = 0; i < byOpen.size(); i++) {
            int wish = byOpen.get(i).wish();
            int from = Arrays.binarySearch(tally.openFor(wish), at - tally.stride(wish));
            if (from >= 0 && free(i) <= latestMin && pending[i][from] == worth) {
                return i;
            }
        }
        throw new IllegalStateException("no exposure leads to a worth that was reached");
    }
}
