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

/** A place on the Earth and the zone its clocks keep. */
final class PlaceOptions extends OptionGroup {

    private final Option<Coordinates> place = option("--place", "PLACE", Coordinates.class,
            "Latitude, longitude and if wanted height, such as "
            + "40.41,-1.23,1320 or \"40°24'36\"N 1°13'48\"W\", or ISO 6709 such as +40.41-001.23+1320/.");

    private final Option<Angle> latitude = option("--lat", "DEG", Angle.class,
            "Latitude, north positive: 40.41, 40°24'36\"N or 40:24:36.").readBy(new Converters.Latitude());

    private final Option<Angle> longitude = option("--lon", "DEG", Angle.class,
            "Longitude, east positive, written the same way.").readBy(new Converters.Longitude());

    private final Option<Quantity> heightM = option("--height", "M", Quantity.class,
            "Height in metres, or with its unit.");

    private final Option<ZoneId> zone = option("--zone", "ZONE", ZoneId.class,
            "Time zone of the site, such as Europe/Madrid.");

    /** The options by name with what they gave. */
    Map<String, Optional<?>> options() {
        Map<String, Optional<?>> options = new LinkedHashMap<>();
        options.put("--place", place.value());
        options.put("--lat", latitude.value());
        options.put("--lon", longitude.value());
        options.put("--height", heightM.value());
        options.put("--zone", zone.value());
        return options;
    }

    /** The place, its height where that was said. */
    Coordinates coordinates() {
        if (place.given() && (latitude.given() || longitude.given())) {
            throw new BadInput("--place and --lat, --lon say the same; give one of the two");
        }
        OptionalDouble inPlace = place.given() ? place.get().heightM() : OptionalDouble.empty();
        if (inPlace.isPresent() && heightM.given()) {
            throw new BadInput("the height is given twice; leave out --height or the one in --place");
        }
        return new Coordinates(latitude.given() ? latitude.get() : place.get().latitude(),
                longitude.given() ? longitude.get() : place.get().longitude(),
                heightM.given() ? OptionalDouble.of(FromOption.checked("--height", Site.HEIGHT,
                heightM.get())) : inPlace);
    }

    /** The zone. */
    ZoneId zone() {
        return zone.get();
    }

    /** Refuses a place that is not said in full; the beginning of the remedy is the caller's. */
    void refuseMissing(String remedy, boolean withHeight) {
        List<String> missing = missing(withHeight);
        if (!missing.isEmpty()) {
            throw new BadInput("no location given; " + remedy + String.join(", ", missing));
        }
    }

    /** Options that still have to be given. */
    List<String> missing(boolean withHeight) {
        List<String> missing = new ArrayList<>();
        if (!place.given() && !latitude.given() && !longitude.given()) {
            missing.add(withHeight ? "--place LAT,LON,HEIGHT" : "--place LAT,LON");
        } else {
            boolean high = heightM.given() || place.value().filter(known -> known.heightM().isPresent())
                    .isPresent();
            addIf(missing, "--lat", !place.given() && !latitude.given());
            addIf(missing, "--lon", !place.given() && !longitude.given());
            addIf(missing, "--height", withHeight && !high);
        }
        addIf(missing, "--zone", !zone.given());
        return missing;
    }

    private static void addIf(List<String> missing, String option, boolean isMissing) {
        if (isMissing) {
            missing.add(option);
        }
    }
}
