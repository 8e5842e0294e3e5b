package gloam.cli;

import gloam.ephemeris.Body;
import gloam.ephemeris.Daylight;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.proof.ExposedFrame;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.view.FrameQuestion;
import gloam.view.LevelSurvey;
import gloam.view.Report;
import gloam.view.TrailSurvey;
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
import java.util.List;
import java.util.Optional;

/** Tells what runs across one framing, or when a body's trail runs level. */
final class TrailCommand extends ReportingCommand {

    private static final Range POINTS = new Range("number of points along a trail", 1, 10_000, "");
    private static final Range WITHIN = new Range("tolerance", 0.01, 90, "deg");
    private static final Range SLOPE = new Range("slope", -90, 90, "deg");
    private static final Range NIGHTS = new Range("number of nights", 1, 800, "");

    private final SiteOptions place = group(new SiteOptions());

    private final CameraOptions camera = group(new CameraOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final FittedFilm fitted = group(new FittedFilm());

    private final ShotOptions shot = group(new ShotOptions());

    private final Option<Duration> every = option("--every", "DURATION", Duration.class,
            "Spacing of the points along a trail (default: ${DEFAULT-VALUE}).").byDefault("10m");

    private final Option<Boolean> airless = flag("--airless", "Leave refraction out.");

    private final Option<List<Star>> stars = repeated("--star", "RA,DEC[,…]", Star.class,
            "That star alone: ICRS degrees, proper motion in mas a year, parallax in mas. Repeatable.");

    private final Option<String> level = option("--level", "BODY", String.class,
            "When the body's trail runs level in the nights --from to --to, and the aim.")
            .completedBy(new Candidates.Bodies());

    private final Option<LocalDate> to = option("--to", "DATE", LocalDate.class,
            "Last evening for --level (default: the first).");

    private final Option<Quantity> within = option("--within", "DEG", Quantity.class,
            "How far from level the trail may run (default: ${DEFAULT-VALUE}).").byDefault("3");

    private final Option<Quantity> slope = option("--slope", "DEG", Quantity.class,
            "Instead of level: at that angle, upwards to the right (default: ${DEFAULT-VALUE}).").byDefault("0");

    TrailCommand(Session session) {
        super(session, "trail",
                "Tell where stars, planets, Moon and pole run across one framing and what of it shows on the sheet; with --level, "
                + "when a body's trail runs level in a camera that centres it.",
                "gloam trail --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 2h");
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        if (level.given()) {
            return levels(session, site, taken);
        }
        Setting setting = setting(session, site, taken);
        FrameQuestion question = new FrameQuestion(site, setting.framing(), setting.openings(), every.get(),
                airless.given());
        Optional<ExposedFrame> sheet = film.film(trip.map(Trip::film)).map(stock -> fitted.film(stock, this::note))
                .map(stock -> new ExposedFrame(session.ephemeris(), new Sheet(site, stock, List.of(setting))));
        TrailSurvey survey = new TrailSurvey(session.ephemeris(), question, sheet);
        return stars.get().isEmpty() ? survey.ofAll(session.stars().stars(), session.now())
                : survey.of(stars.get(), session.now());
    }

    private Setting setting(Session session, Site site, Camera taken) {
        TrailEstimator estimator = new TrailEstimator(session.ephemeris(), site);
        Setting asked = shot.setting(site, taken, airless.given() ? estimator.airless() : estimator, session);
        Daylight.refuse(session.ephemeris(), site, asked.openings());
        double openMs = asked.openings().stream().map(Interval::lasts).mapToLong(Duration::toMillis).sum();
        FromOption.checked("--every", POINTS, Math.ceil(openMs / every.get().toMillis()));
        return asked;
    }

    private Report levels(Session session, Site site, Camera taken) {
        Body body = FromOption.of("--level", () -> Targets.body(level.get()));
        if (body == Body.SUN) {
            throw new BadInput("the Sun is never looked for in the dark; ask for the Moon or a planet (--level)");
        }
        LocalDate first = FromOption.of("--from", () -> Converters.date(shot.from().orElseThrow(() ->
                new BadInput("--level looks in the nights of --from DATE to --to DATE"))));
        LocalDate last = to.value().orElse(first);
        FromOption.checked("--to", NIGHTS, ChronoUnit.DAYS.between(first, last) + 1);
        LevelSearch search = new LevelSearch(new Framing(Direction.ofDegrees(0, 0), shot.roll(), taken), shot.place(),
                Angle.ofDegrees(FromOption.checked("--slope", SLOPE, slope.get())),
                Angle.ofDegrees(FromOption.checked("--within", WITHIN, within.get())));
        return new LevelSurvey(session.ephemeris(), site)
                .between(new LevelSurvey.Wanted(body, search), first, last, session.now());
    }
}
