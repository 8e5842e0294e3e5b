package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.exposure.ExposedSheet;
import gloam.exposure.SkyOnFilm;
import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.planner.Trip;
import gloam.report.FrameQuestion;
import gloam.report.Report;
import gloam.report.TrailSurvey;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what runs across one framing. */
@Command(name = "trail", description = "Tell where stars, planets, Moon and pole run across one framing.",
        footer = "gloam trail --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 2h")
final class TrailCommand extends ReportingCommand {

    private static final Range POINTS = new Range("number of points along a trail", 1, 10_000, "");
    private static final Range ROLL = new Range("roll", -360, 360, "deg");

    @Mixin
    private SiteOptions place;

    @Mixin
    private CameraOptions camera;

    @Mixin
    private FilmOptions film;

    @Option(names = "--azimuth", paramLabel = "DEG", required = true,
            description = "Where the camera points, from north through east.")
    private double azimuthDeg;

    @Option(names = "--altitude", paramLabel = "DEG", required = true, description = "How high the camera points.")
    private double altitudeDeg;

    @Option(names = "--roll", paramLabel = "DEG", defaultValue = "0",
            description = "The camera turned about its axis, clockwise as seen from behind (default: ${DEFAULT-VALUE}).")
    private double rollDeg;

    @Option(names = "--from", paramLabel = "INSTANT", required = true,
            description = "When the shutter opens, such as 2027-02-08T21:00 by the site's clocks, or with an offset.")
    private Moment from;

    @Option(names = "--lasts", paramLabel = "DURATION", required = true,
            description = "How long it is open, such as 30s, 18m, 1h50m or PT18M.")
    private Duration lasts;

    @Option(names = "--every", paramLabel = "DURATION", defaultValue = "10m",
            description = "Spacing of the points along a trail (default: ${DEFAULT-VALUE}).")
    private Duration every;

    @Option(names = "--airless", description = "Leave refraction out.")
    private boolean airless;

    @Option(names = "--star", paramLabel = "RA,DEC[,PMRA,PMDEC[,PARALLAX]]",
            description = "Ask for that star alone: ICRS degrees, proper motion in mas a year, parallax in mas. May be "
                    + "given more than once.")
    private List<Star> stars = new ArrayList<>();

    TrailCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        FromOption.checked("--every", POINTS, Math.ceil((double) lasts.toMillis() / every.toMillis()));
        FrameQuestion question = new FrameQuestion(site, framing(trip), Interval.lasting(
                FromOption.of("--from", () -> from.in(site.zone())), lasts), every, airless);
        Optional<ExposedSheet> sheet =
                film.film(trip.map(Trip::film)).map(stock -> sheet(session, stock, question));
        TrailSurvey survey = new TrailSurvey(session.ephemeris(), question, sheet);
        return stars.isEmpty() ? survey.ofAll(session.stars().stars(), session.now())
                : survey.of(stars, session.now());
    }

    private Framing framing(Optional<Trip> trip) {
        return new Framing(Direction.ofDegrees(
                FromOption.checked("--azimuth", Direction.AZIMUTH, azimuthDeg),
                FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg)),
                Angle.ofDegrees(FromOption.checked("--roll", ROLL, rollDeg)), camera.camera(trip.map(Trip::camera)));
    }

    private ExposedSheet sheet(Session session, FilmStock stock, FrameQuestion question) {
        Lens lens = question.framing().camera().lens();
        SkyLight light = new SkyLight(session.ephemeris(), question.site());
        SkyOnFilm sky = SkyOnFilm.changing(lens, at -> light.at(question.framing().aim(), at).total(),
                question.open());
        return ExposedSheet.of(stock, lens, lens.fNumbers().get(0), sky, question.open());
    }
}
