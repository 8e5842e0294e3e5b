package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.planner.Condition.When;
import gloam.planner.Requirement.Measure;
import gloam.planner.Requirement.Plain;
import gloam.units.Angle;
import gloam.units.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * All that a wish requires of a night apart from its exposure and trails: the one list that the timetable
 * asks by the minute and the ranking of nights at few looks.
 */
final class Conditions {

    private final Wish wish;
    private final NightSky sky;
    private final Aiming aiming;
    private final List<Condition> all = new ArrayList<>();

    private Conditions(Wish wish, NightSky sky, Aiming aiming) {
        this.wish = wish;
        this.sky = sky;
        this.aiming = aiming;
    }

    /** All conditions of a wish on a night: the site's and the Sun's first. */
    static List<Condition> of(Wish wish, NightSky sky, Aiming aiming) {
        Conditions conditions = new Conditions(wish, sky, aiming);
        if (!wish.limits().allow(sky.site())) {
            conditions.during(new Requirement.AtSite(wish.limits().sites()), List.of());
        }
        conditions.during(Plain.SUN_DOWN, sky.sunDownSpans());
        sky.awake().ifPresent(conditions::addAwake);
        conditions.all.addAll(wish.sky().conditions(sky, aiming));
        conditions.addAim();
        conditions.addFrame();
        conditions.addLimits(wish.limits());
        return conditions.all;
    }

    private void during(Requirement what, List<Interval> spans) {
        all.add(Condition.during(what, sky.clock(), spans));
    }

    private void holding(Requirement what, When when, UnaryOperator<BitSet> among) {
        all.add(new Condition(what, when, among, Optional.empty()));
    }

    private void where(Requirement what, When when, IntToDoubleFunction margin) {
        all.add(Condition.where(what, when, sky.clock(), margin));
    }

    /** Bounds are asked for one by one: both together may hold for less time than lies between two looks. */
    private void between(Requirement what, When when, Between bounds, IntToDoubleFunction number) {
        holding(what, when, among -> sky.clock().where(
                sky.clock().where(among, minute -> bounds.overLeast(number.applyAsDouble(minute))),
                minute -> bounds.underMost(number.applyAsDouble(minute))));
    }

    /** As the shutter opens, and before that while people set up, and as it closes. */
    private void addAwake(NightSky.Awake awake) {
        Requirement up = new Requirement.Awake(awake.hours());
        int beforeMin = (int) awake.preparation().toMinutes();
        holding(up, When.AT_OPENING,
                among -> byTheClock(awake.hours(), beforeMin, byTheClock(awake.hours(), 0, among)));
        holding(up, When.AT_CLOSING, among -> byTheClock(awake.hours(), 0, among));
    }

    private void addAim() {
        if (aiming.aim() instanceof Aim.Follow follow) {
            where(new Requirement.TargetUp(follow.target()), When.THROUGHOUT,
                    minute -> sky.clearanceDeg(aiming.direction(minute)));
            follow.levelWithin().ifPresent(within -> between(new Requirement.Level(follow.target(), within),
                    When.AT_MIDDLE, Between.of(-within.degrees(), within.degrees()), aiming::leanDeg));
            addPlace(follow);
        } else {
            Direction aim = aiming.direction(0);
            Requirement up = new Requirement.AimUp(aim, Angle.ofDegrees(Math.max(0, sky.skylineDeg(aim))));
            all.add(Condition.at(up, When.THROUGHOUT,
                    sky.clearanceDeg(aim) >= 0 ? sky.sunDown() : new BitSet()));
        }
    }

    private void addPlace(Aim.Follow follow) {
        if (!follow.altitudeDeg().any()) {
            between(new Requirement.TargetHigh(follow.target(), follow.altitudeDeg()), When.AT_MIDDLE,
                    follow.altitudeDeg(), minute -> aiming.direction(minute).altitude().degrees());
        }
        follow.azimuth().ifPresent(sector -> holding(new Requirement.TargetToward(follow.target(), sector),
                When.AT_MIDDLE, among -> minutes(among, minute -> sector.holds(
                aiming.direction(minute).azimuth().positive().degrees()))));
    }

    private void addFrame() {
        if (!wish.letsMoonIn()) {
            where(Plain.MOON_OUTSIDE, aiming.fixed() ? When.THROUGHOUT : When.AT_MIDDLE,
                    minute -> FrameEdge.moonOutsideDeg(sky, aiming.framing(minute), minute));
        } else if (!wish.ofMoon()) {
            inFrame(Body.MOON);
        }
        wish.mustRecord().stream().filter(target -> !aiming.follows(target)).forEach(this::inFrame);
    }

    private void inFrame(Target target) {
        where(new Requirement.InFrame(target), When.AT_MIDDLE,
                minute -> FrameEdge.insideDeg(sky, aiming.framing(minute), target, minute));
    }

    private void addLimits(Limits limits) {
        within(Measure.MOON_ALTITUDE_DEG, When.THROUGHOUT, limits.moonAltitudeDeg(),
                minute -> sky.position(Body.MOON, minute).apparentAltitude().degrees());
        within(Measure.MOON_LIT_PERCENT, When.AT_MIDDLE, limits.moonLitPercent(), minute ->
                100 * sky.ephemeris().appearance(Body.MOON, sky.site(), sky.clock().at(minute))
                .illuminatedFraction());
        limits.moonSide().ifPresent(side -> where(new Requirement.MoonOn(side), When.AT_MIDDLE,
                minute -> side.marginDeg(
                sky.position(Body.MOON, minute).azimuth().minus(aiming.direction(minute).azimuth())
                .degrees())));
        within(Measure.SUN_DEPTH_DEG, wish.sky().moment(), limits.sunDepthDeg(),
                minute -> -sky.sunDeg(minute));
        limits.time().ifPresent(time -> holding(
                new Requirement.ByTheClock(time, ClockChange.shown(sky.night(), time)), When.THROUGHOUT,
                among -> byTheClock(time, 0, among)));
    }

    private void within(Measure measure, When when, Between bounds, IntToDoubleFunction number) {
        if (!bounds.any()) {
            between(new Requirement.Within(measure, bounds), when, bounds, number);
        }
    }

    /** Those of some minutes at which, some minutes before, the clocks show a time of night. */
    private BitSet byTheClock(Limits.TimeOfNight time, int beforeMin, BitSet among) {
        return minutes(among, minute -> time.holds(sky.clock().at(minute - beforeMin)
                .atZone(sky.site().zone()).toLocalTime()));
    }

    private static BitSet minutes(BitSet among, IntPredicate holding) {
        BitSet minutes = new BitSet();
        for (int minute = among.nextSetBit(0); minute >= 0; minute = among.nextSetBit(minute + 1)) {
            minutes.set(minute, holding.test(minute));
        }
        return minutes;
    }
}
