package gloam.cli;

import gloam.answer.FrameQuestion;
import gloam.answer.LevelSpans;
import gloam.answer.Trails;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.NamedTarget;
import gloam.ephemeris.Star;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.store.TripFile;
import gloam.trail.Framing;
import gloam.trail.LevelSearch;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import gloam.view.LevelReport;
import gloam.view.Report;
import gloam.view.TrailReport;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Tells what runs across one framing, or when a body's trail runs level. */
final class TrailCommand extends ReportingCommand {

    private static final Range WITHIN = new Range("tolerance", 0.01, 90, "deg");
    private static final Range SLOPE = new Range("slope", -90, 90, "deg");

    private final SiteOptions place = group(new SiteOptions());

    private final TripCameraOptions camera = group(new TripCameraOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final FittedFilm fitted = group(new FittedFilm());

    private final ShotOptions shot = group(new ShotOptions());

    private final Option<Duration> every = option("--every", "DURATION", Duration.class,
            "Spacing of the points along a trail (default: ${DEFAULT-VALUE}).").byDefault("10m");

    private final Option<Boolean> airless = flag("--airless", "Leave refraction out.");

    private final Option<Boolean> tripod = flag("--tripod",
            "Draw as svg what is seen from behind the camera; a page has both.");

    private final Option<List<Star>> stars = repeated("--star", "RA,DEC[,…]", Star.class,
            "Show this star alone: ICRS degrees, proper motion in mas a year, parallax in mas. Repeatable.");

    private final Option<String> level = option("--level", "BODY", String.class,
            "Find when, and where to point, so that the body's trail is level (nights --from to --to).")
            .completedBy(new Candidates.Bodies());

    private final Option<LocalDate> to = option("--to", "DATE", LocalDate.class,
            "Last evening for --level (default: the first).");

    private final Option<Quantity> within = option("--within", "DEG", Quantity.class,
            "Greatest angle from level (default: ${DEFAULT-VALUE}).").byDefault("3");

    private final Option<Quantity> slope = option("--slope", "DEG", Quantity.class,
            "Instead of level: this angle, upwards to the right (default: ${DEFAULT-VALUE}).").byDefault("0");

    TrailCommand(Session session) {
        super(session, "trail",
                "Show how stars, planets and the Moon trail across the frame, and which trails the film "
                + "records; with --level, find when a body's trail is level.",
                "gloam trail --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 2h");
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> read = place.reading(session);
        Optional<Trip> trip = camera.of(read.map(TripFile.Reading::trip));
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        if (level.given()) {
            return levels(session, site, taken);
        }
        FrameQuestion question = question(session, site, taken);
        Optional<Sheet> sheet = film.film(trip.map(Trip::film))
                .map(stock -> fitted.film(stock, read, this::note))
                .map(stock -> new Sheet(site, stock, List.of(question.setting())));
        TrailReport report = TrailReport.of(stars.get().isEmpty()
                ? Trails.ofAll(session.ephemeris(), question, sheet, session.stars().stars())
                : Trails.of(session.ephemeris(), question, sheet, stars.get()), session.now());
        return tripod.given() ? report.seenFromTripod() : report;
    }

    private FrameQuestion question(Session session, Site site, Camera taken) {
        Setting asked = shot.setting(site, taken, airless.given(), session);
        return FromOption.of("--every", () -> new FrameQuestion(site, asked, every.get(), airless.given()));
    }

    private Report levels(Session session, Site site, Camera taken) {
        Body body = FromOption.of("--level", () -> NamedTarget.body(level.get()));
        FromOption.run("--level", () -> LevelSpans.refuseSun(body));
        LocalDate first = FromOption.of("--from", () -> Converters.date(shot.from().orElseThrow(() ->
                new BadInput("--level looks in the nights of --from DATE to --to DATE"))));
        LocalDate last = to.value().orElse(first);
        LevelSearch search = new LevelSearch(new Framing(Direction.ofDegrees(0, 0), shot.roll(), taken),
                shot.place(), Angle.ofDegrees(FromOption.checked("--slope", SLOPE, slope.get())),
                Angle.ofDegrees(FromOption.checked("--within", WITHIN, within.get())));
        LevelSpans.Wanted wanted = FromOption.of("--to",
                () -> new LevelSpans.Wanted(body, search, first, last));
        return LevelReport.of(LevelSpans.of(session.ephemeris(), site, wanted), session.now());
    }
}
