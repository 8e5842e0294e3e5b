package gloam.view;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.exposure.ExposedSheet;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Skyline;
import gloam.proof.ExposedFrame;
import gloam.trail.CelestialPole;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks for everything that runs across a framing and whether it shows. */
public final class TrailSurvey {

    private static final double SKY_TURN_DEG_H = 15.041067;
    private static final Duration MOON_AHEAD = Duration.ofHours(12);
    private static final int EDGE_INTERVALS = 4;
    /** How much lower than at nine points of its rim a frame may look, and for what air and parallax do. */
    private static final double MARGIN_DEG = 5;

    private final Ephemeris ephemeris;
    private final FrameQuestion question;
    private final Optional<ExposedFrame> sheet;
    private final TrailEstimator estimator;
    private final boolean skylineMayShow;
    private final SiteClock clock;

    /** A survey of a framing; without a sheet nothing is said of what shows. */
    public TrailSurvey(Ephemeris ephemeris, FrameQuestion question, Optional<ExposedFrame> sheet) {
        this.ephemeris = ephemeris;
        this.question = question;
        this.sheet = sheet;
        this.estimator = question.estimator(ephemeris);
        this.skylineMayShow = lowestDeg() < MARGIN_DEG + question.site().skyline().points().stream()
                .mapToDouble(Skyline.Point::altitudeDeg).max().orElse(0);
        this.clock = new SiteClock(question.site().zone());
    }

    /** The report on those stars alone, whether they show or not. */
    public TrailReport of(List<Star> stars, Instant now) {
        return report(stars.stream().flatMap(star -> row(name(star), Angle.ZERO, trail(star, question.openings()))
                .stream()).toList(), now);
    }

    /**
     * The report on planets, Moon and all stars of a catalogue; with a sheet, on the stars that show.
     *
     * @throws BadInput when the Sun shines into the frame
     */
    public TrailReport ofAll(List<Star> catalogue, Instant now) {
        refuseSun();
        List<TrackRow> tracks = new ArrayList<>();
        EnumSet.range(Body.MOON, Body.NEPTUNE).forEach(body -> track(body).ifPresent(tracks::add));
        tracks.addAll(catalogue.parallelStream().filter(this::comesNear).flatMap(star -> track(star).stream())
                .filter(track -> track.records().orElse(true)).toList());
        return report(tracks, now);
    }

    private double lowestDeg() {
        Frame frame = question.framing().camera().frame();
        return IntStream.range(0, 9).mapToObj(i -> question.framing().toSky((i % 3 - 1) * frame.widthMm() / 2,
                (i / 3 - 1) * frame.heightMm() / 2)).mapToDouble(seen -> seen.altitude().degrees()).min().orElse(0);
    }

    private void refuseSun() {
        if (clearTrail(Body.SUN).isPresent()) {
            throw new BadInput("the Sun shines into the frame while the shutter is open; never point an unfiltered "
                    + "lens at it. Choose another time or aim");
        }
    }

    private TrailReport report(List<TrackRow> tracks, Instant now) {
        List<StarHere> here = estimator.starsHere(question.framing(), question.openings());
        return new TrailReport(clock.asked(now), Place.of(question.site()), TrailReport.FrameRow.of(question),
                sheet.map(this::sheet),
                sheet.map(exposed -> TrailReport.RecordsRow.of(tracks)), tracks,
                here.stream().map(star -> TrailReport.HereRow.of(star, spotMm())).toList(), pole(), moon(), edges());
    }

    private double spotMm() {
        Lens lens = question.framing().camera().lens();
        return lens.spotMm(lens.fNumbers().get(0));
    }

    private TrailReport.SheetRow sheet(ExposedFrame exposed) {
        Direction aim = question.framing().aim();
        Camera camera = question.framing().camera();
        Angle aimed = aim.declination(question.site().latitude());
        Angle told = PassingStars.told(camera.lens(), Optional.of(camera.frame()), aimed);
        PassingStars stars = PassingStars.of(camera.lens(), told.degrees(), exposed.lossMag(aim));
        return TrailReport.SheetRow.of(exposed.centre(), stars, Optional.of(told).filter(other -> !other.equals(aimed)));
    }

    private Optional<TrackRow> track(Star star) {
        return row(name(star), Angle.ZERO, clearTrail(star));
    }

    private static TrackRow.Name name(Star star) {
        return new TrackRow.Name(star.name(), "star", star.magnitude());
    }

    private Optional<TrackRow> track(Body body) {
        Appearance seen = ephemeris.appearance(body, question.site(), question.whole().middle());
        String kind = body == Body.MOON ? "moon" : "planet";
        return row(new TrackRow.Name(body.label(), kind, seen.magnitude()), seen.semidiameter(), clearTrail(body));
    }

    private Optional<TrackRow> row(TrackRow.Name name, Angle semidiameter, Optional<Trail> drawn) {
        Frame frame = question.framing().camera().frame();
        return drawn.map(trail -> TrackRow.of(name, mark(name.magnitude(), semidiameter, trail), trail,
                Math.max(frame.widthMm(), frame.heightMm()), clock));
    }

    private Optional<TrackRow.Mark> mark(double magnitude, Angle semidiameter, Trail trail) {
        return sheet.filter(exposed -> Double.isFinite(magnitude)).map(exposed -> {
            Trail.Point middle = trail.points().get(trail.points().size() / 2);
            Direction there = question.framing().toSky(middle.xMm(), middle.yMm());
            ExposedSheet under = trail.target() == Body.MOON ? exposed.withoutMoonlight(there) : exposed.at(there);
            double lossMag = exposed.lossMag(there);
            return new TrackRow.Mark(under.records(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag),
                    under.stopsOverSky(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag));
        });
    }

    /** The trail as far as it runs above the skyline. */
    private Optional<Trail> clearTrail(Target target) {
        if (!skylineMayShow) {
            return trail(target, question.openings());
        }
        List<Interval> clear = Interval.intersect(question.openings(),
                estimator.clearOfSkyline(target, question.whole()));
        return clear.isEmpty() ? Optional.empty() : trail(target, clear);
    }

    private Optional<Trail> trail(Target target, List<Interval> openings) {
        return estimator.track(question.framing(), target, question.whole()).trail(openings, question.every());
    }

    /** Whether the turning sky can carry a star from where it stands half-way through into the frame. */
    private boolean comesNear(Star star) {
        Frame frame = question.framing().camera().frame();
        Angle corner = question.framing().toSky(frame.widthMm() / 2, frame.heightMm() / 2)
                .to(question.framing().aim());
        double reachDeg = corner.degrees() + SKY_TURN_DEG_H * question.whole().seconds() / 7200;
        return estimator.direction(star, question.whole().middle()).to(question.framing().aim()).degrees()
                <= reachDeg;
    }

    private TrailReport.PoleRow pole() {
        CelestialPole pole = estimator.pole(question.framing());
        double openS = Interval.seconds(question.openings());
        return TrailReport.PoleRow.of(pole, SKY_TURN_DEG_H * openS / 3600, pole.inFrame()
                ? OptionalDouble.of(estimator.longestTrailMm(question.framing(), question.openings()))
                : OptionalDouble.empty());
    }

    private TrailReport.MoonRow moon() {
        Instant open = question.whole().start();
        Instant covered = ephemeris.covers().endExclusive().minusMillis(1);
        Instant wanted = open.plus(MOON_AHEAD);
        Interval ahead = new Interval(open, wanted.isAfter(covered) ? covered : wanted);
        Optional<Instant> inFrame = Interval.intersect(estimator.clearOfSkyline(Body.MOON, ahead),
                estimator.track(question.framing(), Body.MOON, ahead).visits(ahead)).stream()
                .map(Interval::start).findFirst();
        return new TrailReport.MoonRow(inFrame.map(clock::event), clock.asked(ahead.endExclusive()));
    }

    private List<TrailReport.EdgeRow> edges() {
        Frame frame = question.framing().camera().frame();
        return Stream.of("bottom", "left").flatMap(edge -> IntStream.rangeClosed(0, EDGE_INTERVALS).boxed().flatMap(at -> {
            double share = (double) at / EDGE_INTERVALS - 0.5;
            double xMm = edge.equals("bottom") ? share * frame.widthMm() : -frame.widthMm() / 2;
            double yMm = edge.equals("bottom") ? -frame.heightMm() / 2 : share * frame.heightMm();
            return edge(edge, new Framing.Point(xMm, yMm)).stream();
        })).toList();
    }

    private Optional<TrailReport.EdgeRow> edge(String edge, Framing.Point point) {
        if (!question.framing().images(point)) {
            return Optional.empty();
        }
        Direction seen = question.framing().toSky(point.xMm(), point.yMm());
        return Optional.of(new TrailReport.EdgeRow(edge, point.xMm(), point.yMm(), seen.azimuth().degrees(),
                seen.altitude().degrees()));
    }
}
