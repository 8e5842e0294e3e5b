package gloam.store;

import gloam.gear.Coordinates;
import gloam.gear.LightDome;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.gear.Skyline;
import gloam.light.Atmosphere;
import gloam.units.Angle;
import gloam.units.Range;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the sites of a trip from their keys. */
final class SiteSection {

    private static final Range SITES = new Range("number of sites", 1, 50, "");

    /** A zenith far from towns; common practice, no source. */
    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;

    private static final Range READINGS = new Range("number of measurements", 0, 100, "");
    private static final Range DOMES = new Range("number of towns", 0, 30, "");

    private SiteSection() {
    }

    /** The sites in a list. */
    static List<Site> sites(Item item) {
        UniqueName names = new UniqueName();
        return item.list(SITES, site -> site(site, names));
    }

    private static Site site(Item item, UniqueName names) {
        Fields fields = item.fields();
        Value<String> name = fields.required("name", names);
        Value<Coordinates> place = place(fields);
        Value<Double> heightM = heightM(fields, place);
        Value<ZoneId> zone = fields.required("zone", Item::zone);
        Value<Double> darkSky = fields.numberOr("dark-sky-mag-arcsec2", DARK_SKY_MAG_ARCSEC2, Site.DARK_SKY);
        Value<Double> clear = heightM.map(Atmosphere::statedClearExtinctionMag);
        Value<Double> extinction = fields.orElse("extinction-mag", clear,
                clear.content().map(mag -> Shown.number(mag) + " (clear air at this height)")
                .orElse("unknown"), value -> value.number(Site.EXTINCTION));
        fields.defaultRule("extinction-mag", "that of clear air at this height");
        Value<Skyline> skyline = fields.orDefault("skyline", Skyline.FLAT, "level all around",
                SkylineFile::named);
        Value<Boolean> sea = fields.orDefault("sea-horizon", false, "false",
                Item::flag);
        Value<List<LightDome>> domes = fields.orDefault("light-domes", List.of(), "none",
                value -> value.list(DOMES, SiteSection::dome));
        Value<List<SkyReading>> readings = fields.orDefault("sky", List.of(), "none",
                value -> value.list(READINGS, reading -> reading(reading, zone)));
        fields.noOthers();
        return new Site(name.get(), place.get().latitude(), place.get().longitude(), heightM.get(),
                zone.get(), darkSky.get(), extinction.get(),
                sea.get() ? skyline.get().overSea(heightM.get()) : skyline.get(), domes.get(),
                readings.get(), Site.USUAL_ZENITH_STOPS);
    }

    private static SkyReading reading(Item item, Value<ZoneId> zone) {
        Fields fields = item.fields();
        Value<Instant> at = fields.required("at", value -> value.instant(zone.get()));
        Value<Double> azimuthDeg = fields.numberOr("azimuth-deg", 0, Skyline.AZIMUTH);
        Value<Double> altitudeDeg = fields.numberOr("altitude-deg", 90, SkyReading.ALTITUDE);
        Value<Double> magArcsec2 = fields.number("mag-arcsec2", SkyReading.BRIGHTNESS);
        Value<Double> spreadMag = fields.numberOr("error-mag",
                SkyReading.USUAL_SPREAD_MAG, SkyReading.SPREAD);
        fields.noOthers();
        return new SkyReading(at.get(), Angle.ofDegrees(azimuthDeg.get()), Angle.ofDegrees(altitudeDeg.get()),
                magArcsec2.get(), spreadMag.get(), OptionalDouble.empty());
    }

    private static LightDome dome(Item item) {
        Fields fields = item.fields();
        Value<Double> azimuthDeg = fields.number("azimuth-deg", Skyline.AZIMUTH);
        boolean measured = fields.has("altitude-deg") || fields.has("mag-arcsec2");
        Supplier<LightDome.Known> known = measured ? measured(fields) : town(fields);
        Value<Double> colourK = fields.numberOr("colour-k", LightDome.USUAL_COLOUR_K, LightDome.COLOUR);
        fields.noOthers();
        return new LightDome(Angle.ofDegrees(azimuthDeg.get()), known.get(), colourK.get());
    }

    private static Supplier<LightDome.Known> town(Fields fields) {
        Value<Double> people = fields.number("people", Town.PEOPLE);
        Value<Double> distanceKm = fields.number("distance-km", Town.DISTANCE);
        return () -> new Town(people.get(), distanceKm.get());
    }

    private static Supplier<LightDome.Known> measured(Fields fields) {
        Value<Double> altitudeDeg = fields.number("altitude-deg", Measured.ALTITUDE);
        Value<Double> magArcsec2 = fields.number("mag-arcsec2", Measured.BRIGHTNESS);
        List.of("people", "distance-km").forEach(key -> fields.refuse(key,
                "stands beside a measured glow; keep one of the two"));
        return () -> new Measured(Angle.ofDegrees(altitudeDeg.get()), magArcsec2.get());
    }

    /** Where it is: one key for all, or latitude and longitude. */
    private static Value<Coordinates> place(Fields fields) {
        Value<Optional<Coordinates>> written = fields.optional("place",
                value -> Coordinates.of(value.text()));
        if (fields.has("place")) {
            Value<Coordinates> place = new Value<>(written.place(),
                    written.content().flatMap(Function.identity()));
            List.of("latitude-deg", "longitude-deg")
                    .forEach(key -> fields.refuse(key, "stands beside place; keep one of the two"));
            return place;
        }
        Value<Angle> latitude = fields.required("latitude-deg",
                value -> angle(value, Site.LATITUDE, Coordinates::latitude));
        Value<Angle> longitude =
                fields.required("longitude-deg",
                value -> angle(value, Site.LONGITUDE, Coordinates::longitude));
        return new Value<>(latitude.place(), latitude.content().flatMap(north -> longitude.content()
                .map(east -> new Coordinates(north, east, OptionalDouble.empty()))));
    }

    private static Angle angle(Item item, Range range, Function<String, Angle> written) {
        return Angle.ofDegrees(item.number(range, text -> written.apply(text).degrees()));
    }

    private static Value<Double> heightM(Fields fields, Value<Coordinates> place) {
        Optional<Double> known = place.content()
                .flatMap(where -> where.heightM().stream().boxed().findFirst());
        if (known.isEmpty()) {
            return fields.number("height-m", Site.HEIGHT);
        }
        fields.refuse("height-m", "stands beside the height in place; keep one of the two");
        return place.map(where -> where.heightM().getAsDouble());
    }

}
