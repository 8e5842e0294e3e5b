package gloam.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One way to serve a wish on one night at one site.
 *
 * @param shot     what would be exposed
 * @param wish     number of the wish in the trip, from 0
 * @param openMin  when the shutter opens, in minutes of the night
 * @param closeMin when it closes, later than it opens
 * @param value    what it adds to the trip, more than 0
 * @param <T>      whatever the caller wants back
 */
record Candidate<T>(T shot, int wish, int openMin, int closeMin, double value) {

    /** Earlier start first, then the order of the wishes, then the shorter. */
    static final Comparator<Candidate<?>> ORDER = Comparator.<Candidate<?>>comparingInt(Candidate::openMin)
            .thenComparingInt(Candidate::wish).thenComparingInt(Candidate::closeMin);

    private static final double MICRO = 1e6;

    /** The value as a whole number of millionths, so that sums are exact and equals are equal. */
    long micros() {
        return Math.round(value * MICRO);
    }

    /** Whether both can be exposed on one camera that needs that long from closing to opening. */
    boolean clears(Candidate<?> other, int changeoverMin) {
        return closeMin + changeoverMin <= other.openMin || other.closeMin + changeoverMin <= openMin;
    }

    /**
     * The candidates for which no other one of the same wish lies inside their time and is worth no less, in
     * {@link #ORDER}. A best timetable of these is a best timetable of all.
     */
    static <T> List<Candidate<T>> undominated(List<Candidate<T>> candidates) {
        List<Candidate<T>> inward = new ArrayList<>(candidates);
        inward.sort(Comparator.<Candidate<T>>comparingInt(Candidate::wish)
                .thenComparing(Comparator.<Candidate<T>>comparingInt(Candidate::openMin).reversed())
                .thenComparingInt(Candidate::closeMin)
                .thenComparing(Comparator.<Candidate<T>>comparingLong(Candidate::micros).reversed()));
        List<Candidate<T>> kept = new ArrayList<>();
        TreeMap<Integer, Long> bestByClose = new TreeMap<>();
        int wish = -1;
        for (Candidate<T> candidate : inward) {
            if (candidate.wish != wish) {
                bestByClose.clear();
                wish = candidate.wish;
            }
            Map.Entry<Integer, Long> inside = bestByClose.floorEntry(candidate.closeMin);
            if (inside == null || inside.getValue() < candidate.micros()) {
                kept.add(candidate);
                bestByClose.tailMap(candidate.closeMin, true).values().removeIf(best -> best <= candidate.micros());
                bestByClose.put(candidate.closeMin, candidate.micros());
            }
        }
        kept.sort(ORDER);
        return kept;
    }
}
