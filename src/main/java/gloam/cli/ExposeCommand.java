package gloam.cli;

import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.report.ExposureSurvey;
import gloam.report.KnownSky;
import gloam.report.Report;
import gloam.units.BadInput;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sets all f-numbers side by side for one situation. */
@Command(name = "expose", description = "Tell aperture and time for one situation, all f-numbers side by side.",
        footer = "gloam expose --preview-f-number 2 --preview-iso 640 --preview-exposure 30s"
                + " --film instant-mono-640")
final class ExposeCommand extends ReportingCommand {

    @Mixin
    private KnownSkyOptions sky;

    @Mixin
    private SiteOptions place;

    @Mixin
    private FilmOptions film;

    @Mixin
    private CameraOptions camera;

    @Option(names = "--tone", paramLabel = "STOPS",
            description = "Sky tone wanted, in stops from the film's mid-tone (default: 0).")
    private Optional<Double> toneStops;

    @Option(names = "--lasts", paramLabel = "DURATION",
            description = "How long the shutter is open, such as 1h50m; tells the tone instead of the time.")
    private Optional<Duration> lasts;

    ExposeCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        if (toneStops.isPresent() && lasts.isPresent()) {
            throw new BadInput("give --tone STOPS to learn the time or --lasts DURATION to learn the tone, not both");
        }
        Optional<Trip> trip = place.trip();
        KnownSky known = sky.known(trip, () -> oneOf(place.sites(trip)));
        FilmStock stock = film.required(trip.map(Trip::film));
        Lens lens = camera.lens(trip.map(Trip::camera));
        ExposureSurvey survey = new ExposureSurvey(session::ephemeris, stock, lens, known);
        return lasts.map(open -> survey.after(open, session.now())).orElseGet(() -> survey.toTone(
                FromOption.checked("--tone", Wish.TONE, toneStops.orElse(0.0)), session.now()));
    }
}
