package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.journal.Exposed;
import gloam.journal.FilmFit;
import gloam.journal.Opening;
import gloam.journal.Place;
import gloam.journal.SheetLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.PlanFile;
import gloam.store.PlanFile.PlannedSheet;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How a sheet was exposed: as a plan had it, with whatever is given changed. */
final class SheetOptions extends OptionGroup {

    private final Option<Input> plan = input("--plan", "FILE",
            "A plan saved as JSON, for aim, film, f-number and times; needs --trip.");

    private final Option<Integer> sheet = option("--sheet", "N", Integer.class, "Number of the sheet in the plan.");

    private final Option<List<TimedOpening>> opened = repeated("--open", "OPENING", TimedOpening.class,
            "When it was open, such as 2027-02-08T21:00/40m (default: the plan's). Repeatable.");

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where it pointed, from north through east (default: the plan's).");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high it pointed (default: the plan's).");

    private final Option<Quantity> skyMagArcsec2 = option("--sky-mag-arcsec2", "MAG", Quantity.class,
            "Measured sky at the frame's centre, V mag/arcsec² (default: computed).");

    private final Option<String> batch = option("--batch", "NAME", String.class, "The pack or batch of the film.")
            .byDefault("");

    private final Option<Quantity> temperatureC = option("--temperature", "C", Quantity.class, "Temperature in °C.");

    private final SiteOptions place = group(new SiteOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final CameraOptions camera = group(new CameraOptions());

    /** Whether an exposure is told at all. */
    boolean given() {
        return plan.given() || !opened.get().isEmpty();
    }

    /** The exposure. */
    Exposed exposed(Session session) {
        Optional<PlannedSheet> planned = planned();
        Optional<Trip> trip = place.trip();
        Optional<Site> site = site(trip, planned);
        Lens lens = oneFNumber(camera.lens(trip.map(Trip::camera)), planned);
        Optional<Direction> aim = aim(planned);
        ZoneId zone = site.map(Site::zone).orElse(ZoneOffset.UTC);
        Function<Interval, Opening> light = light(session, site, aim, lens);
        return new Exposed(film(trip, planned), batch.get().strip(), site.map(Place::of), aim, lens,
                openings(zone, planned).stream().map(light).toList(), skyMagArcsec2.given(),
                SheetLight.stars(lens, site, aim), temperatureC.value().map(celsius -> OptionalDouble.of(
                        FromOption.checked("--temperature", Exposed.TEMPERATURE, celsius))).orElse(OptionalDouble.empty()));
    }

    private Optional<PlannedSheet> planned() {
        if (plan.given() != sheet.given()) {
            throw new BadInput("--plan FILE and --sheet N go together; give both");
        }
        return plan.value().map(file -> FromOption.of("--plan", () -> PlanFile.sheet(file, sheet.get())));
    }

    private Optional<Site> site(Optional<Trip> trip, Optional<PlannedSheet> planned) {
        if (trip.isEmpty() && planned.isPresent()) {
            throw new BadInput("a plan does not tell site and camera; add --trip FILE");
        }
        if (trip.isEmpty() && !place.directly() && skyMagArcsec2.given()) {
            return Optional.empty();
        }
        List<Site> sites = place.sites(trip);
        return Optional.of(planned.flatMap(known -> sites.stream().filter(site -> site.name().equals(known.site()))
                .findFirst()).orElse(sites.get(0)));
    }

    private String film(Optional<Trip> trip, Optional<PlannedSheet> planned) {
        return planned.filter(known -> !film.named()).map(known -> FilmFit.publishedName(known.film()))
                .orElseGet(() -> film.required(trip.map(Trip::film)).name());
    }

    private Optional<Direction> aim(Optional<PlannedSheet> planned) {
        if (azimuthDeg.given() != altitudeDeg.given()) {
            throw new BadInput("--azimuth DEG and --altitude DEG go together; give both");
        }
        return azimuthDeg.value().map(azimuth -> Direction.ofDegrees(
                FromOption.checked("--azimuth", Direction.AZIMUTH, azimuth),
                FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.get())))
                .or(() -> planned.map(PlannedSheet::aim));
    }

    /** The lens at the f-number used; the journal speaks of the frame's centre, where no mount takes light. */
    private Lens oneFNumber(Lens lens, Optional<PlannedSheet> planned) {
        double fNumber = planned.filter(known -> lens.fNumbers().size() > 1).map(PlannedSheet::fNumber)
                .orElse(lens.fNumbers().get(0));
        if (lens.fNumbers().size() > 1 && planned.isEmpty()) {
            throw new BadInput("which f-number was used is not said; give --f-number N");
        }
        return new Lens(lens.focalLengthMm(), List.of(fNumber), lens.transmittance(), lens.focusM(), lens.spotUm(),
                lens.filterStops(), lens.projection(), Vignetting.NONE);
    }

    private List<Interval> openings(ZoneId zone, Optional<PlannedSheet> planned) {
        return opened.get().isEmpty() ? List.of(planned.orElseThrow().open()) : opened.get().stream()
                .map(opening -> FromOption.of("--open", () -> opening.in(zone))).toList();
    }

    private Function<Interval, Opening> light(Session session, Optional<Site> site, Optional<Direction> aim, Lens lens) {
        if (skyMagArcsec2.given()) {
            SkyBrightness sky = SkyBrightness.ofMagArcsec2(
                    FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, skyMagArcsec2.get()));
            return open -> SheetLight.measured(sky, lens, open);
        }
        SkyLight sky = new SkyLight(session.ephemeris(), site.orElseThrow());
        Direction towards = aim.orElseThrow(() -> new BadInput(
                "the light cannot be computed without an aim; give --azimuth and --altitude, or --sky-mag-arcsec2"));
        return open -> SheetLight.computed(sky, towards, lens, open);
    }
}
