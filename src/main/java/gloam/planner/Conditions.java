package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Says at which minutes of a night each thing holds that a wish needs, apart from its exposure and trails. */
final class Conditions {

    /** How long a trail's lean is taken over, in minutes: its bend within that time changes it by less than 0.01°. */
    private static final int LEAN_MIN = NightClock.NODE_MIN;
    /** Half the Moon's disc and a rim for its glare, in degrees. */
    private static final double MOON_RIM_DEG = 0.5;
    /** Further below the horizon the Moon does not come into a frame before the night's next node. */
    private static final double MOON_FAR_DOWN_DEG = -3;

    private final Wish wish;
    private final NightSky sky;
    private final Aiming aiming;

    private Conditions(Wish wish, NightSky sky, Aiming aiming) {
        this.wish = wish;
        this.sky = sky;
        this.aiming = aiming;
    }

    /** All conditions of a wish on a night, the Sun's first. */
    static List<Condition> of(Wish wish, NightSky sky, Aiming aiming) {
        Conditions conditions = new Conditions(wish, sky, aiming);
        List<Condition> all = new ArrayList<>();
        all.add(new Condition("Sun down", Condition.When.THROUGHOUT, sky.sunDown(), "the Sun does not set"));
        conditions.ofSky(all);
        all.add(conditions.clearOfTerrain());
        conditions.level().ifPresent(all::add);
        if (!wantsMoon(wish, aiming)) {
            all.add(conditions.moonOutside());
        }
        conditions.inFrame().ifPresent(all::add);
        all.addAll(new LimitConditions(wish.limits(), wish.sky(), sky, aiming).all());
        return all;
    }

    private void ofSky(List<Condition> all) {
        Condition dark = new Condition("dark", Condition.When.THROUGHOUT, sky.clock().during(sky.night().darkness()),
                "the Sun does not go below -18°");
        switch (wish.sky()) {
            case DARK -> {
                all.add(dark);
                all.add(new Condition("free of moonlight", Condition.When.THROUGHOUT,
                        where(minute -> SkyLight.DARK_MOONLIGHT_MAG - aiming.light(minute).moonlightMag()), "moonlight all night"));
            }
            case MOONLIT -> {
                all.add(dark);
                all.add(new Condition("Moon up", Condition.When.THROUGHOUT,
                        sky.clock().during(sky.night().moonUp()), "the Moon does not rise"));
            }
            case DUSK -> all.add(new Condition("dusk", Condition.When.AT_OPENING, sky.dusk(), "no evening twilight"));
            case DAWN -> all.add(new Condition("dawn", Condition.When.AT_CLOSING, sky.dawn(), "no morning twilight"));
            case ANY -> { }
        }
    }

    private BitSet where(IntToDoubleFunction margin) {
        return sky.clock().where(sky.sunDown(), margin);
    }

    private Condition clearOfTerrain() {
        if (aiming.aim() instanceof Aim.Follow follow) {
            String name = Aiming.name(follow.target());
            return new Condition(name + " above the skyline", Condition.When.THROUGHOUT,
                    where(minute -> sky.clearanceDeg(aiming.direction(minute))),
                    name + " is below the skyline while the Sun is down");
        }
        Direction direction = aiming.direction(0);
        return new Condition("aim above the skyline", Condition.When.THROUGHOUT,
                sky.clearanceDeg(direction) >= 0 ? sky.sunDown() : new BitSet(), String.format(Locale.ROOT,
                "the aim at altitude %.0f° is below the skyline of %.0f° at azimuth %.0f°; raise it",
                direction.altitude().degrees(), Math.max(0, sky.skylineDeg(direction)),
                direction.azimuth().degrees()));
    }

    private Optional<Condition> level() {
        if (!(aiming.aim() instanceof Aim.Follow follow) || follow.levelWithin().isEmpty()) {
            return Optional.empty();
        }
        double withinDeg = follow.levelWithin().get().degrees();
        String name = Aiming.name(follow.target());
        BitSet level = where(minute -> withinDeg - leanDeg(minute));
        level.and(where(minute -> withinDeg + leanDeg(minute)));
        return Optional.of(new Condition(String.format(Locale.ROOT, "trail of %s within %.0f° of level", name,
                withinDeg), Condition.When.AT_MIDDLE, level, String.format(Locale.ROOT,
                "the trail of %s leans more than %.0f° while the Sun is down", name, withinDeg)));
    }

    /** How far the way of what the camera follows leans from the horizontal, -90° to 90°, whichever way it goes. */
    private double leanDeg(int minute) {
        Direction before = aiming.direction(minute - LEAN_MIN);
        Direction after = aiming.direction(minute + LEAN_MIN);
        double alongRad = Math.IEEEremainder(after.azimuth().minus(before.azimuth()).radians(), 2 * Math.PI)
                * aiming.direction(minute).altitude().cos();
        double upRad = after.altitude().minus(before.altitude()).radians();
        return Math.toDegrees(Math.atan2(upRad, Math.abs(alongRad)));
    }

    /** Whether the Moon itself is in the picture wanted. */
    static boolean wantsMoon(Wish wish, Aiming aiming) {
        return aiming.follows(Body.MOON)
                || wish.records() instanceof Wish.Records.One one && one.body() == Body.MOON;
    }

    private Condition moonOutside() {
        return new Condition("Moon outside the frame",
                aiming.fixed() ? Condition.When.THROUGHOUT : Condition.When.AT_MIDDLE,
                where(minute -> moonOutsideDeg(sky, aiming.framing(minute), minute)), "the Moon is in the frame all night");
    }

    /** Degrees, roughly, by which the Moon stays outside a frame or below the horizon; negative when it shows. */
    static double moonOutsideDeg(NightSky sky, Framing framing, int minute) {
        Direction moon = sky.position(Body.MOON, minute).apparentDirection();
        double altitudeDeg = moon.altitude().degrees();
        return (altitudeDeg < MOON_FAR_DOWN_DEG ? -altitudeDeg : Math.max(-altitudeDeg, outsideDeg(framing, moon))) - MOON_RIM_DEG;
    }

    /** Degrees, roughly, by which a direction lies outside a frame, negative inside. */
    static double outsideDeg(Framing framing, Direction direction) {
        double wideMm = framing.camera().frame().widthMm() / 2;
        double highMm = framing.camera().frame().heightMm() / 2;
        double outsideMm = framing.toFrame(direction)
                .map(point -> Math.max(Math.abs(point.xMm()) - wideMm, Math.abs(point.yMm()) - highMm))
                .orElse(wideMm + highMm);
        return Math.toDegrees(Math.atan(outsideMm / framing.camera().lens().focalLengthMm()));
    }

    /** A body that must record stands in the frame and over the terrain in the middle of the exposure. */
    private Optional<Condition> inFrame() {
        if (!(wish.records() instanceof Wish.Records.One one) || aiming.follows(one.body())) {
            return Optional.empty();
        }
        Body body = one.body();
        return Optional.of(new Condition(body.properName() + " in the frame", Condition.When.AT_MIDDLE, where(minute -> {
            Direction seen = sky.position(body, minute).apparentDirection();
            return Math.min(sky.clearanceDeg(seen), -outsideDeg(aiming.framing(minute), seen));
        }), body.properName() + " is not in the frame while the Sun is down"));
    }
}
