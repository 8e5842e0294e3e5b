package gloam.planner;

import gloam.ephemeris.EarthTurn;
import java.time.Duration;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/**
 * The durations that a wish itself leaves of an exposure by the turn of the sky and the length of the trail,
 * which both grow with the duration; and those that are looked at. For one thread at a time.
 */
final class DurationLimits {

    /** Turn of the sky: a whole turn in a sidereal day of 23 h 56 min 4 s. */
    private static final double TURN_DEG_MIN = EarthTurn.degrees(60);
    private static final int DAY_MIN = 1440;
    /** Trails are followed for so many such steps as an exposure asks for, on either side. */
    private static final int FOLLOWED_MIN = 180;
    /**
     * The trail of what a camera follows is taken anew so often: its speed changes by less than a thousandth.
     */
    private static final int GROWTH_MIN = 60;
    /** Up to so many minutes a shutter is timed in steps of one, two, five, ten, and then fifteen. */
    private static final int[] TIMED_UP_TO_MIN = {20, 40, 120, 300, DAY_MIN + 1};
    private static final int[] TIMED_IN_MIN = {1, 2, 5, 10, 15};

    private final Wish wish;
    private final NightSky sky;
    private final Aiming aiming;
    private final TrailGrowth[] growth;

    /** The limits of a wish on a night. */
    DurationLimits(Wish wish, NightSky sky, Aiming aiming) {
        this.wish = wish;
        this.sky = sky;
        this.aiming = aiming;
        this.growth = new TrailGrowth[sky.clock().minutes() / GROWTH_MIN + 2];
    }

    /** Whether an exposure turns as far and draws as long a trail as wished. */
    boolean allow(int middleMin, int durationMin) {
        return wish.limits().arcDeg().margin(durationMin * TURN_DEG_MIN) >= 0
                && (wish.trail().free() || between(lengthMm(middleMin, durationMin)) >= 0);
    }

    private double between(double lengthMm) {
        return new Between(wish.trail().leastMm(), wish.trail().mostMm()).margin(lengthMm);
    }

    private double lengthMm(int middleMin, int durationMin) {
        int step = aiming.fixed() ? 0 : (middleMin + GROWTH_MIN / 2) / GROWTH_MIN;
        if (growth[step] == null || growth[step].longestMin() < durationMin) {
            int atMin = aiming.fixed() ? sky.clock().minutes() / 2 : step * GROWTH_MIN;
            int halfMin = ((durationMin - 1) / 2 / FOLLOWED_MIN + 1) * FOLLOWED_MIN;
            growth[step] = TrailGrowth.of(sky, aiming.framing(atMin), aiming, atMin, halfMin);
        }
        return growth[step].lengthMm(durationMin);
    }

    /** What they leave of durations around a minute. */
    Bounds byTurn(Bounds left, int middleMin, int stepMin) {
        Between arcDeg = wish.limits().arcDeg();
        Bounds bounds = left;
        if (arcDeg.least().isPresent()) {
            bounds = bounds.atLeast(first(min -> min * TURN_DEG_MIN >= arcDeg.least().getAsDouble(), stepMin),
                    DurationLimit.ARC);
        }
        if (arcDeg.most().isPresent()) {
            bounds = bounds.atMost(first(min -> min * TURN_DEG_MIN > arcDeg.most().getAsDouble(), stepMin)
                    - stepMin, DurationLimit.ARC);
        }
        if (wish.trail().leastMm().isPresent()) {
            double leastMm = wish.trail().leastMm().getAsDouble();
            bounds = bounds.atLeast(first(min -> lengthMm(middleMin, min) >= leastMm, stepMin),
                    DurationLimit.TRAIL);
        }
        if (wish.trail().mostMm().isPresent()) {
            double mostMm = wish.trail().mostMm().getAsDouble();
            bounds = bounds.atMost(first(min -> lengthMm(middleMin, min) > mostMm, stepMin) - stepMin,
                    DurationLimit.TRAIL);
        }
        return bounds;
    }

    /**
     * The first duration of a day from which on something that grows holds, those up to the wish's longest
     * looked at first; a step over a day for none.
     */
    private int first(IntPredicate growing, int stepMin) {
        int longestMin = (longestMin(wish) + stepMin - 1) / stepMin * stepMin;
        Bounds durations = new Bounds(stepMin, DAY_MIN, DurationLimit.EXPOSURE, DurationLimit.EXPOSURE);
        return (longestMin >= DAY_MIN || !growing.test(longestMin) ? durations
                : durations.atMost(longestMin, DurationLimit.EXPOSURE)).firstWhere(growing, stepMin);
    }

    /**
     * The durations in minutes that are looked at, from the shortest on: those by which a shutter is timed by
     * hand, and the ends of what the wish leaves; even ones for a camera that follows, whose middle is a
     * whole minute.
     *
     * @param open from when to when the shutter may be open at all
     */
    int[] durations(MinuteRun open) {
        int stepMin = aiming.fixed() ? 1 : 2;
        Bounds wished = new Bounds(shortestMin(wish), longestMin(wish), DurationLimit.EXPOSURE,
                DurationLimit.EXPOSURE)
                .inStepsOf(stepMin);
        Set<Integer> durations = new TreeSet<>();
        int timed = 0;
        for (int min = stepMin; min <= wished.mostMin(); min += Math.max(stepMin, TIMED_IN_MIN[timed])) {
            while (min >= TIMED_UP_TO_MIN[timed]) {
                timed++;
            }
            durations.add(aiming.fixed() ? min : min / 2 * 2);
        }
        boolean same = aiming.fixed() || wish.trail().free();
        for (int middleMin = open.first(); middleMin <= (same ? open.first() : open.last());
                middleMin += GROWTH_MIN / 2) {
            Bounds left = byTurn(wished, middleMin, stepMin);
            durations.add(left.leastMin());
            durations.add(left.mostMin());
        }
        return durations.stream().filter(min -> min >= wished.leastMin() && min <= wished.mostMin())
                .mapToInt(min -> min).toArray();
    }

    /** The shortest exposure wanted, in whole minutes. */
    static int shortestMin(Wish wish) {
        return Math.max(1, (int) wish.shortest().plus(Duration.ofMinutes(1)).minusNanos(1).toMinutes());
    }

    /** The longest exposure wanted, in whole minutes. */
    static int longestMin(Wish wish) {
        return (int) wish.longest().toMinutes();
    }
}
