package gloam.cli;

import gloam.exposure.TrailLimit;
import gloam.light.GroundLight;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.report.ExposureQuestion;
import gloam.report.ExposureSurvey;
import gloam.report.KnownSky;
import gloam.report.Report;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
    private FittedFilm fitted;

    @Mixin
    private CameraOptions camera;

    @Option(names = "--tone", paramLabel = "STOPS",
            description = "Tone wanted, in stops from the film's mid-tone (default: 0).")
    private Optional<Quantity> toneStops;

    @Option(names = "--lasts", paramLabel = "DURATION",
            description = "How long it is open, such as 1h50m; tells the tone, not the time.")
    private Optional<Duration> lasts;

    @Option(names = "--sheets", paramLabel = "N",
            description = "Sheets to spend on the picture; tells how to bracket (default: 1).")
    private Optional<Integer> sheets;

    @Option(names = "--open", paramLabel = "OPENING",
            description = "An earlier one on the same sheet, such as 2027-02-08T20:10/40m. Repeatable.")
    private List<TimedOpening> openings = new ArrayList<>();

    @Option(names = "--ground", paramLabel = "SHARE",
            description = "Expose for ground that throws back that share of the light: grass 0.1, rock 0.2, snow 80 %%.")
    private Optional<Quantity> ground;

    @Option(names = "--least-difference", paramLabel = "DENSITY",
            description = "By how much density a trail has to stand out (default: "
                    + TrailLimit.LEAST_DIFFERENCE_DENSITY + ").")
    private Optional<Quantity> leastDifference;

    ExposeCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Optional<Trip> trip = place.trip();
        List<KnownSky> skies = sky.known(trip, () -> oneOf(place.sites(trip)));
        ExposureQuestion question = new ExposureQuestion(
                fitted.film(film.required(trip.map(Trip::film)), this::note),
                camera.lens(trip.map(Trip::camera)), camera.frame(trip.map(Trip::camera)), skies,
                ground.map(share -> OptionalDouble.of(FromOption.checked("--ground", GroundLight.REFLECTANCE, share)))
                        .orElse(OptionalDouble.empty()), earlier(skies.get(0)),
                leastDifference.map(density -> FromOption.checked("--least-difference", TrailLimit.LEAST_DIFFERENCE,
                        density)).orElse(TrailLimit.LEAST_DIFFERENCE_DENSITY), unknown());
        return new ExposureSurvey(session::ephemeris, question).report(session.now());
    }

    private List<Interval> earlier(KnownSky known) {
        if (!openings.isEmpty() && !(known instanceof KnownSky.Computed)) {
            throw new BadInput("--open needs a sky computed as it changes; add a site and --from");
        }
        return known instanceof KnownSky.Computed computed ? openings.stream().map(opening ->
                FromOption.of("--open", () -> opening.in(computed.site().zone()))).toList() : List.of();
    }

    private ExposureQuestion.Unknown unknown() {
        if (lasts.isPresent() && (toneStops.isPresent() || sheets.isPresent())) {
            throw new BadInput("give --tone STOPS (and --sheets N) to learn the time or --lasts DURATION to learn the "
                    + "tone, not both");
        }
        if (sheets.isPresent() && !openings.isEmpty()) {
            throw new BadInput("--sheets cannot go with --open: other sheets have not been open before; leave out one of the two");
        }
        double tone = toneStops.map(stops -> FromOption.checked("--tone", Wish.TONE, stops)).orElse(0.0);
        return lasts.<ExposureQuestion.Unknown>map(ExposureQuestion.ToneAfter::new).orElseGet(() ->
                FromOption.of("--sheets", () -> new ExposureQuestion.TimeFor(tone, sheets.orElse(1))));
    }
}
