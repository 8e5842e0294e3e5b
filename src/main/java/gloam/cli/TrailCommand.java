package gloam.cli;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.proof.ExposedFrame;
import gloam.proof.SheetSetup;
import gloam.report.FrameQuestion;
import gloam.report.LevelSurvey;
import gloam.report.Report;
import gloam.report.TrailSurvey;
import gloam.trail.Framing;
import gloam.trail.LevelSearch;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import gloam.units.Range;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what runs across one framing, or when a body's trail runs level. */
@Command(name = "trail", description = {
    "Tell where stars, planets, Moon and pole run across one framing and what of it shows on the sheet; with --level, "
            + "when a body's trail runs level in a camera that centres it."},
        footer = "gloam trail --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 2h")
final class TrailCommand extends ReportingCommand {

    private static final Range POINTS = new Range("number of points along a trail", 1, 10_000, "");
    private static final Range WITHIN = new Range("tolerance", 0.01, 90, "deg");
    private static final Range SLOPE = new Range("slope", -90, 90, "deg");
    private static final Range NIGHTS = new Range("number of nights", 1, 800, "");

    @Mixin
    private SiteOptions place;

    @Mixin
    private CameraOptions camera;

    @Mixin
    private FilmOptions film;

    @Mixin
    private FittedFilm fitted;

    @Mixin
    private ShotOptions shot;

    @Option(names = "--every", paramLabel = "DURATION", defaultValue = "10m",
            description = "Spacing of the points along a trail (default: ${DEFAULT-VALUE}).")
    private Duration every;

    @Option(names = "--airless", description = "Leave refraction out.")
    private boolean airless;

    @Option(names = "--star", paramLabel = "RA,DEC[,…]",
            description = "That star alone: ICRS degrees, proper motion in mas a year, parallax in mas. Repeatable.")
    private List<Star> stars = new ArrayList<>();

    @Option(names = "--level", paramLabel = "BODY", completionCandidates = Candidates.Bodies.class,
            description = "When the body's trail runs level in the nights --from to --to, and the aim.")
    private Optional<String> level;

    @Option(names = "--to", paramLabel = "DATE",
            description = "Last evening for --level (default: the first).")
    private Optional<LocalDate> to;

    @Option(names = "--within", paramLabel = "DEG", defaultValue = "3",
            description = "How far from level the trail may run (default: ${DEFAULT-VALUE}).")
    private Quantity within;

    @Option(names = "--slope", paramLabel = "DEG", defaultValue = "0",
            description = "Instead of level: at that angle, upwards to the right (default: ${DEFAULT-VALUE}).")
    private Quantity slope;

    TrailCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        if (level.isPresent()) {
            return levels(session, site, taken);
        }
        FrameQuestion question = question(session, site, taken);
        double fNumber = taken.lens().fNumbers().get(0);
        Optional<ExposedFrame> sheet = film.film(trip.map(Trip::film)).map(stock -> fitted.film(stock, this::note))
                .map(stock -> new ExposedFrame(session.ephemeris(), new SheetSetup(site, question.framing(), stock, fNumber,
                        question.openings(), OptionalDouble.empty())));
        TrailSurvey survey = new TrailSurvey(session.ephemeris(), question, sheet);
        return stars.isEmpty() ? survey.ofAll(session.stars().stars(), session.now())
                : survey.of(stars, session.now());
    }

    private FrameQuestion question(Session session, Site site, Camera taken) {
        TrailEstimator estimator = new TrailEstimator(session.ephemeris(), site);
        ShotOptions.Shot asked = shot.shot(site, taken, airless ? estimator.airless() : estimator, session);
        double openMs = asked.openings().stream().map(Interval::lasts).mapToLong(Duration::toMillis).sum();
        FromOption.checked("--every", POINTS, Math.ceil(openMs / every.toMillis()));
        return new FrameQuestion(site, asked.framing(), asked.openings(), every, airless);
    }

    private Report levels(Session session, Site site, Camera taken) {
        Body body = FromOption.of("--level", () -> Targets.body(level.orElseThrow()));
        if (body == Body.SUN) {
            throw new BadInput("the Sun is never looked for in the dark; ask for the Moon or a planet (--level)");
        }
        LocalDate first = FromOption.of("--from", () -> Converters.date(shot.from().orElseThrow(() ->
                new BadInput("--level looks in the nights of --from DATE to --to DATE"))));
        LocalDate last = to.orElse(first);
        FromOption.checked("--to", NIGHTS, ChronoUnit.DAYS.between(first, last) + 1);
        LevelSearch search = new LevelSearch(new Framing(Direction.ofDegrees(0, 0), shot.roll(), taken), shot.place(),
                Angle.ofDegrees(FromOption.checked("--slope", SLOPE, slope)),
                Angle.ofDegrees(FromOption.checked("--within", WITHIN, within)));
        return new LevelSurvey(session.ephemeris(), site)
                .between(new LevelSurvey.Wanted(body, search), first, last, session.now());
    }
}
