package gloam.cli;

import gloam.answer.SheetLit;
import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Place;
import gloam.journal.SheetLight;
import gloam.light.SkyBrightness;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.PlanFile;
import gloam.store.PlanFile.PlannedOpening;
import gloam.store.PlanFile.PlannedSheet;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import gloam.view.SheetDoubtWords;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** How a sheet was exposed: as a plan had it, with whatever is given changed. */
final class SheetOptions extends OptionGroup {

    private final Option<Input> plan = input("--plan", "FILE",
            "A plan saved as JSON, for aim, film, f-number and times; needs --trip.");

    private final Option<Integer> sheet = option("--sheet", "N", Integer.class,
            "Number of the sheet in the plan (default: asks for all of a night).");

    private final Option<List<TimedOpening>> opened = repeated("--open", "OPENING", TimedOpening.class,
            "Opening, e.g. 2027-02-08T21:00/40m (default: the plan's). Repeatable.");

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where it pointed, from north through east (default: the plan's).");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high it pointed (default: the plan's).");

    private final Option<Quantity> skyMagArcsec2 = option("--sky-mag-arcsec2", "MAG", Quantity.class,
            "Measured sky at the frame's centre, V mag/arcsec² (default: computed).");

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "The pack or batch of the film (default: the trip's).");

    private final Option<Quantity> temperatureC = option("--temperature", "C", Quantity.class,
            "Temperature in °C.");

    private final SiteOptions place = group(new SiteOptions());

    private final FilmOptions film = group(new FilmOptions());

    private final TripCameraOptions camera = group(new TripCameraOptions());

    /** Whether any exposure is given. */
    boolean given() {
        return plan.given() || !opened.get().isEmpty();
    }

    /** Refuses what says which sheet it was and when it was open. */
    void refuseOneSheet(String instead) {
        if (anyGiven("--plan", "--sheet", "--open", "--azimuth", "--altitude")) {
            throw new BadInput(instead + " names the sheets, their aims and times; leave out --plan, "
                    + "--sheet, --open, --azimuth and --altitude");
        }
    }

    /** The exposure: what is given, for the rest what a plan or in a correction the last word says. */
    Exposed exposed(Session session, Optional<Correction> correction,
            Optional<PlannedSheet> planned, Consumer<String> notes) {
        correction.ifPresent(this::refuseWhatIsNotKept);
        Optional<Exposed> known = correction.map(Correction::kept).map(Entry::exposed);
        Optional<TripFile.Reading> read = place.reading(session);
        Optional<Trip> trip = camera.of(read.map(TripFile.Reading::trip),
                planned.flatMap(PlannedSheet::camera).filter(name -> read.map(TripFile.Reading::trip)
                        .filter(all -> all.cameras().size() > 1).isPresent()));
        Optional<Site> site = site(trip, planned, known, notes);
        Optional<Place> where = site.map(Place::of).or(() -> known.flatMap(Exposed::place));
        Optional<Direction> aim = aim(planned.map(PlannedSheet::aim).or(() -> known.flatMap(Exposed::aim)));
        Lens lens = lens(trip, planned, known);
        List<Interval> open = openings(where.map(Place::zone).orElse(ZoneOffset.UTC), planned, known);
        SheetLit lit = new SheetLit(session::ephemeris, site, where, new OpeningSettings(open, aim, lens,
                anyGiven("--azimuth", "--altitude"), anyGiven("--f-number")).of(planned, known));
        if (site.isPresent() || anyGiven("--open", "--azimuth", "--altitude")) {
            lit.doubts(session.now()).stream().map(SheetDoubtWords::of).forEach(notes);
        }
        Optional<SheetLit.LastWord> last = correction.map(Correction::lastWord);
        String stock = film(trip, planned, known);
        String pack = batch.value().map(name -> FromOption.of("--batch", () -> Exposed.batch(name)))
                .or(() -> known.map(Exposed::batch)).or(() -> read.flatMap(trips -> trips.batchOf(stock)))
                .orElse("");
        return new Exposed(stock, pack, where, aim, lens, lit.openings(measured(), last),
                measured().isPresent() || known.filter(Exposed::measured).isPresent(),
                lit.stars(last), temperatureC.value().map(celsius -> OptionalDouble.of(
                        FromOption.checked("--temperature", Exposed.TEMPERATURE, celsius)))
                .or(() -> known.map(Exposed::temperatureC)).orElse(OptionalDouble.empty()));
    }

    /** Whether a plan is given without one of its sheets: all of a night are meant. */
    boolean ofANight() {
        return plan.given() && !sheet.given() && !anyGiven("--open", "--azimuth", "--altitude");
    }

    /** The nights of the plan with their sheets. */
    List<PlanFile.PlannedNight> nights() {
        return FromOption.of("--plan", () -> PlanFile.nights(plan.get()));
    }

    /** The trip, which a plan needs. */
    Trip trip() {
        return place.trip().orElseThrow(() ->
                new BadInput("a plan holds neither site nor camera; add --trip FILE"));
    }

    /** Whether a place is given without a trip. */
    boolean placedDirectly() {
        return place.directly();
    }

    /** Refuses a trip or a site of it that cannot be had. */
    void checkSite() {
        place.trip();
    }

    /**
     * Refuses openings that overlap, are out of order, or are at times that the site's clocks do not show.
     */
    void checkOpenings() {
        Optional<ZoneId> trips = place.trip().map(trip -> trip.sites().get(0).zone());
        openings(trips.or(place::zone).orElse(ZoneOffset.UTC), Optional.empty(), Optional.empty());
    }

    /** A correction that changes nothing must not look like one. */
    private void refuseWhatIsNotKept(Correction correction) {
        for (String option : List.of("--frame", "--corner-stops", "--reciprocity")) {
            if (anyGiven(option)) {
                throw new BadInput("the journal does not keep " + option
                        + ", so that it cannot be corrected; leave it out");
            }
        }
        if (film.named() && anyGiven("--iso")) {
            throw new BadInput("the journal keeps the name of a film, not its speed; leave out --iso");
        }
    }

    /** The sheet of the plan, if one is given; refused if the plan does not have it. */
    Optional<PlannedSheet> planned() {
        if (plan.given() != sheet.given()) {
            throw new BadInput("--plan FILE and --sheet N go together; give both");
        }
        return plan.value().map(file -> FromOption.of("--plan", () -> PlanFile.sheet(file, sheet.get())));
    }

    private Optional<Site> site(Optional<Trip> trip, Optional<PlannedSheet> planned,
            Optional<Exposed> known, Consumer<String> notes) {
        if (planned.isPresent()) {
            trip();
        }
        if (!place.given() && (skyMagArcsec2.given() || known.isPresent())) {
            return Optional.empty();
        }
        Site site = place.site(trip, planned.map(PlannedSheet::site)
                .or(() -> known.flatMap(Exposed::place).map(Place::name)),
                planned.isPresent() ? doubt -> { } : notes);
        if (!anyGiven("--site") && planned.filter(plans -> !plans.site().equals(site.name())).isPresent()) {
            throw new BadInput("the plan's site \"" + planned.get().site() + "\" is not in the trip; give "
                    + "the trip that was planned, or --site NAME (--plan, --trip)");
        }
        return Optional.of(site);
    }

    private String film(Optional<Trip> trip, Optional<PlannedSheet> planned, Optional<Exposed> known) {
        Optional<PlannedSheet> unlessNamed = planned.filter(plans -> !film.named());
        if (unlessNamed.isPresent()) {
            return unlessNamed.get().film();
        }
        return known.isEmpty() ? film.required(trip.map(Trip::film)).name()
                : film.film(Optional.empty()).map(FilmStock::name).orElse(known.get().film());
    }

    /** The aim, of which either angle may be the plan's or the one known. */
    private Optional<Direction> aim(Optional<Direction> known) {
        if (known.isEmpty() && azimuthDeg.given() != altitudeDeg.given()) {
            throw new BadInput("--azimuth DEG and --altitude DEG go together; give both");
        }
        if (!azimuthDeg.given() && !altitudeDeg.given()) {
            return known;
        }
        return Optional.of(Direction.ofDegrees(
                azimuthDeg.value().map(deg -> FromOption.checked("--azimuth", Direction.AZIMUTH, deg))
                        .orElseGet(() -> known.orElseThrow().azimuth().degrees()),
                altitudeDeg.value().map(deg -> FromOption.checked("--altitude", Direction.ALTITUDE, deg))
                        .orElseGet(() -> known.orElseThrow().altitude().degrees())));
    }

    /**
     * The lens: of a new sheet or one of a plan the trip's, else the one known, with whatever is given
     * changed.
     */
    private Lens lens(Optional<Trip> trip, Optional<PlannedSheet> planned, Optional<Exposed> known) {
        Lens lens = planned.isPresent() || known.isEmpty() ? camera.lens(trip.map(Trip::camera))
                : camera.over(known.get().lens(), Vignetting.NONE);
        Lens used = oneFNumber(lens, planned);
        return FromOption.of("--focus", () -> SheetLight.kept(used));
    }

    /** The lens at the f-number used; the journal is about the frame's centre, where no mount takes light. */
    private static Lens oneFNumber(Lens lens, Optional<PlannedSheet> planned) {
        FNumber fNumber = planned.filter(known -> lens.fNumbers().size() > 1).map(PlannedSheet::fNumber)
                .orElse(lens.fNumbers().get(0));
        if (lens.fNumbers().size() > 1 && planned.isEmpty()) {
            throw new BadInput("no f-number given; use --f-number N");
        }
        return new Lens(lens.focalLengthMm(), List.of(fNumber), lens.transmittance(), lens.focusM(),
                lens.spotUm(), lens.filterStops(), lens.projection(), Vignetting.NONE);
    }

    private List<Interval> openings(ZoneId zone, Optional<PlannedSheet> planned, Optional<Exposed> known) {
        if (opened.get().isEmpty()) {
            return planned.map(plans -> plans.openings().stream().map(PlannedOpening::open).toList())
                    .orElseGet(() -> known.orElseThrow(() -> new BadInput("no exposure given; use "
                            + "--open INSTANT/DURATION, or --plan FILE and --sheet N, or --corrects ENTRY"))
                            .openings().stream().map(Opening::open).toList());
        }
        return FromOption.of("--open", () -> {
            List<Interval> openings = opened.get().stream().map(opening -> opening.in(zone)).toList();
            Exposed.checkOrder(openings, zone);
            return openings;
        });
    }

    private Optional<SkyBrightness> measured() {
        return skyMagArcsec2.value().map(mag -> SkyBrightness.ofMagArcsec2(
                FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, mag)));
    }
}
