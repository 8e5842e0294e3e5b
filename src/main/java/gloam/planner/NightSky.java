package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.trail.TrailEstimator;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;

/** One night at one site as all wishes meet it; what several of them ask is computed once. For one thread at a time. */
final class NightSky {

    private static final double NIGHT_END_SUN_DEG = -18;
    /** The brightest twilight that a dusk or dawn picture may open or close in. */
    private static final double TWILIGHT_START_SUN_DEG = -3;

    private final Night night;
    private final NightClock clock;
    private final Ephemeris ephemeris;
    private final SkyLight light;
    private final TrailEstimator trails;
    private final BitSet sunDown;
    private final SkyLight.Moment[] byNode;

    /**
     * The sky of a night.
     *
     * @param together bodies whose places are asked for all night
     */
    NightSky(Ephemeris ephemeris, Night night, List<Body> together) {
        this.night = night;
        this.clock = NightClock.of(night.span());
        this.ephemeris = new RememberedEphemeris(ephemeris, night.site(), clock, together);
        this.light = new SkyLight(this.ephemeris, night.site());
        this.trails = new TrailEstimator(this.ephemeris, night.site());
        this.sunDown = clock.during(night.sunDown());
        this.byNode = new SkyLight.Moment[clock.minutes() / NightClock.NODE_MIN + 2];
    }

    Night night() {
        return night;
    }

    Site site() {
        return night.site();
    }

    NightClock clock() {
        return clock;
    }

    Ephemeris ephemeris() {
        return ephemeris;
    }

    TrailEstimator trails() {
        return trails;
    }

    /** The minutes with the Sun below the horizon: nothing is ever exposed outside them. */
    BitSet sunDown() {
        return (BitSet) sunDown.clone();
    }

    /** The minutes of evening twilight, Sun between -3° and -18°. */
    BitSet dusk() {
        BitSet dusk = twilight();
        dusk.clear(Math.min(lowestSun(), clock.minutes() + 1), clock.minutes() + 1);
        return dusk;
    }

    /** The minutes of morning twilight, Sun between -18° and -3°. */
    BitSet dawn() {
        BitSet dawn = twilight();
        dawn.clear(0, lowestSun());
        return dawn;
    }

    private BitSet twilight() {
        return clock.where(sunDown, minute -> {
            double sunDeg = sunDeg(minute);
            return Math.min(TWILIGHT_START_SUN_DEG - sunDeg, sunDeg - NIGHT_END_SUN_DEG);
        });
    }

    private int lowestSun() {
        int lowest = sunDown.nextSetBit(0) / NightClock.NODE_MIN * NightClock.NODE_MIN;
        for (int minute = lowest; minute >= 0 && minute <= sunDown.length(); minute += NightClock.NODE_MIN) {
            lowest = sunDeg(minute) < sunDeg(lowest) ? minute : lowest;
        }
        return Math.max(0, lowest);
    }

    private double sunDeg(int minute) {
        return ephemeris.position(Body.SUN, site(), clock.at(minute)).airlessAltitude().degrees();
    }

    /** Where a target stands at a minute. */
    SkyPosition position(Target target, int minute) {
        return ephemeris.position(target, site(), clock.at(minute));
    }

    /** Degrees by which a direction clears both the terrain and the level horizon; negative when it does not. */
    double clearanceDeg(Direction direction) {
        return direction.altitude().degrees() - Math.max(0, skylineDeg(direction));
    }

    /** Altitude of the terrain below or above a direction, in degrees. */
    double skylineDeg(Direction direction) {
        return site().skyline().altitudeAt(direction.azimuth()).degrees();
    }

    /** The light of a direction at an instant. */
    SkyLight.Sample light(Direction direction, Instant at) {
        return light.at(direction, at);
    }

    /** The light of a direction at a node. */
    SkyLight.Sample light(Direction direction, int nodeMin) {
        int node = nodeMin / NightClock.NODE_MIN;
        if (byNode[node] == null) {
            byNode[node] = light.moment(clock.at(nodeMin));
        }
        return byNode[node].at(direction);
    }
}
