package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.gear.Camera;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import gloam.units.Interval;

/** Where the camera of a wish points on a night, by the minute at the middle of the exposure. */
final class Aiming {

    /**
     * How long a trail's lean is taken over, in minutes: its bend within that time changes it by less than
     * 0.01°.
     */
    private static final int LEAN_MIN = NightClock.NODE_MIN;

    private final Aim aim;
    private final NightSky sky;
    private final Camera camera;
    private final Direction[] followed;
    private final SkyLight.Sample[] light;
    private SkyLight.Patch fixedPatch;

    /** The aim of a wish on a night. */
    Aiming(Aim aim, NightSky sky, Camera camera) {
        this.aim = aim instanceof Aim.Pole pole ? new Aim.Point(sky.trails().pole(), pole.roll()) : aim;
        this.sky = sky;
        this.camera = camera;
        this.followed = new Direction[sky.clock().minutes() + 1];
        this.light = new SkyLight.Sample[sky.clock().nodes()];
    }

    Aim aim() {
        return aim;
    }

    Camera camera() {
        return camera;
    }

    /** Whether the camera points the same way whatever the minute. */
    boolean fixed() {
        return aim instanceof Aim.Point;
    }

    /** Where the frame's centre looks when the middle of the exposure is at that minute. */
    Direction direction(int middleMin) {
        return aim instanceof Aim.Follow follow ? direction(follow.target(), middleMin) : ((Aim.Point) aim)
                .direction();
    }

    private Direction direction(Target target, int minute) {
        if (minute < 0 || minute >= followed.length) {
            return sky.position(target, minute).apparentDirection();
        }
        if (followed[minute] == null) {
            followed[minute] = sky.position(target, minute).apparentDirection();
        }
        return followed[minute];
    }

    /**
     * How far the way of what the camera follows leans from the horizontal, -90° to 90°, whichever way it
     * goes.
     */
    double leanDeg(int minute) {
        Direction before = direction(minute - LEAN_MIN);
        Direction after = direction(minute + LEAN_MIN);
        double alongRad = Math.IEEEremainder(after.azimuth().minus(before.azimuth()).radians(), 2 * Math.PI)
                * direction(minute).altitude().cos();
        double upRad = after.altitude().minus(before.altitude()).radians();
        return Math.toDegrees(Math.atan2(upRad, Math.abs(alongRad)));
    }

    /** The light at the frame's centre at a node, when that is the middle of the exposure. */
    SkyLight.Sample light(int nodeMin) {
        int node = nodeMin / NightClock.NODE_MIN;
        if (light[node] == null) {
            light[node] = sky.light(patch(nodeMin), nodeMin);
        }
        return light[node];
    }

    private SkyLight.Patch patch(int middleMin) {
        if (!fixed()) {
            return sky.patch(direction(middleMin));
        }
        if (fixedPatch == null) {
            fixedPatch = sky.patch(direction(middleMin));
        }
        return fixedPatch;
    }

    /** The framing for an exposure with its middle at that minute. */
    Framing framing(int middleMin) {
        return new Framing(direction(middleMin), aim.roll(), camera);
    }

    /** What stands at the frame's centre in the middle of an exposure. */
    Target centre(Framing framing, Interval open) {
        return aim instanceof Aim.Follow follow ? follow.target() : sky.trails().starAt(framing, 0, 0, open);
    }

    /** Whether that is what the camera follows. */
    boolean follows(Target target) {
        return aim instanceof Aim.Follow follow && follow.target().equals(target);
    }
}
