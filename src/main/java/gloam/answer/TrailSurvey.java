package gloam.answer;

import gloam.answer.Trails.Catalogue;
import gloam.answer.Trails.Kind;
import gloam.answer.Trails.Mark;
import gloam.answer.Trails.MoonComing;
import gloam.answer.Trails.PointStar;
import gloam.answer.Trails.PoleTurn;
import gloam.answer.Trails.SheetLimit;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Daylight;
import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.Target;
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.proof.ExposedFrame;
import gloam.proof.StarCount;
import gloam.sheet.Sheet;
import gloam.trail.CelestialPole;
import gloam.trail.FramedTrails;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Finite;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks for everything that runs across a framing and whether it shows. */
final class TrailSurvey {

    private static final Duration MOON_AHEAD = Duration.ofHours(12);

    private final Ephemeris ephemeris;
    private final FrameQuestion question;
    private final Optional<ExposedFrame> sheet;
    private final TrailEstimator estimator;
    private final FramedTrails trails;

    TrailSurvey(Ephemeris ephemeris, FrameQuestion question, Optional<Sheet> exposed) {
        Daylight.refuse(ephemeris, question.site(), question.openings());
        this.ephemeris = ephemeris;
        this.question = question;
        this.sheet = exposed.map(on -> new ExposedFrame(ephemeris, on));
        this.estimator = question.estimator(ephemeris);
        this.trails = new FramedTrails(estimator, question.site().skyline(), question.framing(),
                question.openings());
    }

    Trails of(List<Star> stars) {
        return answer(stars.stream().flatMap(star ->
                track(star, trail(star, question.openings())).stream()).toList(), Optional.empty(), stars);
    }

    Trails ofAll(List<Star> catalogue) {
        refuseSun();
        List<Trails.Track> tracks = new ArrayList<>();
        EnumSet.range(Body.MOON, Body.NEPTUNE).forEach(body -> track(body).ifPresent(tracks::add));
        List<Trails.Track> crossing = catalogue.parallelStream()
                .flatMap(star -> track(star, clearTrail(star)).stream()).toList();
        tracks.addAll(crossing.stream().filter(track -> !track.hidden()).toList());
        StarCount count = StarCount.of(crossing.stream().map(track -> new StarCount.Crossing(
                track.magnitude(), track.mark().map(Mark::limitMag).orElse(Double.NEGATIVE_INFINITY)))
                .toList());
        return answer(tracks, Optional.of(new Catalogue(count.crossing(), StarCatalogue.FAINTEST_MAG,
                count.spread(), count.fainter())), catalogue);
    }

    private void refuseSun() {
        if (clearTrail(Body.SUN).isPresent()) {
            throw new BadInput("the Sun shines into the frame while the shutter is open; never point an "
                    + "unfiltered lens at it. Choose another time or aim");
        }
    }

    private Trails answer(List<Trails.Track> tracks, Optional<Catalogue> catalogue,
            List<Star> stars) {
        FrameMarks marks = new FrameMarks(question.framing());
        Optional<SheetLimit> limit = sheet.map(this::limit);
        return new Trails(question, limit, tracks, catalogue,
                estimator.starsHere(question.framing(), question.openings()).stream()
                .map(star -> pointStar(star, limit)).toList(), pole(), moon(), marks.edges(),
                marks.skyline(question.site().skyline()), TripodView.of(ephemeris, question, stars));
    }

    private PointStar pointStar(StarHere star, Optional<SheetLimit> limit) {
        boolean point = star.drawn().filter(trail -> trail.lengthMm() <= spotMm()).isPresent();
        if (star.where() == StarHere.Where.CENTRE) {
            return new PointStar(star, point, Finite.of(limit.map(SheetLimit::trailLimitMag)));
        }
        Direction there = question.framing().toSky(star.point().xMm(), star.point().yMm());
        return new PointStar(star, point, Finite.of(sheet.filter(exposed -> !point).map(exposed ->
                TrailLimit.magnitude(new TrailLimit.Passing(exposed.at(there), star.motion().speedMmS(),
                        exposed.lossMag(there))))));
    }

    private double spotMm() {
        Lens lens = question.framing().camera().lens();
        return lens.spotMm(lens.fNumbers().get(0));
    }

    private SheetLimit limit(ExposedFrame exposed) {
        Direction aim = question.framing().aim();
        Camera camera = question.framing().camera();
        Angle aimed = aim.declination(question.site().latitude());
        Angle told = PassingStars.told(camera.lens(), Optional.of(camera.frame()), aimed);
        PassingStars stars = PassingStars.of(camera.lens(), told.degrees(), exposed.lossMag(aim));
        Optional<ExposedSheet> away = exposed.awayFromMoon();
        ExposedSheet sheet = away.orElseGet(exposed::centre);
        return new SheetLimit(sheet, TrailLimit.magnitude(
                new TrailLimit.Passing(sheet, stars.imageSpeedMmS(), stars.lossMag())),
                Optional.of(told).filter(other -> !other.equals(aimed)), away.isPresent());
    }

    private Optional<Trails.Track> track(Star star, Optional<Trail> drawn) {
        return drawn.map(trail -> new Trails.Track(star.name(), Kind.STAR, star.magnitude(),
                mark(star.magnitude(), Angle.ZERO, trail), trail, frameShare(trail)));
    }

    private Optional<Trails.Track> track(Body body) {
        Appearance seen = ephemeris.appearance(body, question.site(), question.whole().middle());
        return clearTrail(body).map(trail -> new Trails.Track(body.label(),
                body == Body.MOON ? Kind.MOON : Kind.PLANET, seen.magnitude(),
                mark(seen.magnitude(), seen.semidiameter(), trail), trail, frameShare(trail)));
    }

    private double frameShare(Trail trail) {
        Frame frame = question.framing().camera().frame();
        return trail.lengthMm() / Math.max(frame.widthMm(), frame.heightMm());
    }

    private Optional<Mark> mark(double magnitude, Angle semidiameter, Trail trail) {
        return sheet.filter(exposed -> Double.isFinite(magnitude))
                .map(exposed -> exposed.mark(trail.passage(), magnitude, semidiameter))
                .map(mark -> new Mark(mark.records(), mark.stopsOverSky(), mark.limitMag()));
    }

    /** The trail as far as it runs above the skyline. */
    private Optional<Trail> clearTrail(Target target) {
        return trails.of(target, question.every());
    }

    private Optional<Trail> trail(Target target, List<Interval> openings) {
        return estimator.track(question.framing(), target, question.whole())
                .trail(openings, question.every());
    }

    private PoleTurn pole() {
        CelestialPole pole = estimator.pole(question.framing());
        return new PoleTurn(pole, EarthTurn.degrees(question.openS()), pole.inFrame()
                ? OptionalDouble.of(estimator.longestTrailMm(question.framing(), question.openings()))
                : OptionalDouble.empty());
    }

    private MoonComing moon() {
        Instant open = question.whole().start();
        Instant covered = ephemeris.covers().endExclusive().minusMillis(1);
        Instant wanted = open.plus(MOON_AHEAD);
        Interval ahead = new Interval(open, wanted.isAfter(covered) ? covered : wanted);
        return new MoonComing(Interval.intersect(estimator.clearOfSkyline(Body.MOON, ahead),
                estimator.track(question.framing(), Body.MOON, ahead).visits(ahead)).stream()
                .map(Interval::start).findFirst(), ahead.endExclusive());
    }
}
