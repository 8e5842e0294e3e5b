package gloam.cli;

import gloam.ephemeris.Daylight;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.planner.Trip;
import gloam.proof.ExposedFrame;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.view.FrameQuestion;
import gloam.view.ProofReport;
import gloam.view.Report;
import gloam.view.TrailReport;
import gloam.view.TrailSurvey;
import gloam.trail.TrailEstimator;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Computes the picture of a sheet before it is spent. */
final class ProofCommand extends ReportingCommand {

    private static final Duration POINTS_EVERY = Duration.ofMinutes(5);

    private final SiteOptions place = group(new SiteOptions());

    private final CameraOptions camera = group(new CameraOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final FittedFilm fitted = group(new FittedFilm());

    private final ShotOptions shot = group(new ShotOptions());

    private final Option<Integer> sizePx = option("--size", "PIXELS", Integer.class,
            "Pixels along the frame's longer side (default: ${DEFAULT-VALUE}).").byDefault("1000");

    private final Option<Quantity> groundReflectance = option("--ground", "SHARE", Quantity.class,
            "Light the land that throws back that share of Moon, "
            + "twilight and sky, such as 0.1 for grass or 0.8 for snow (default: a black outline).");

    ProofCommand(Session session) {
        super(session, "proof",
                "Compute the picture that a sheet will carry: as PNG (--out FILE.png), as SVG with "
                + "names, pole and directions, and what shows on it.",
                "gloam proof --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
                + " --lasts 3h --out sheet.png");
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        Camera taken = camera.camera(trip.map(Trip::camera));
        FilmStock stock = fitted.film(film.required(trip.map(Trip::film)), this::note);
        Raster raster = FromOption.of("--size", () -> Raster.of(taken.frame(), sizePx.get()));
        Setting asked = shot.setting(site, taken, new TrailEstimator(session.ephemeris(), site), session);
        Daylight.refuse(session.ephemeris(), site, asked.openings());
        OptionalDouble reflectance = groundReflectance.value().map(share ->
                OptionalDouble.of(FromOption.checked("--ground", GroundLight.REFLECTANCE, share)))
                .orElse(OptionalDouble.empty());
        Sheet sheet = new Sheet(site, stock, List.of(asked));
        FrameQuestion question = new FrameQuestion(site, asked.framing(), asked.openings(), POINTS_EVERY, false);
        TrailReport trails = new TrailSurvey(session.ephemeris(), question,
                Optional.of(new ExposedFrame(session.ephemeris(), sheet)))
                .ofAll(session.stars().stars(), session.now());
        Proof proof = Proof.of(session.ephemeris(), sheet, reflectance, session.stars().stars(), raster);
        return ProofReport.of(proof, trails, session.now());
    }
}
