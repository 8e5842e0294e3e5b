package gloam.planner;

import gloam.ephemeris.EarthTurn;
import gloam.exposure.ExposureEngine;
import gloam.exposure.TrailLimit;
import gloam.gear.FNumber;
import gloam.planner.ExposureLimits.Stop;
import gloam.trail.Framing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Chooses f-numbers and durations for an opening: sky progress and trail length both grow with the duration, so each aim
 * cuts an interval of durations by root finding, and what is left is judged by {@link Satisfaction}.
 */
final class ShotChooser {

    /** A shorter exposure offered beside the right one, for a crowded night. */
    private static final double HURRIED_STOPS = -0.75;

    private final Wish wish;
    private final Kit kit;
    private final ExposureLimits limits;
    private final TrailAims trails;
    private final Blanks blanks;

    /** Chooses for a wish on a night. */
    ShotChooser(Kit kit, ExposureLimits limits, TrailAims trails) {
        this.wish = limits.wish();
        this.kit = kit;
        this.limits = limits;
        this.trails = trails;
        this.blanks = new Blanks(wish, kit, trails);
    }

    /**
     * What an opening is good for.
     *
     * @param shots    from the shortest to the most satisfying: each longer one satisfies more
     * @param conflict where there is no shot, the durations that come nearest to being left, and the f-number
     * @param failed   where none of the shots considered is good for anything, the nearest to being so
     */
    record Offer(List<Shot> shots, Conflict conflict, Optional<Failed> failed) {
    }

    /** Durations left at an f-number, or the conflict of aims that leaves none. */
    record Conflict(Bounds bounds, FNumber fNumber) {
    }

    private record Draft(FNumber fNumber, int durationMin, double progress, double toneSatisfaction, double safety) {

        /** The merit it has if all records that must. */
        long merit() {
            return Shot.merit(toneSatisfaction, safety);
        }
    }

    private record Judged(TrailLimit.Circumstances on, Shot shot, boolean blank) {

        static final Comparator<Judged> ORDER = Comparator.comparingLong((Judged judged) -> judged.shot.merit())
                .thenComparingDouble(judged -> TrailLimit.magnitude(judged.on));
    }

    /**
     * The best shots for an opening.
     *
     * @param left the durations that time leaves
     */
    Offer offer(Opening opening, Framing framing, FramedLight light, Bounds left) {
        Bounds turned = limits.byTurn(left, opening.stepMin());
        Map<Draft, Judged> known = new IdentityHashMap<>();
        Function<Draft, Judged> judge =
                draft -> known.computeIfAbsent(draft, unknown -> judged(unknown, opening, framing, light));
        List<Draft> drafts = new ArrayList<>();
        Conflict nearest = new Conflict(turned, kit.fNumbers().get(0));
        for (FNumber fNumber : kit.fNumbers()) {
            Stop stop = new Stop(opening, fNumber, light.through(fNumber));
            Bounds bounds = limits.byLight(turned, stop);
            if (bounds.empty()) {
                boolean nearer = !nearest.bounds.empty() || bounds.gapMin() < nearest.bounds.gapMin();
                nearest = nearer ? new Conflict(bounds, fNumber) : nearest;
            } else {
                List<Draft> added = drafts(bounds, stop);
                drafts.addAll(added);
                if (bounds.equals(turned) && settles(added, judge)) {
                    break;
                }
            }
        }
        List<Shot> best = bestOf(drafts, judge);
        return new Offer(best, nearest, !best.isEmpty() ? Optional.empty()
                : known.values().stream().map(judged -> failed(judged, light)).min(Failed.ORDER));
    }

    private Failed failed(Judged judged, FramedLight light) {
        return new Failed(judged.shot,
                judged.blank ? Optional.of(blanks.reason(judged.shot, light)) : Optional.empty());
    }

    /** Whether smaller stops need no look: no tone is aimed at, none is passed, and this stop is without fault. */
    private boolean settles(List<Draft> drafts, Function<Draft, Judged> judge) {
        return wish.tone() instanceof Wish.Tone.AtMost && drafts.stream().map(judge).noneMatch(Judged::blank)
                && drafts.stream().allMatch(draft -> judge.apply(draft).shot.merit() == draft.merit());
    }

    private List<Draft> drafts(Bounds bounds, Stop stop) {
        if (!(wish.tone() instanceof Wish.Tone.Near)) {
            int middle = limits.middleMin(bounds, stop.opening().stepMin());
            int near = Math.min(middle, bounds.mostMin());
            double safety = middle == bounds.leastMin() ? 1 : (near - bounds.leastMin()) / (double) (middle - bounds.leastMin());
            return List.of(draft(bounds.leastMin(), stop, near == bounds.leastMin() ? safety : 0),
                    draft(near, stop, safety));
        }
        List<Draft> drafts = new ArrayList<>();
        for (double stops : new double[] {limits.wantedStops() + HURRIED_STOPS, limits.wantedStops()}) {
            drafts.add(draft(Math.min(stop.durationOf(stops, bounds), bounds.mostMin()), stop, 1));
        }
        return drafts;
    }

    private Draft draft(int durationMin, Stop stop, double safety) {
        double progress = stop.progress(durationMin);
        return new Draft(stop.fNumber(), durationMin, progress,
                Satisfaction.ofTone(wish.tone(), ExposureEngine.toneStops(progress)), safety);
    }

    /** From the shortest on, the shots that have more merit than every shorter one. */
    private List<Shot> bestOf(List<Draft> drafts, Function<Draft, Judged> judge) {
        List<Draft> byDuration = new ArrayList<>(drafts);
        byDuration.sort(Comparator.comparingInt(Draft::durationMin));
        List<Shot> best = new ArrayList<>();
        int after;
        for (int first = 0; first < byDuration.size(); first = after) {
            after = first + 1;
            while (after < byDuration.size() && byDuration.get(after).durationMin == byDuration.get(first).durationMin) {
                after++;
            }
            long beaten = best.isEmpty() ? 0 : best.get(best.size() - 1).merit();
            bestOf(byDuration.subList(first, after), beaten, judge).ifPresent(best::add);
        }
        return best;
    }

    /**
     * Of equally long drafts the one of most merit, if that beats another's; of equals the one of the deepest trail limit.
     *
     * <p>Where the tone has a bound that is the widest stop, so the first without fault settles it.
     */
    private Optional<Shot> bestOf(List<Draft> equallyLong, long beaten, Function<Draft, Judged> judge) {
        Judged best = null;
        for (Draft draft : equallyLong) {
            if (draft.merit() > beaten && (best == null || draft.merit() >= best.shot.merit())) {
                Judged judged = judge.apply(draft);
                best = !judged.blank && (best == null || Judged.ORDER.compare(judged, best) > 0) ? judged : best;
                if (best != null && best.shot.merit() == draft.merit() && !(wish.tone() instanceof Wish.Tone.Free)) {
                    break;
                }
            }
        }
        return Optional.ofNullable(best).map(Judged::shot).filter(shot -> shot.merit() > beaten);
    }

    private Judged judged(Draft draft, Opening opening, Framing framing, FramedLight light) {
        TrailLimit.Circumstances on = kit.circumstances(light, draft.fNumber,
                opening.openAt(draft.durationMin), opening.closeAt(draft.durationMin));
        double shortfallMag = trails.shortfallMag(framing, opening.middleAt(draft.durationMin), on);
        Shot shot = new Shot(framing, opening.openAt(draft.durationMin), opening.closeAt(draft.durationMin),
                draft.fNumber, ExposureEngine.toneStops(draft.progress), shortfallMag,
                draft.toneSatisfaction * Satisfaction.ofRecords(shortfallMag),
                Math.min(draft.safety, trails.safety(shortfallMag)));
        return new Judged(on, shot, blanks.blank(shot, on));
    }
}
