package gloam.answer;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is seen from behind the camera: the country and the sky around the frame, and a star to aim by.
 *
 * @param leftDeg  azimuth at the left edge in degrees; may be negative, or the right edge's more than 360
 * @param rightDeg azimuth at the right edge
 * @param topDeg   altitude of the upper edge
 * @param frame    the frame's outline from its upper left corner on, its roll included
 * @param skyline  the skyline from left to right
 * @param pole     the celestial pole above the horizon, if it is in the view
 * @param ways     the ways of planets and bright stars while the shutter is open, the brightest first
 * @param moon     the Moon's way, hours before to hours after
 * @param aimStar  the star to aim by, if there is one
 */
public record TripodView(double leftDeg, double rightDeg, double topDeg, List<Direction> frame,
                         List<Direction> skyline, Optional<Direction> pole, List<Way> ways,
                         List<MoonAt> moon, Optional<AimStar> aimStar) {

    private static final double LEAST_HALF_DEG = 40;
    private static final double AROUND_DEG = 20;
    private static final double ABOVE_DEG = 12;
    private static final double SKYLINE_STEP_DEG = 1;
    private static final int FRAME_POINTS = 8;
    private static final int WAY_POINTS = 6;
    private static final int MOST_WAYS = 24;
    private static final double FAINTEST_WAY_MAG = 3.5;
    private static final double FAINTEST_AIM_MAG = 3;
    private static final double FARTHEST_AIM_DEG = 40;
    /** Lower stars are lost in haze; common practice, no source. */
    private static final double LOWEST_AIM_DEG = 8;
    private static final Duration MOON_BEFORE = Duration.ofHours(3);
    private static final Duration MOON_AFTER = Duration.ofHours(6);
    private static final Duration MOON_STEP = Duration.ofMinutes(30);
    private static final double LOWEST_DEG = -5;

    /** Copies the lists. */
    public TripodView {
        frame = List.copyOf(frame);
        skyline = List.copyOf(skyline);
        ways = List.copyOf(ways);
        moon = List.copyOf(moon);
    }

    /**
     * The way of a planet or star from opening the shutter to closing it.
     *
     * @param magnitude V magnitude
     * @param star      whether it is a star
     * @param points    its directions in order of time
     */
    public record Way(String name, double magnitude, boolean star, List<Direction> points) {
    }

    /** The Moon at an instant. */
    public record MoonAt(Instant at, Direction seen) {
    }

    /**
     * A star that the frame's centre is found by.
     *
     * @param at                when it stands there: when the shutter opens
     * @param seen              where
     * @param centreAzimuthDeg  by how many degrees of azimuth the frame's centre is to the right of it
     * @param centreAltitudeDeg by how many degrees it is above it
     */
    public record AimStar(String name, double magnitude, Instant at, Direction seen, double centreAzimuthDeg,
                          double centreAltitudeDeg) {
    }

    static TripodView of(Ephemeris ephemeris, FrameQuestion question, List<Star> stars) {
        return new Maker(ephemeris, question).view(stars);
    }

    private static final class Maker {

        private final Ephemeris ephemeris;
        private final FrameQuestion question;
        private final TrailEstimator estimator;
        private final Site site;
        private final double aimDeg;
        private final List<Direction> frame;
        private final double halfDeg;
        private final double topDeg;

        Maker(Ephemeris ephemeris, FrameQuestion question) {
            this.ephemeris = ephemeris;
            this.question = question;
            this.estimator = question.estimator(ephemeris);
            this.site = question.site();
            Direction aim = question.framing().aim();
            this.aimDeg = aim.azimuth().positive().degrees();
            this.frame = outline(question.framing());
            double high = frame.stream().mapToDouble(at -> at.altitude().degrees()).max().orElse(0);
            boolean overhead = question.framing().sees(Direction.ZENITH);
            this.topDeg = overhead ? 90 : Math.min(90, high + ABOVE_DEG);
            double wide = frame.stream().mapToDouble(this::aside).map(Math::abs).max().orElse(0);
            this.halfDeg = overhead ? 180 : Math.min(180, Math.max(LEAST_HALF_DEG, wide + AROUND_DEG));
        }

        private static List<Direction> outline(Framing framing) {
            Frame size = framing.camera().frame();
            double x = size.widthMm() / 2;
            double y = size.heightMm() / 2;
            double[][] corners = {{-x, y}, {x, y}, {x, -y}, {-x, -y}, {-x, y}};
            return IntStream.rangeClosed(0, 4 * FRAME_POINTS).mapToObj(i -> {
                double share = (double) i % FRAME_POINTS / FRAME_POINTS;
                double[] from = corners[i / FRAME_POINTS];
                double[] to = corners[Math.min(4, i / FRAME_POINTS + 1)];
                return new Framing.Point(from[0] + share * (to[0] - from[0]),
                        from[1] + share * (to[1] - from[1]));
            }).filter(framing::images).map(point -> framing.toSky(point.xMm(), point.yMm())).toList();
        }

        /** By how many degrees of azimuth a direction is to the right of the aim. */
        private double aside(Direction direction) {
            return Math.IEEEremainder(direction.azimuth().degrees() - aimDeg, 360);
        }

        private boolean inView(Direction direction) {
            return direction.altitude().degrees() > LOWEST_DEG && direction.altitude().degrees() <= topDeg
                    && Math.abs(aside(direction)) <= halfDeg;
        }

        TripodView view(List<Star> stars) {
            Direction pole = estimator.pole(question.framing()).direction();
            int steps = (int) Math.round(2 * halfDeg / SKYLINE_STEP_DEG);
            List<Direction> skyline = IntStream.rangeClosed(0, steps).mapToObj(step ->
                    Direction.ofDegrees(Math.floorMod((long) Math.floor(aimDeg - halfDeg + step), 360), 0))
                    .map(at -> new Direction(at.azimuth(), site.skyline().altitudeAt(at.azimuth()))).toList();
            return new TripodView(aimDeg - halfDeg, aimDeg + halfDeg, topDeg, frame, skyline,
                    Optional.of(pole).filter(this::inView), ways(stars), moon(),
                    aimStar(stars));
        }

        private List<Way> ways(List<Star> stars) {
            Interval whole = question.whole();
            Stream<Way> bodies = EnumSet.range(Body.MERCURY, Body.NEPTUNE).stream().map(body ->
                    new Way(body.label(), ephemeris.appearance(body, site, whole.middle()).magnitude(), false,
                            path(at -> estimator.direction(body, at))));
            return Stream.concat(bodies, stars.stream().filter(star -> star.magnitude() <= FAINTEST_WAY_MAG)
                    .map(star -> new Way(star.name(), star.magnitude(), true,
                            path(at -> estimator.direction(star, at)))))
                    .filter(way -> way.magnitude() <= FAINTEST_WAY_MAG && way.points().stream().anyMatch(at ->
                            inView(at) && at.altitude().compareTo(
                                    site.skyline().altitudeAt(at.azimuth())) > 0))
                    .sorted(Comparator.comparingDouble(Way::magnitude)).limit(MOST_WAYS).toList();
        }

        private List<Direction> path(Function<Instant, Direction> seen) {
            Interval whole = question.whole();
            return IntStream.rangeClosed(0, WAY_POINTS).mapToObj(i -> seen.apply(whole.start()
                    .plus(whole.lasts().multipliedBy(i).dividedBy(WAY_POINTS)))).toList();
        }

        private List<MoonAt> moon() {
            long stepS = MOON_STEP.toSeconds();
            Interval covered = ephemeris.covers();
            List<MoonAt> way = new ArrayList<>();
            Instant last = question.whole().endExclusive().plus(MOON_AFTER);
            long firstS = question.whole().start().minus(MOON_BEFORE).getEpochSecond();
            for (long atS = firstS - Math.floorMod(firstS, stepS); atS <= last.getEpochSecond();
                    atS += stepS) {
                Instant at = Instant.ofEpochSecond(atS);
                if (covered.contains(at)) {
                    way.add(new MoonAt(at, estimator.direction(Body.MOON, at)));
                }
            }
            return way.stream().filter(moon -> inView(moon.seen)).toList();
        }

        private Optional<AimStar> aimStar(List<Star> stars) {
            Instant at = question.whole().start();
            Direction aim = question.framing().aim();
            return stars.stream().filter(star -> star.magnitude() <= FAINTEST_AIM_MAG).map(star -> {
                Direction seen = estimator.direction(star, at);
                return new AimStar(star.name(), star.magnitude(), at, seen, -aside(seen),
                        aim.altitude().degrees() - seen.altitude().degrees());
            }).filter(star -> star.seen.to(aim).degrees() <= FARTHEST_AIM_DEG
                    && star.seen.altitude().degrees() >= Math.max(LOWEST_AIM_DEG,
                    site.skyline().altitudeAt(star.seen.azimuth()).degrees()))
                    .min(Comparator.comparingDouble(star -> star.seen.to(aim).degrees()));
        }
    }
}
