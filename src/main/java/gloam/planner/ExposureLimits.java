package gloam.planner;

import gloam.ephemeris.EarthTurn;
import gloam.gear.FNumber;
import gloam.units.Stops;
import java.util.Optional;

/**
 * The durations that a wish itself leaves of an opening: sky progress, trail length and arc all grow with the duration,
 * so each of them leaves an interval.
 *
 * @param wish   the wish
 * @param blend  how much twilight it wants
 * @param growth how the trail grows, where the wish wants one of some length and that is to count
 */
record ExposureLimits(Wish wish, TwilightShare blend, Optional<TrailGrowth> growth) {

    /** Turn of the sky: a whole turn in a sidereal day of 23 h 56 min 4 s. */
    private static final double TURN_DEG_MIN = EarthTurn.degrees(60);

    /** An opening at an f-number. */
    record Stop(Opening opening, FNumber fNumber, MinuteProgress made) {

        double progress(int durationMin) {
            return made.progress(opening.openAt(durationMin), opening.closeAt(durationMin));
        }

        /** The shortest duration within bounds that makes a tone, or a step over the longest. */
        int durationOf(double toneStops, Bounds bounds) {
            double progress = Stops.factor(toneStops);
            return bounds.firstWhere(min -> progress(min) >= progress, opening.stepMin());
        }
    }

    /** What the turn of the sky and the length of the trail leave. */
    Bounds byTurn(Bounds unbounded, int stepMin) {
        Bounds left = byArc(unbounded, stepMin);
        Bounds bounds = left;
        if (growth.isPresent() && wish.trail().leastMm().isPresent()) {
            double leastMm = wish.trail().leastMm().getAsDouble();
            bounds = bounds.atLeast(bounds.firstWhere(min -> growth.get().lengthMm(min) >= leastMm, stepMin), DurationLimit.TRAIL);
        }
        if (growth.isPresent() && wish.trail().mostMm().isPresent()) {
            double mostMm = wish.trail().mostMm().getAsDouble();
            bounds = bounds.atMost(left.firstWhere(min -> growth.get().lengthMm(min) > mostMm, stepMin) - stepMin,
                    DurationLimit.TRAIL);
        }
        return bounds;
    }

    private Bounds byArc(Bounds left, int stepMin) {
        Between arcDeg = wish.limits().arcDeg();
        double least = Math.ceil(arcDeg.least().orElse(0) / TURN_DEG_MIN / stepMin) * stepMin;
        Bounds bounds = left.atLeast((int) least, DurationLimit.ARC);
        return arcDeg.most().isEmpty() ? bounds : bounds.atMost(
                (int) Math.floor(arcDeg.most().getAsDouble() / TURN_DEG_MIN / stepMin) * stepMin, DurationLimit.ARC);
    }

    /** Whether the light has no say in it. */
    boolean anyLight() {
        return wish.tone() instanceof Wish.Tone.Free && !wish.limits().blends();
    }

    /** What tone and share of twilight leave at an f-number. */
    Bounds byLight(Bounds left, Stop stop) {
        Bounds toned = byTone(left, stop);
        return toned.empty() || !wish.limits().blends() ? toned : toned.firstRunOf(min -> blend.suits(
                stop.opening.openAt(min), stop.opening.closeAt(min), stop.made), stop.opening.stepMin(), DurationLimit.TWILIGHT_SHARE);
    }

    private Bounds byTone(Bounds left, Stop stop) {
        if (left.empty() || wish.tone() instanceof Wish.Tone.Free) {
            return left;
        }
        double mostMiss = Satisfaction.MOST_TONE_MISS_STOPS;
        int tooLight = stop.durationOf(wantedStops() + mostMiss, left);
        Bounds bounds = left.atMost(tooLight - stop.opening.stepMin(), DurationLimit.TONE);
        return wish.tone() instanceof Wish.Tone.AtMost ? bounds
                : bounds.atLeast(stop.durationOf(wantedStops() - mostMiss, left), DurationLimit.TONE);
    }

    /** The tone wanted, or the most of it, in stops. */
    double wantedStops() {
        return wish.tone() instanceof Wish.Tone.Near near ? near.stops()
                : wish.tone() instanceof Wish.Tone.AtMost most ? most.stops() : Double.POSITIVE_INFINITY;
    }

    /** The duration half-way between the bounds that the wish itself sets, though time may not leave it. */
    int middleMin(Bounds bounds, int stepMin) {
        Bounds wished = bounds.shortOfTime() ? byTurn(new Bounds(bounds.leastMin(), (int) wish.longest().toMinutes(),
                bounds.leastBy(), DurationLimit.EXPOSURE), stepMin) : bounds;
        return wished.leastMin() + Math.max(0, wished.gapMin() / -2) / stepMin * stepMin;
    }
}
