package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What one night at one site can serve with all cameras: each has its own schedule, for two may expose at
 * once, and no wish is in two of them.
 */
final class CameraSchedules {

    /** More schedules of several cameras are not joined. */
    private static final int MOST_JOINED = 500_000;

    private final WishCounts counts;
    private final Prices prices;
    private final long mostLoss;
    private final List<NightSchedules> byCamera;
    private final Map<Served, Part> several = new HashMap<>();
    private boolean complete = true;

    /** What some cameras serve together: the last of them, what it serves, and those before. */
    private record Part(long gain, long over, int endMin, int camera, Served own, Part before) {
    }

    /**
     * What a night can serve.
     *
     * @param counts   what may be served on it
     * @param offers   what it offers
     * @param mostLoss no schedule is followed that loses more against the prices
     */
    CameraSchedules(WishCounts counts, List<Offer> offers, int[] changeoverMin, Prices prices,
            long mostLoss) {
        this.counts = counts;
        this.prices = prices;
        this.mostLoss = mostLoss;
        this.byCamera = IntStream.range(0, changeoverMin.length).mapToObj(camera -> new NightSchedules(counts,
                changeoverMin.length == 1 ? offers
                : offers.stream().filter(offer -> offer.camera() == camera).toList(), changeoverMin[camera],
                prices, mostLoss)).toList();
        for (int camera = 0; byCamera.size() > 1 && camera < byCamera.size(); camera++) {
            join(camera);
        }
    }

    private void join(int camera) {
        List<Map.Entry<Served, Part>> before = byLoss(several);
        Map<Served, Part> alone = new HashMap<>();
        byCamera.get(camera).gains().forEach((served, gain) -> alone.put(served,
                new Part(gain, prices.over(counts, served, gain), byCamera.get(camera).endMin(served), camera,
                served, null)));
        alone.forEach(this::keep);
        int joined = 0;
        for (Map.Entry<Served, Part> one : byLoss(alone)) {
            Part own = one.getValue();
            for (Map.Entry<Served, Part> other : before) {
                Part then = other.getValue();
                if (own.over + then.over < -mostLoss) {
                    break;
                } else if (counts.apart(other.getKey(), one.getKey())
                        && counts.fit(other.getKey(), one.getKey())) {
                    keep(counts.sum(other.getKey(), one.getKey()), new Part(then.gain + own.gain,
                            then.over + own.over, Math.max(then.endMin, own.endMin), camera, one.getKey(),
                            then));
                    joined++;
                }
            }
            if (joined > MOST_JOINED) {
                complete = false;
                return;
            }
        }
    }

    private void keep(Served served, Part part) {
        several.merge(served, part, (one, other) -> other.gain > one.gain
                || other.gain == one.gain && other.endMin < one.endMin ? other : one);
    }

    private static List<Map.Entry<Served, Part>> byLoss(Map<Served, Part> parts) {
        return parts.entrySet().stream().map(part -> Map.entry(part.getKey(), part.getValue()))
                .sorted(Comparator.comparingLong(part -> -part.getValue().over)).toList();
    }

    /** Whether all schedules were followed that may be part of a best timetable. */
    boolean complete() {
        return complete && byCamera.stream().allMatch(NightSchedules::complete);
    }

    /** What can be served, at least one wish, and the most that each gains. */
    Map<Served, Long> gains() {
        if (byCamera.size() == 1) {
            return byCamera.get(0).gains();
        }
        Map<Served, Long> gains = new HashMap<>();
        several.forEach((served, part) -> gains.put(served, part.gain));
        return gains;
    }

    /** When the last sheet is done of those that serve something and gain most, at the earliest. */
    int endMin(Served served) {
        return byCamera.size() == 1 ? byCamera.get(0).endMin(served) : several.get(served).endMin;
    }

    /** The exposures, in order of time, that serve something and gain most. */
    List<Timetable.Exposed> exposures(Served served) {
        if (byCamera.size() == 1) {
            return byCamera.get(0).exposures(served);
        }
        List<Timetable.Exposed> exposed = new ArrayList<>();
        for (Part part = several.get(served); part != null; part = part.before) {
            exposed.addAll(byCamera.get(part.camera).exposures(part.own));
        }
        exposed.sort(Timetable.Exposed.IN_TIME);
        return List.copyOf(exposed);
    }
}
