package gloam.cli;

import gloam.gear.Coordinates;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.light.Atmosphere;
import gloam.planner.Trip;
import gloam.store.Nearest;
import gloam.store.TripFile;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Where: a trip file, or a place given directly. */
final class SiteOptions {

    /** A zenith far from towns on an average night at sunspot minimum, as in a trip file. */
    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;

    @Option(names = "--trip", paramLabel = "FILE", description = "The trip file.")
    private Optional<Path> trip;

    @Option(names = "--site", paramLabel = "NAME",
            description = "One of the trip's sites (default: all, or the first where only one can be looked at).")
    private Optional<String> site;

    @Option(names = "--place", paramLabel = "PLACE", description = "Latitude, longitude and if wanted height, such as "
            + "40.41,-1.23,1320 or \"40°24'36\"N 1°13'48\"W\", or ISO 6709 such as +40.41-001.23+1320/.")
    private Optional<Coordinates> place;

    @Option(names = "--lat", paramLabel = "DEG", converter = Converters.Latitude.class,
            description = "Latitude, north positive: 40.41, 40°24'36\"N or 40:24:36.")
    private Optional<Angle> latitude;

    @Option(names = "--lon", paramLabel = "DEG", converter = Converters.Longitude.class,
            description = "Longitude, east positive, written likewise.")
    private Optional<Angle> longitude;

    @Option(names = "--height", paramLabel = "M", description = "Height in metres, or with its unit.")
    private Optional<Quantity> heightM;

    @Option(names = "--zone", paramLabel = "ZONE", description = "Time zone of the site, such as Europe/Madrid.")
    private Optional<ZoneId> zone;

    @Option(names = "--dark-sky", paramLabel = "MAG",
            description = "Moonless zenith in V mag/arcsec² (default: " + DARK_SKY_MAG_ARCSEC2 + ").")
    private Optional<Quantity> darkSky;

    @Option(names = "--extinction", paramLabel = "MAG",
            description = "Light lost at the zenith in magnitudes (default: clear air at the site's height).")
    private Optional<Quantity> extinctionMag;

    @Option(names = "--sea-horizon",
            description = "The site looks out over the sea from its height: the skyline lies below the level.")
    private boolean seaHorizon;

    /** The trip file as it was understood, if one was given; its trip goes to the chosen site alone. */
    Optional<TripFile.Reading> reading() {
        return trip.map(TripFile::read).map(read ->
                new TripFile.Reading(at(read.trip()), read.defaultsUsed(), read.stay()));
    }

    /** The trip itself. */
    Optional<Trip> trip() {
        return reading().map(TripFile.Reading::trip);
    }

    /** The sites to look at: those of the trip, or the one given directly. */
    List<Site> sites(Optional<Trip> of) {
        refuseMixture();
        return of.map(Trip::sites).orElseGet(() -> List.of(directSite()));
    }

    /** Whether a place is given directly. */
    boolean directly() {
        return direct().values().stream().anyMatch(Optional::isPresent);
    }

    private Trip at(Trip all) {
        refuseMixture();
        return site.map(name -> all.to(List.of(named(all, name)))).orElse(all);
    }

    private static Site named(Trip all, String name) {
        List<String> names = all.sites().stream().map(Site::name).toList();
        return all.sites().stream().filter(known -> known.name().equalsIgnoreCase(name)).findFirst()
                .orElseThrow(() -> new BadInput("site \"" + name + "\" is not in the trip; "
                        + Nearest.to(name, names).map(near -> "did you mean \"" + near + "\"?")
                                .orElse("it has " + String.join(", ", names)) + " (--site)"));
    }

    private Site directSite() {
        Coordinates where = coordinates();
        double height = where.heightM().orElseThrow();
        double clearMag = Math.round(Atmosphere.clearExtinctionMag(height) * 1000) / 1000.0;
        return new Site(named(where), where.latitude(), where.longitude(), height, zone(),
                darkSky.map(mag -> FromOption.checked("--dark-sky", Site.DARK_SKY, mag)).orElse(DARK_SKY_MAG_ARCSEC2),
                extinctionMag.map(mag -> FromOption.checked("--extinction", Site.EXTINCTION, mag)).orElse(clearMag),
                seaHorizon ? Skyline.FLAT.overSea(height) : Skyline.FLAT);
    }

    /** The place given directly, its height with it. */
    private Coordinates coordinates() {
        if (place.isPresent() && (latitude.isPresent() || longitude.isPresent())) {
            throw new BadInput("--place and --lat, --lon say the same; give one of the two");
        }
        if (place.flatMap(known -> known.heightM().stream().boxed().findFirst()).isPresent() && heightM.isPresent()) {
            throw new BadInput("the height is given twice; leave out --height or the one in --place");
        }
        refuseMissing();
        double height = heightM.map(metres -> FromOption.checked("--height", Site.HEIGHT, metres))
                .orElseGet(() -> place.orElseThrow().heightM().orElseThrow());
        return new Coordinates(latitude.orElseGet(() -> place.orElseThrow().latitude()),
                longitude.orElseGet(() -> place.orElseThrow().longitude()), OptionalDouble.of(height));
    }

    private ZoneId zone() {
        return zone.orElseThrow();
    }

    private void refuseMissing() {
        List<String> missing = new ArrayList<>();
        boolean high = heightM.isPresent() || place.filter(known -> known.heightM().isPresent()).isPresent();
        boolean nowhere = place.isEmpty() && latitude.isEmpty() && longitude.isEmpty();
        if (nowhere) {
            missing.add("--place LAT,LON,HEIGHT");
        }
        if (place.isEmpty() && !nowhere && latitude.isEmpty()) {
            missing.add("--lat");
        }
        if (place.isEmpty() && !nowhere && longitude.isEmpty()) {
            missing.add("--lon");
        }
        if (!nowhere && !high) {
            missing.add("--height");
        }
        if (zone.isEmpty()) {
            missing.add("--zone");
        }
        if (!missing.isEmpty()) {
            throw new BadInput("where is not said; give --trip FILE, or add " + String.join(", ", missing));
        }
    }

    private static String named(Coordinates where) {
        double latitudeDeg = where.latitude().degrees();
        double longitudeDeg = where.longitude().degrees();
        return String.format(Locale.ROOT, "%.4f° %s %.4f° %s", Math.abs(latitudeDeg), latitudeDeg < 0 ? "S" : "N",
                Math.abs(longitudeDeg), longitudeDeg < 0 ? "W" : "E");
    }

    private void refuseMixture() {
        List<String> direct = direct().entrySet().stream().filter(option -> option.getValue().isPresent())
                .map(Map.Entry::getKey).toList();
        if (trip.isPresent() && !direct.isEmpty()) {
            throw new BadInput(String.join(", ", direct) + " cannot go with --trip, which gives the place; "
                    + "leave out one or the other");
        }
        if (trip.isEmpty() && site.isPresent()) {
            throw new BadInput("--site names a site of a trip; add --trip FILE");
        }
    }

    private Map<String, Optional<?>> direct() {
        Map<String, Optional<?>> options = new LinkedHashMap<>();
        options.put("--place", place);
        options.put("--lat", latitude);
        options.put("--lon", longitude);
        options.put("--height", heightM);
        options.put("--zone", zone);
        options.put("--dark-sky", darkSky);
        options.put("--extinction", extinctionMag);
        options.put("--sea-horizon", seaHorizon ? Optional.of(true) : Optional.empty());
        return options;
    }
}
