package gloam.cli;

import gloam.answer.MeasuredSites;
import gloam.gear.Coordinates;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.light.Atmosphere;
import gloam.planner.Trip;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.units.Nearest;
import gloam.units.Quantity;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Where: a trip file, or a place given directly. */
final class SiteOptions extends OptionGroup {

    /** A zenith far from towns on an average night at sunspot minimum, as in a trip file. */
    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;

    private final Option<Input> trip = input("--trip", "FILE", "The trip file.");

    private final Option<String> site = option("--site", "NAME", String.class,
            "One of the trip's sites (default: all, or the first where only one can be looked at).");

    private final PlaceOptions place = group(new PlaceOptions());

    private final Option<Quantity> darkSky = option("--dark-sky", "MAG", Quantity.class,
            "Moonless zenith in V mag/arcsec² (default: " + DARK_SKY_MAG_ARCSEC2 + ").");

    private final Option<Quantity> extinctionMag = option("--extinction", "MAG", Quantity.class,
            "Light lost at the zenith in magnitudes (default: clear air at the site's height).");

    private final Option<Boolean> seaHorizon = flag("--sea-horizon",
            "The site looks out over the sea from its height: the skyline lies below the level.");

    /** The trip file as it was understood, if one was given; its trip goes to the chosen site alone. */
    Optional<TripFile.Reading> reading() {
        if (!trip.given()) {
            return Optional.empty();
        }
        TripFile.Reading read = TripFile.read(trip.get());
        return Optional.of(read.with(at(read.trip())));
    }

    /** The same, its sites as their measurements have them. */
    Optional<TripFile.Reading> reading(Session session) {
        return reading().map(read -> read.with(MeasuredSites.of(session::ephemeris, read.trip())));
    }

    /** The trip itself, its sites as their measurements have them. */
    Optional<Trip> trip(Session session) {
        return reading(session).map(TripFile.Reading::trip);
    }

    /** The trip as written. */
    Optional<Trip> trip() {
        return reading().map(TripFile.Reading::trip);
    }

    /** The sites to look at: those of the trip, or the one given directly. */
    List<Site> sites(Optional<Trip> of) {
        refuseMixture();
        return of.isPresent() ? of.get().sites() : List.of(directSite());
    }

    /** The site of that name among them, else the first, which a note says where there are more. */
    Site site(Optional<Trip> of, Optional<String> name, Consumer<String> notes) {
        List<Site> sites = sites(of);
        return sites.stream().filter(site -> name.filter(site.name()::equals).isPresent()).findFirst()
                .orElseGet(() -> ReportingCommand.first(sites, notes));
    }

    /** Whether anything of a place is given. */
    boolean given() {
        return trip.given() || site.given() || directly();
    }

    /** Whether a place is given directly. */
    boolean directly() {
        return direct().values().stream().anyMatch(Optional::isPresent);
    }

    /** The zone of a place given directly, if it was given. */
    Optional<ZoneId> zone() {
        return direct().get("--zone").map(ZoneId.class::cast);
    }

    private Trip at(Trip all) {
        refuseMixture();
        return site.value().map(name -> all.to(List.of(named(all, name, "--site")))).orElse(all);
    }

    /** The trip's site of a name that an option gives; refused if there is none. */
    static Site named(Trip all, String name, String option) {
        List<String> names = all.sites().stream().map(Site::name).toList();
        return all.sites().stream().filter(known -> known.name().equalsIgnoreCase(name)).findFirst()
                .orElseThrow(() -> new BadInput("site \"" + name + "\" is not in the trip; "
                        + Nearest.to(name, names).map(near -> "did you mean \"" + near + "\"?")
                                .orElse("it has " + String.join(", ", names)) + " (" + option + ")"));
    }

    private Site directSite() {
        place.refuseMissing("use --trip FILE, or add ", true);
        Coordinates where = place.coordinates();
        double height = where.heightM().orElseThrow();
        return new Site(where.toString(), where.latitude(), where.longitude(), height, place.zone(),
                darkSky.given() ? FromOption.checked("--dark-sky", Site.DARK_SKY, darkSky.get())
                : DARK_SKY_MAG_ARCSEC2,
                extinctionMag.given() ? FromOption.checked("--extinction", Site.EXTINCTION,
                extinctionMag.get())
                        : Atmosphere.statedClearExtinctionMag(height),
                seaHorizon.given() ? Skyline.FLAT.overSea(height) : Skyline.FLAT);
    }

    private void refuseMixture() {
        List<String> direct = new ArrayList<>();
        for (Map.Entry<String, Optional<?>> option : direct().entrySet()) {
            if (option.getValue().isPresent()) {
                direct.add(option.getKey());
            }
        }
        if (trip.given() && !direct.isEmpty()) {
            throw new BadInput(String.join(", ", direct) + " cannot go with --trip, which gives the place; "
                    + "leave out one or the other");
        }
        if (!trip.given() && site.given()) {
            throw new BadInput("--site names a site of a trip; add --trip FILE");
        }
    }

    private Map<String, Optional<?>> direct() {
        Map<String, Optional<?>> options = new LinkedHashMap<>(place.options());
        options.put("--dark-sky", darkSky.value());
        options.put("--extinction", extinctionMag.value());
        options.put("--sea-horizon", seaHorizon.given() ? Optional.of(true) : Optional.empty());
        return options;
    }
}
