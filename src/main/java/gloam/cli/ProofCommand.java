package gloam.cli;

import gloam.ephemeris.Body;
import gloam.ephemeris.SkylinePassage;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.planner.Trip;
import gloam.proof.ExposedFrame;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.proof.SheetSetup;
import gloam.report.FrameQuestion;
import gloam.report.ProofReport;
import gloam.report.Report;
import gloam.report.TrailReport;
import gloam.report.TrailSurvey;
import gloam.trail.TrailEstimator;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Computes the picture of a sheet before it is spent. */
@Command(name = "proof",
            description = "Compute the picture that a sheet will carry: as PNG (--out FILE.png), as SVG with "
        + "names, pole and directions, and what shows on it.",
        footer = "gloam proof --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 3h --out sheet.png")
final class ProofCommand extends ReportingCommand {

    private static final Duration POINTS_EVERY = Duration.ofMinutes(5);

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

    @Option(names = "--size", paramLabel = "PIXELS", defaultValue = "1000",
            description = "Pixels along the frame's longer side (default: ${DEFAULT-VALUE}).")
    private int sizePx;

    @Option(names = "--ground", paramLabel = "SHARE",
            description = "Light the land that throws back that share of Moon, "
            + "twilight and sky, such as 0.1 for grass or 0.8 for snow (default: a black outline).")
    private Optional<Quantity> groundReflectance;

    ProofCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        FilmStock stock = fitted.film(film.required(trip.map(Trip::film)), this::note);
        Raster raster = FromOption.of("--size", () -> Raster.of(taken.frame(), sizePx));
        ShotOptions.Shot asked = shot.shot(site, taken, new TrailEstimator(session.ephemeris(), site), session);
        refuseSun(session, site, asked.openings());
        SheetSetup setup = new SheetSetup(site, asked.framing(), stock, taken.lens().fNumbers().get(0),
                asked.openings(), groundReflectance.map(share ->
                        OptionalDouble.of(FromOption.checked("--ground", GroundLight.REFLECTANCE, share)))
                        .orElse(OptionalDouble.empty()));
        FrameQuestion question = new FrameQuestion(site, asked.framing(), asked.openings(), POINTS_EVERY, false);
        TrailReport trails = new TrailSurvey(session.ephemeris(), question,
                Optional.of(new ExposedFrame(session.ephemeris(), setup)))
                .ofAll(session.stars().stars(), session.now());
        return ProofReport.of(Proof.of(session.ephemeris(), setup, session.stars().stars(), raster), trails,
                session.now());
    }

    private static void refuseSun(Session session, Site site, List<Interval> openings) {
        for (Interval opening : openings) {
            if (!SkylinePassage.inView(session.ephemeris(), site, Body.SUN, opening).isEmpty()) {
                throw new BadInput("the Sun is up while the shutter is open; open it after sunset and close it before "
                        + "sunrise");
            }
        }
    }
}
