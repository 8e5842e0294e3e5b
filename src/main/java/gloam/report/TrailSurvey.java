package gloam.report;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.exposure.ExposedSheet;
import gloam.gear.Frame;
import gloam.light.Atmosphere;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** Looks for everything that runs across a framing and whether it shows. */
public final class TrailSurvey {

    private static final double SKY_TURN_DEG_H = 15.05;

    private final Ephemeris ephemeris;
    private final FrameQuestion question;
    private final Optional<ExposedSheet> sheet;
    private final TrailEstimator estimator;
    private final SiteClock clock;

    /** A survey of a framing; without a sheet nothing is said of what shows. */
    public TrailSurvey(Ephemeris ephemeris, FrameQuestion question, Optional<ExposedSheet> sheet) {
        this.ephemeris = ephemeris;
        this.question = question;
        this.sheet = sheet;
        this.estimator = question.estimator(ephemeris);
        this.clock = new SiteClock(question.site().zone());
    }

    /** The report on those stars alone, whether they show or not. */
    public TrailReport of(List<Star> stars, Instant now) {
        return report(stars.stream().flatMap(star -> track(star).stream()).toList(), now);
    }

    /** The report on planets, Moon and all stars of a catalogue; with a sheet, on the stars that show. */
    public TrailReport ofAll(List<Star> catalogue, Instant now) {
        List<TrailReport.TrackRow> tracks = new ArrayList<>();
        EnumSet.range(Body.MOON, Body.NEPTUNE).forEach(body -> track(body).ifPresent(tracks::add));
        catalogue.stream().filter(this::comesNear).flatMap(star -> track(star).stream())
                .filter(track -> track.records().orElse(true)).forEach(tracks::add);
        return report(tracks, now);
    }

    private TrailReport report(List<TrailReport.TrackRow> tracks, Instant now) {
        List<StarHere> here = estimator.starsHere(question.framing(), question.open());
        return new TrailReport(clock.asked(now), Place.of(question.site()), TrailReport.FrameRow.of(question),
                sheet.map(exposed -> TrailReport.SheetRow.of(exposed, limitMag(exposed, here.get(0)))), tracks,
                here.stream().map(TrailReport.HereRow::of).toList(),
                TrailReport.PoleRow.of(estimator.pole(question.framing())));
    }

    private double limitMag(ExposedSheet exposed, StarHere centre) {
        return exposed.trailLimitMag(centre.motion().speedMmS(), lossMag(centre.star()));
    }

    private Optional<TrailReport.TrackRow> track(Star star) {
        return trail(star).map(trail -> TrailReport.TrackRow.of(star.name(), "star", star.magnitude(),
                sheet.filter(exposed -> Double.isFinite(star.magnitude())).map(exposed -> exposed.records(
                        star.magnitude(), Angle.ZERO, trail.middleSpeedMmS(), lossMag(star))), trail, clock));
    }

    private Optional<TrailReport.TrackRow> track(Body body) {
        Appearance seen = ephemeris.appearance(body, question.site(), question.open().middle());
        return trail(body).map(trail -> TrailReport.TrackRow.of(body.label(),
                body == Body.MOON ? "moon" : "planet", seen.magnitude(),
                sheet.map(exposed -> exposed.records(seen.magnitude(), seen.semidiameter(), trail.middleSpeedMmS(),
                        lossMag(body))), trail, clock));
    }

    private Optional<Trail> trail(Target target) {
        return estimator.trail(question.framing(), target, question.open(), question.every());
    }

    private double lossMag(Target target) {
        Angle altitude = estimator.direction(target, question.open().middle()).altitude();
        return question.site().extinctionMag() * Atmosphere.airmass(altitude);
    }

    /** Whether the turning sky can carry a star from where it stands half-way through into the frame. */
    private boolean comesNear(Star star) {
        Frame frame = question.framing().camera().frame();
        Angle corner = question.framing().toSky(frame.widthMm() / 2, frame.heightMm() / 2)
                .to(question.framing().aim());
        double reachDeg = corner.degrees() + SKY_TURN_DEG_H * question.open().seconds() / 7200;
        return estimator.direction(star, question.open().middle()).to(question.framing().aim()).degrees() <= reachDeg;
    }
}
