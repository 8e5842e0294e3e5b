package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.ephemeris.Twilight;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One night at one site as all wishes meet it; what several of them ask is computed once. For one thread at a
 * time.
 */
final class NightSky {

    private static final double NIGHT_END_SUN_DEG = Twilight.ASTRONOMICAL.limit().degrees();
    /** The brightest twilight that a dusk or dawn picture may open or close in. */
    private static final double TWILIGHT_START_SUN_DEG = -3;

    private static final int COURSE_MIN = 15;

    private final Night night;
    private final NightClock clock;
    private final Ephemeris ephemeris;
    private final SkyLight light;
    private final TrailEstimator trails;
    private final List<Interval> sunDownSpans;
    private final BitSet sunDown;
    private final SkyLight.Moment[] byNode;
    private final Optional<Awake> awake;
    private BitSet dusk;
    private BitSet dawn;

    /**
     * The sky of a night.
     *
     * @param together  bodies whose places are asked for all night
     * @param notBefore when there is nothing to be exposed before an instant
     * @param awake     when people are up, if not all night
     */
    NightSky(Ephemeris ephemeris, Night night, List<Body> together, Optional<Instant> notBefore,
            Optional<Awake> awake) {
        this.night = night;
        this.clock = NightClock.of(night.span());
        this.ephemeris = new RememberedEphemeris(ephemeris, night.site(), clock, together);
        this.light = new SkyLight(this.ephemeris, night.site());
        this.trails = new TrailEstimator(this.ephemeris, night.site());
        this.sunDownSpans = night.sunDown().stream().flatMap(span -> from(span, notBefore).stream()).toList();
        this.sunDown = clock.during(sunDownSpans);
        this.awake = awake;
        this.byNode = new SkyLight.Moment[clock.nodes()];
    }

    /**
     * When people are up.
     *
     * @param hours       by the site's clocks
     * @param preparation how long before opening they must be up
     */
    record Awake(Limits.TimeOfNight hours, Duration preparation) {
    }

    private static Optional<Interval> from(Interval span, Optional<Instant> notBefore) {
        Instant from = notBefore.filter(span.start()::isBefore).orElse(span.start());
        return from.isBefore(span.endExclusive()) ? Optional.of(new Interval(from, span.endExclusive()))
                : Optional.empty();
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

    /** When people are up, if not all night. */
    Optional<Awake> awake() {
        return awake;
    }

    /** The minutes with the Sun below the horizon: nothing is ever exposed outside them. */
    BitSet sunDown() {
        return (BitSet) sunDown.clone();
    }

    /** When the Sun is below the horizon and something may be exposed. */
    List<Interval> sunDownSpans() {
        return sunDownSpans;
    }

    /** The minutes with the Sun below -18°, from the first to the last; none where it does not go so low. */
    MinuteRun darkRun() {
        BitSet dark = clock.during(night.darkness());
        return dark.isEmpty() ? new MinuteRun(0, 0) : new MinuteRun(dark.nextSetBit(0), dark.length() - 1);
    }

    /** The minutes of evening twilight, Sun between -3° and -18°. */
    BitSet dusk() {
        if (dusk == null) {
            dusk = twilight();
            dusk.clear(Math.min(lowestSun(), clock.minutes() + 1), clock.minutes() + 1);
        }
        return dusk;
    }

    /** The minutes of morning twilight, Sun between -18° and -3°. */
    BitSet dawn() {
        if (dawn == null) {
            dawn = twilight();
            dawn.clear(0, lowestSun());
        }
        return dawn;
    }

    private BitSet twilight() {
        return clock.where(clock.where(sunDown, minute -> TWILIGHT_START_SUN_DEG - sunDeg(minute)),
                minute -> sunDeg(minute) - NIGHT_END_SUN_DEG);
    }

    private int lowestSun() {
        int lowest = sunDown.nextSetBit(0) / NightClock.NODE_MIN * NightClock.NODE_MIN;
        for (int node = lowest; node >= 0 && node <= sunDown.length(); node += NightClock.NODE_MIN) {
            lowest = lower(lowest, node);
        }
        return Math.max(0, lowest);
    }

    private int lower(int minute, int other) {
        return sunDeg(other) < sunDeg(minute) ? other : minute;
    }

    /** Altitude of the Sun's centre without air at a minute. */
    double sunDeg(int minute) {
        return ephemeris.position(Body.SUN, site(), clock.at(minute)).airlessAltitude().degrees();
    }

    /** Where a target stands at a minute. */
    SkyPosition position(Target target, int minute) {
        return ephemeris.position(target, site(), clock.at(minute));
    }

    /**
     * Degrees by which a direction clears both the terrain and the level horizon; negative when it does not.
     */
    double clearanceDeg(Direction direction) {
        return clearanceDeg(site(), direction);
    }

    /** The same at any site. */
    static double clearanceDeg(Site site, Direction direction) {
        return direction.altitude().degrees() - Math.max(0, skylineDeg(site, direction));
    }

    /** Altitude of the terrain below or above a direction, in degrees. */
    double skylineDeg(Direction direction) {
        return skylineDeg(site(), direction);
    }

    private static double skylineDeg(Site site, Direction direction) {
        return site.skyline().altitudeAt(direction.azimuth()).degrees();
    }

    /** The sky every quarter of an hour, from the last before sunset to the first after sunrise. */
    List<Plan.SkySample> course(Weather weather) {
        if (sunDown.isEmpty()) {
            return List.of();
        }
        int first = sunDown.nextSetBit(0) / COURSE_MIN;
        int last = Math.min(clock.minutes() / COURSE_MIN, sunDown.length() / COURSE_MIN + 1);
        return IntStream.rangeClosed(first, last).map(step -> step * COURSE_MIN).mapToObj(minute ->
                new Plan.SkySample(clock.at(minute), position(Body.SUN, minute).airlessAltitude(),
                        position(Body.MOON, minute).apparentAltitude(), light(Direction.ZENITH, minute)
                        .total(), weather.cloudAt(site(), clock.at(minute)))).toList();
    }

    /** The light of a direction at an instant. */
    SkyLight.Sample light(Direction direction, Instant at) {
        return light.at(direction, at);
    }

    /** The light of a direction at a node. */
    SkyLight.Sample light(Direction direction, int nodeMin) {
        return moment(nodeMin).at(direction);
    }

    /** A direction whose light is asked for at many nodes. */
    SkyLight.Patch patch(Direction direction) {
        return light.patch(direction);
    }

    /** Its light at a node. */
    SkyLight.Sample light(SkyLight.Patch patch, int nodeMin) {
        return moment(nodeMin).at(patch);
    }

    private SkyLight.Moment moment(int nodeMin) {
        int node = nodeMin / NightClock.NODE_MIN;
        if (byNode[node] == null) {
            byNode[node] = light.moment(clock.at(nodeMin));
        }
        return byNode[node];
    }
}
