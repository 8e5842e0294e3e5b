package gloam.cli;

import gloam.answer.ExposureQuestion;
import gloam.answer.Exposures;
import gloam.answer.KnownSky;
import gloam.answer.MeasuredSites;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.store.Input;
import gloam.store.MeasuredSkyFile;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import gloam.view.ExposureReport;
import gloam.view.FilmsReport;
import gloam.view.Report;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sets all f-numbers side by side for one situation. */
final class ExposeCommand extends ReportingCommand {

    private final KnownSkyOptions sky = group(new KnownSkyOptions());

    private final SiteOptions place = group(new SiteOptions());

    private final Option<Input> measured = input("--measured", "FILE",
            "The sky as gloam measure --format json wrote it, which gives the place too; with --trip it "
            + "stands for the measurements of its site there.");

    private final FilmOptions film = group(FilmOptions.repeatable());

    private final FittedFilm fitted = group(new FittedFilm());

    private final TripCameraOptions camera = group(new TripCameraOptions());

    private final Option<Quantity> toneStops = option("--tone", "STOPS", Quantity.class,
            "Tone wanted, in stops from the film's mid-tone (default: 0).");

    private final Option<Duration> lasts = option("--lasts", "DURATION", Duration.class,
            "Exposure time, e.g. 1h50m; reports the resulting tone.");

    private final Option<Integer> sheets = option("--sheets", "N", Integer.class,
            "Sheets to spend on the picture; shows how to bracket (default: 1).");

    private final Option<List<TimedOpening>> openings = repeated("--open", "OPENING", TimedOpening.class,
            "An earlier exposure on the same sheet, such as 2027-02-08T20:10/40m. Repeatable.");

    private final Option<Quantity> ground = option("--ground", "SHARE", Quantity.class,
            "Expose for ground that reflects this share of the light: grass 0.1, rock 0.2, snow 80 %%.");

    private final Option<Quantity> leastDifference = option("--least-difference", "DENSITY", Quantity.class,
            "Density by which a trail must stand out (default: "
            + TrailLimit.LEAST_DIFFERENCE_DENSITY + ").");

    ExposeCommand(Session session) {
        super(session, "expose",
                "Show the exposure time at every f-number.",
                "gloam expose --preview-f-number 2 --preview-iso 640 --preview-exposure 30s"
                + " --film instant-mono-640");
    }

    @Override
    Report report(Session session) {
        Optional<TripFile.Reading> read = place.reading(session);
        Optional<Trip> trip = camera.of(read.map(TripFile.Reading::trip));
        List<KnownSky> skies = sky.known(trip, () -> site(session, trip));
        if (measured.given() && skies.stream().noneMatch(KnownSky.Computed.class::isInstance)) {
            throw new BadInput("--measured needs an instant; add --from for a sky that changes, or --at");
        }
        List<FilmStock> all = film.allRequired(trip.map(Trip::film));
        if (all.size() > 1 && anyGiven("--batch")) {
            throw new BadInput("--batch names a pack of one film, and " + all.size()
                    + " are named; leave it out, or name one film");
        }
        List<FilmStock> films = all.stream().map(published -> fitted.film(published, read, this::note))
                .toList();
        ExposureQuestion question = new ExposureQuestion(films.get(0),
                camera.lens(trip.map(Trip::camera)), camera.frame(trip.map(Trip::camera)), skies,
                ground.value().map(share ->
                OptionalDouble.of(FromOption.checked("--ground", GroundLight.REFLECTANCE, share)))
                        .orElse(OptionalDouble.empty()), earlier(skies.get(0)),
                leastDifference.value().map(density -> FromOption.checked("--least-difference",
                TrailLimit.LEAST_DIFFERENCE,
                        density)).orElse(TrailLimit.LEAST_DIFFERENCE_DENSITY), unknown());
        List<Exposures> answers = films.stream().map(question::of)
                .map(ofFilm -> Exposures.of(session::ephemeris, ofFilm)).toList();
        return answers.size() == 1 ? ExposureReport.of(answers.get(0), session.now())
                : FilmsReport.of(answers, session.now());
    }

    private Site site(Session session, Optional<Trip> trip) {
        if (!measured.given()) {
            return oneOf(place.sites(trip));
        }
        if (place.directly()) {
            throw new BadInput("--measured gives the place; leave out what else says it, such as "
                    + "--place and --zone, or --measured");
        }
        Site found = FromOption.of("--measured", () -> MeasuredSkyFile.read(measured.get()));
        return MeasuredSites.of(session::ephemeris, place.trip().map(asked ->
                SiteOptions.named(asked, found.name(), "--measured").measured(found.skyReadings()))
                .orElse(found));
    }

    private List<Interval> earlier(KnownSky known) {
        if (!openings.get().isEmpty() && !(known instanceof KnownSky.Computed)) {
            throw new BadInput("--open needs a sky computed as it changes; add a site and --from");
        }
        return known instanceof KnownSky.Computed computed ? openings.get().stream().map(opening ->
                FromOption.of("--open", () -> opening.in(computed.site().zone()))).toList() : List.of();
    }

    private ExposureQuestion.Unknown unknown() {
        if (lasts.given() && (toneStops.given() || sheets.given())) {
            throw new BadInput("give --tone STOPS (and --sheets N) to learn the time or --lasts DURATION to "
                    + "learn the tone, not both");
        }
        if (sheets.given() && !openings.get().isEmpty()) {
            throw new BadInput("--sheets cannot go with --open: other sheets have not been open before; "
                    + "leave out one of the two");
        }
        double tone = toneStops.value().map(stops -> FromOption.checked("--tone", Wish.TONE, stops))
                .orElse(0.0);
        return lasts.value().<ExposureQuestion.Unknown>map(ExposureQuestion.ToneAfter::new).orElseGet(() ->
                FromOption.of("--sheets",
                () -> new ExposureQuestion.TimeFor(tone, sheets.value().orElse(1))));
    }
}
