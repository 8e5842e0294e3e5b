package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** How targets run across a camera's frame at a site, seen through the air or without it. */
public final class TrailEstimator {

    /** The sky turns by 0.5° in that time: narrower gaps between peaks may be missed. */
    private static final double SKYLINE_STEP_S = 120;

    private static final int POINTS = 9;

    /** A degree: by so much air and the width of a trail may bring nearer what turns with the sky. */
    private static final double NEAR_RAD = Math.toRadians(1);

    /** Of the time that the shutter is open: what is on the frame for less only touches it. */
    private static final double TOUCHING_SHARE = 0.01;

    private final Ephemeris ephemeris;
    private final Site site;
    private final Air air;

    /** The trails that a camera draws, refraction included. */
    public TrailEstimator(Ephemeris ephemeris, Site site) {
        this(ephemeris, site, Air.at(site.heightM()));
    }

    private TrailEstimator(Ephemeris ephemeris, Site site, Air air) {
        this.ephemeris = ephemeris;
        this.site = site;
        this.air = air;
    }

    /** The same without refraction. */
    public TrailEstimator airless() {
        return new TrailEstimator(ephemeris, site, Air.NONE);
    }

    /** The direction in which a target is seen. */
    public Direction direction(Target target, Instant at) {
        return Direction.of(air.lifted(airless(target, at)));
    }

    /** The way of a target over the sheet during a span. */
    public Track track(Framing framing, Target target, Interval span) {
        return new Track(target, framing.axes(), path(target, span));
    }

    /** The way of a target over the sky during a span. */
    SkyPath path(Target target, Interval span) {
        return new SkyPath(at -> airless(target, at), air, span);
    }

    /** The trail of a target during a span, clipped to the frame; empty when it never enters. */
    public Optional<Trail> trail(Framing framing, Target target, Interval span, Duration every) {
        return track(framing, target, span).trail(span, every);
    }

    /**
     * Which targets may come into the frame during a span: stars that the sky, turning about its pole,
     * carries there, and bodies, which move of their own, all of them.
     */
    public Predicate<Target> mayCross(Framing framing, Interval span) {
        Vector3D pole = new Vector3D(0, site.latitude().cos(), site.latitude().sin());
        Vector3D aim = framing.aim().vector();
        Vector3D aimOut = aim.crossProduct(pole);
        double halfTurnRad = EarthTurn.RAD_S * span.seconds() / 2;
        double least = Math.cos(framing.radius().radians() + NEAR_RAD);
        return target -> {
            if (!(target instanceof Star)) {
                return true;
            }
            Vector3D star = airless(target, span.middle());
            Vector3D starOut = star.crossProduct(pole);
            double apartRad = Math.atan2(starOut.crossProduct(aimOut).getNorm(), starOut.dotProduct(aimOut));
            return star.dotProduct(pole) * aim.dotProduct(pole) + starOut.getNorm() * aimOut.getNorm()
                    * Math.cos(Math.max(0, apartRad - halfTurnRad)) >= least;
        };
    }

    /** When a target is seen above the site's skyline during a span, in order. */
    public List<Interval> clearOfSkyline(Target target, Interval span) {
        return clearOfSkyline(path(target, span));
    }

    /** The same along a track. */
    List<Interval> clearOfSkyline(Track track) {
        return clearOfSkyline(track.path());
    }

    private List<Interval> clearOfSkyline(SkyPath path) {
        return FunctionOfTime.ofSeconds(path.span(), SKYLINE_STEP_S,
                sinceS -> overSkylineRad(Direction.of(path.at(sinceS))))
                .crossings(0).above();
    }

    private double overSkylineRad(Direction direction) {
        return direction.altitude().minus(site.skyline().altitudeAt(direction.azimuth())).radians();
    }

    /** The star, without name, that stands at a point of the sheet at the middle of a span. */
    public Star starAt(Framing framing, double xMm, double yMm, Interval span) {
        return new StarFinder(ephemeris, site).at(air.lowered(framing.axes().toSky(xMm, yMm)), span.middle());
    }

    /**
     * What a star draws during a span that stands at the centre or in a corner half-way through; dark corners
     * left out.
     */
    public List<StarHere> starsHere(Framing framing, Interval span) {
        return starsHere(framing, List.of(span));
    }

    /** The same in several openings in order of time, drawn in all of them. */
    public List<StarHere> starsHere(Framing framing, List<Interval> openings) {
        FrameAxes axes = framing.axes();
        return Stream.of(StarHere.Where.values())
                .filter(where -> axes.images(where.on(framing.camera().frame())))
                .flatMap(where -> starHere(framing, where, openings).stream()).toList();
    }

    private Optional<StarHere> starHere(Framing framing, StarHere.Where where, List<Interval> openings) {
        Interval span = Interval.span(openings);
        Framing.Point point = where.on(framing.camera().frame());
        Star star = starAt(framing, point.xMm(), point.yMm(), span);
        Track track = track(framing, star, span);
        Optional<Trail> drawn = track.trail(openings, span.lasts())
                .filter(trail -> !touches(trail, openings));
        return track.motion(span.middle()).map(motion -> new StarHere(where, point, star, motion, drawn));
    }

    private static boolean touches(Trail trail, List<Interval> openings) {
        return trail.stretches().stream().mapToDouble(stretch -> stretch.span().seconds()).sum()
                < TOUCHING_SHARE * Interval.seconds(openings);
    }

    /**
     * The longest trail that the frame holds in some openings, in mm: that of a star at one of its points,
     * nine by nine, half-way through.
     */
    public double longestTrailMm(Framing framing, List<Interval> openings) {
        Interval whole = Interval.span(openings);
        Frame frame = framing.camera().frame();
        return IntStream.range(0, POINTS * POINTS).mapToObj(i -> starAt(framing,
                        frame.widthMm() * ((double) (i % POINTS) / (POINTS - 1) - 0.5),
                        frame.heightMm() * ((double) (i / POINTS) / (POINTS - 1) - 0.5), whole))
                .flatMap(star -> track(framing, star, whole).trail(openings, whole.lasts()).stream())
                .mapToDouble(Trail::lengthMm).max().orElse(0);
    }

    /**
     * The direction in which the celestial pole above the site's horizon is seen, as {@link #pole(Framing)}.
     */
    public Direction pole() {
        Direction airless = Direction.ofDegrees(north() ? 0 : 180, Math.abs(site.latitude().degrees()));
        return Direction.of(air.lifted(airless.vector()));
    }

    /**
     * The celestial pole above the site's horizon, and where it falls on the sheet: the north pole on the
     * equator.
     */
    public CelestialPole pole(Framing framing) {
        Direction direction = pole();
        return new CelestialPole(north(), direction, framing.toFrame(direction), framing.sees(direction));
    }

    private boolean north() {
        return site.latitude().radians() >= 0;
    }

    private Vector3D airless(Target target, Instant at) {
        return ephemeris.sightline(target, site, at).direction();
    }
}
