package gloam.planner;

import gloam.exposure.ExposureEngine;
import gloam.exposure.TrailLimit;
import gloam.gear.FNumber;
import gloam.trail.Framing;
import gloam.units.Stops;
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
    /** Turn of the sky: a whole turn in a sidereal day of 23 h 56 min 4 s. */
    private static final double TURN_DEG_MIN = 360 / 1436.07;

    private final Wish wish;
    private final Kit kit;
    private final Optional<TrailGrowth> growth;
    private final TrailAims trails;
    private final Blanks blanks;
    private final Blend blend;

    /**
     * Chooses for a wish on a night.
     *
     * @param growth how the trail grows, where the wish wants one of some length
     */
    ShotChooser(Wish wish, Kit kit, Optional<TrailGrowth> growth, TrailAims trails, Blend blend) {
        this.wish = wish;
        this.kit = kit;
        this.growth = growth;
        this.trails = trails;
        this.blanks = new Blanks(wish, kit, trails);
        this.blend = blend;
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

    /** An opening at an f-number. */
    private record Stop(Opening opening, FNumber fNumber, MadeTone made) {

        double progress(int durationMin) {
            return made.progress(opening.openAt(durationMin), opening.closeAt(durationMin));
        }

        /** The shortest duration within bounds that makes a tone, or a step over the longest. */
        int durationOf(double toneStops, Bounds bounds) {
            double progress = Stops.factor(toneStops);
            return bounds.firstWhere(min -> progress(min) >= progress, opening.stepMin());
        }
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
        Bounds byTrail = byTrail(left, opening.stepMin());
        Map<Draft, Judged> known = new IdentityHashMap<>();
        Function<Draft, Judged> judge =
                draft -> known.computeIfAbsent(draft, unknown -> judged(unknown, opening, framing, light));
        List<Draft> drafts = new ArrayList<>();
        Conflict nearest = new Conflict(byTrail, kit.fNumbers().get(0));
        for (FNumber fNumber : kit.fNumbers()) {
            Stop stop = new Stop(opening, fNumber, light.through(fNumber));
            Bounds bounds = byBlend(byTone(byTrail, stop), stop);
            if (bounds.empty()) {
                boolean nearer = !nearest.bounds.empty() || bounds.gapMin() < nearest.bounds.gapMin();
                nearest = nearer ? new Conflict(bounds, fNumber) : nearest;
            } else {
                List<Draft> added = drafts(bounds, stop);
                drafts.addAll(added);
                if (bounds.equals(byTrail) && settles(added, judge)) {
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

    private Bounds byBlend(Bounds left, Stop stop) {
        return left.empty() || !wish.limits().blends() ? left : left.firstRunOf(min -> blend.suits(
                stop.opening.openAt(min), stop.opening.closeAt(min), stop.made), stop.opening.stepMin(), Bounds.Cut.BLEND);
    }

    private Bounds byArc(Bounds left, int stepMin) {
        Between arcDeg = wish.limits().arcDeg();
        double least = Math.ceil(arcDeg.least().orElse(0) / TURN_DEG_MIN / stepMin) * stepMin;
        Bounds bounds = left.atLeast((int) least, Bounds.Cut.ARC);
        return arcDeg.most().isEmpty() ? bounds : bounds.atMost(
                (int) Math.floor(arcDeg.most().getAsDouble() / TURN_DEG_MIN / stepMin) * stepMin, Bounds.Cut.ARC);
    }

    private Bounds byTrail(Bounds unbounded, int stepMin) {
        Bounds left = byArc(unbounded, stepMin);
        Bounds bounds = left;
        if (wish.trail().leastMm().isPresent()) {
            double leastMm = wish.trail().leastMm().getAsDouble();
            bounds = bounds.atLeast(bounds.firstWhere(min -> growth.orElseThrow().lengthMm(min) >= leastMm, stepMin), Bounds.Cut.TRAIL);
        }
        if (wish.trail().mostMm().isPresent()) {
            double mostMm = wish.trail().mostMm().getAsDouble();
            bounds = bounds.atMost(left.firstWhere(min -> growth.orElseThrow().lengthMm(min) > mostMm, stepMin) - stepMin,
                    Bounds.Cut.TRAIL);
        }
        return bounds;
    }

    private Bounds byTone(Bounds left, Stop stop) {
        if (left.empty() || wish.tone() instanceof Wish.Tone.Free) {
            return left;
        }
        double mostMiss = Satisfaction.MOST_TONE_MISS_STOPS;
        int tooLight = stop.durationOf(wantedStops() + mostMiss, left);
        Bounds bounds = left.atMost(tooLight - stop.opening.stepMin(), Bounds.Cut.TONE);
        return wish.tone() instanceof Wish.Tone.AtMost ? bounds
                : bounds.atLeast(stop.durationOf(wantedStops() - mostMiss, left), Bounds.Cut.TONE);
    }

    private double wantedStops() {
        return wish.tone() instanceof Wish.Tone.Near near ? near.stops()
                : wish.tone() instanceof Wish.Tone.AtMost most ? most.stops() : Double.POSITIVE_INFINITY;
    }

    private List<Draft> drafts(Bounds bounds, Stop stop) {
        if (!(wish.tone() instanceof Wish.Tone.Near)) {
            int middle = middleMin(bounds, stop.opening.stepMin());
            int near = Math.min(middle, bounds.mostMin());
            double safety = middle == bounds.leastMin() ? 1 : (near - bounds.leastMin()) / (double) (middle - bounds.leastMin());
            return List.of(draft(bounds.leastMin(), stop, near == bounds.leastMin() ? safety : 0),
                    draft(near, stop, safety));
        }
        List<Draft> drafts = new ArrayList<>();
        for (double stops : new double[] {wantedStops() + HURRIED_STOPS, wantedStops()}) {
            drafts.add(draft(Math.min(stop.durationOf(stops, bounds), bounds.mostMin()), stop, 1));
        }
        return drafts;
    }

    /** The duration half-way between the bounds that the wish itself sets, though time may not leave it. */
    private int middleMin(Bounds bounds, int stepMin) {
        Bounds wished = bounds.shortOfTime() ? byTrail(new Bounds(bounds.leastMin(), (int) wish.longest().toMinutes(),
                bounds.leastBy(), Bounds.Cut.EXPOSURE), stepMin) : bounds;
        return wished.leastMin() + Math.max(0, wished.gapMin() / -2) / stepMin * stepMin;
    }

    private Draft draft(int durationMin, Stop stop, double safety) {
        double progress = stop.progress(durationMin);
        return new Draft(stop.fNumber, durationMin, progress,
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
