package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What one night at one site can serve: every tally that its exposures can come to, and the most each is worth.
 *
 * <p>Goes through the candidates by opening time; what an exposure leads to counts from its close plus the changeover.
 */
final class NightSweep<T> {

    /** The worth of a tally that cannot be reached. */
    static final long UNREACHED = Long.MIN_VALUE / 2;

    /** What is lost of a picture taken again on the same night: more than safety counts, less than satisfaction does. */
    private static final double LOST_AGAIN = 5e-5;

    private final Tally tally;
    private final List<Candidate<T>> byOpen;
    private final int changeoverMin;
    private final long[] worth;
    private final int[] reached;
    private int reachedCount;
    private final Exposed[] exposed;

    /** The tallies that an exposure leads to, and their worth. */
    private record Exposed(int[] tallies, long[] worth) {

        private static final Exposed NOTHING = new Exposed(new int[0], new long[0]);

        boolean leadsTo(int tally, long worthOfIt) {
            return IntStream.range(0, tallies.length).anyMatch(i -> tallies[i] == tally && worth[i] == worthOfIt);
        }
    }

    private NightSweep(Tally tally, List<Candidate<T>> byOpen, int changeoverMin) {
        this.tally = tally;
        this.byOpen = byOpen;
        this.changeoverMin = changeoverMin;
        this.worth = new long[tally.size()];
        Arrays.fill(worth, 1, worth.length, UNREACHED);
        this.reached = new int[tally.size()];
        this.reachedCount = 1;
        this.exposed = new Exposed[byOpen.size()];
    }

    /**
     * The worth in millionths of every tally that a night can come to, {@link #UNREACHED} of the others.
     *
     * @param candidates in {@link Candidate#ORDER}
     */
    static <T> long[] worth(Tally tally, List<Candidate<T>> candidates, int changeoverMin) {
        NightSweep<T> sweep = new NightSweep<>(tally, candidates, changeoverMin);
        sweep.run(false);
        return sweep.worth;
    }

    /**
     * The exposures, in order of time, that come to a tally and are worth most; of equals the earlier starts.
     *
     * @param candidates in {@link Candidate#ORDER}
     */
    static <T> List<Candidate<T>> exposures(Tally all, List<Candidate<T>> candidates, int changeoverMin, int comeTo) {
        Tally within = all.upTo(comeTo);
        NightSweep<T> sweep = new NightSweep<>(within,
                candidates.stream().filter(candidate -> within.repeats(candidate.wish()) > 0).toList(), changeoverMin);
        sweep.run(true);
        return sweep.leadingTo(within.size() - 1);
    }

    private void run(boolean keep) {
        int[] byFree = IntStream.range(0, byOpen.size()).boxed().sorted(Comparator.comparingInt(this::freeMin))
                .mapToInt(i -> i).toArray();
        int freed = 0;
        for (int i = 0; i < byOpen.size(); i++) {
            while (freeMin(byFree[freed]) <= byOpen.get(i).openMin()) {
                take(byFree[freed++], keep);
            }
            exposed[i] = exposed(byOpen.get(i));
        }
        while (freed < byFree.length) {
            take(byFree[freed++], keep);
        }
    }

    private int freeMin(int index) {
        return byOpen.get(index).closeMin() + changeoverMin;
    }

    /** What an exposure leads to that is not yet to be had so well. */
    private Exposed exposed(Candidate<T> candidate) {
        int[] tallies = new int[reachedCount];
        long[] worthThen = new long[reachedCount];
        int stride = tally.stride(candidate.wish());
        int count = 0;
        for (int i = 0; i < reachedCount; i++) {
            int from = reached[i];
            if (tally.open(from, candidate.wish()) && worth[from] + micros(candidate, from) > worth[from + stride]) {
                tallies[count] = from + stride;
                worthThen[count++] = worth[from] + micros(candidate, from);
            }
        }
        return count == 0 ? Exposed.NOTHING : new Exposed(Arrays.copyOf(tallies, count), Arrays.copyOf(worthThen, count));
    }

    /** What a candidate adds after a tally of its night. */
    private long micros(Candidate<T> candidate, int after) {
        long micros = candidate.micros();
        return tally.serves(after, candidate.wish()) ? micros - (long) Math.ceil(LOST_AGAIN * micros) : micros;
    }

    private void take(int index, boolean keep) {
        Exposed done = exposed[index];
        for (int i = 0; i < done.tallies.length; i++) {
            int to = done.tallies[i];
            if (worth[to] == UNREACHED) {
                reached[reachedCount++] = to;
            }
            worth[to] = Math.max(worth[to], done.worth[i]);
        }
        exposed[index] = keep ? done : Exposed.NOTHING;
    }

    private List<Candidate<T>> leadingTo(int reachedLast) {
        List<Candidate<T>> chosen = new ArrayList<>();
        int latestMin = Integer.MAX_VALUE;
        int at = reachedLast;
        long left = worth[at];
        while (at > 0) {
            Candidate<T> last = byOpen.get(last(at, left, latestMin));
            chosen.add(last);
            at -= tally.stride(last.wish());
            left -= micros(last, at);
            latestMin = last.openMin();
        }
        Collections.reverse(chosen);
        return chosen;
    }

    private int last(int at, long left, int latestMin) {
        return IntStream.range(0, byOpen.size()).filter(i -> freeMin(i) <= latestMin && exposed[i].leadsTo(at, left))
                .findFirst().orElseThrow();
    }
}
