package gloam.cli;

import gloam.gear.Coordinates;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** A place on the Earth and the zone its clocks keep. */
final class PlaceOptions {

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

    /** The options by name with what they gave. */
    Map<String, Optional<?>> options() {
        Map<String, Optional<?>> options = new LinkedHashMap<>();
        options.put("--place", place);
        options.put("--lat", latitude);
        options.put("--lon", longitude);
        options.put("--height", heightM);
        options.put("--zone", zone);
        return options;
    }

    /** The place, its height where that was said. */
    Coordinates coordinates() {
        if (place.isPresent() && (latitude.isPresent() || longitude.isPresent())) {
            throw new BadInput("--place and --lat, --lon say the same; give one of the two");
        }
        OptionalDouble inPlace = place.map(Coordinates::heightM).orElse(OptionalDouble.empty());
        if (inPlace.isPresent() && heightM.isPresent()) {
            throw new BadInput("the height is given twice; leave out --height or the one in --place");
        }
        return new Coordinates(latitude.orElseGet(() -> place.orElseThrow().latitude()),
                longitude.orElseGet(() -> place.orElseThrow().longitude()),
                heightM.map(metres -> OptionalDouble.of(FromOption.checked("--height", Site.HEIGHT, metres)))
                        .orElse(inPlace));
    }

    /** The zone. */
    ZoneId zone() {
        return zone.orElseThrow();
    }

    /** Refuses a place that is not said in full; the beginning of the remedy is the caller's. */
    void refuseMissing(String remedy, boolean withHeight) {
        List<String> missing = missing(withHeight);
        if (!missing.isEmpty()) {
            throw new BadInput("where is not said; " + remedy + String.join(", ", missing));
        }
    }

    /** Options that still have to be given. */
    List<String> missing(boolean withHeight) {
        List<String> missing = new ArrayList<>();
        if (place.isEmpty() && latitude.isEmpty() && longitude.isEmpty()) {
            missing.add(withHeight ? "--place LAT,LON,HEIGHT" : "--place LAT,LON");
        } else {
            boolean high = heightM.isPresent() || place.filter(known -> known.heightM().isPresent()).isPresent();
            addIf(missing, "--lat", place.isEmpty() && latitude.isEmpty());
            addIf(missing, "--lon", place.isEmpty() && longitude.isEmpty());
            addIf(missing, "--height", withHeight && !high);
        }
        addIf(missing, "--zone", zone.isEmpty());
        return missing;
    }

    private static void addIf(List<String> missing, String option, boolean isMissing) {
        if (isMissing) {
            missing.add(option);
        }
    }
}
