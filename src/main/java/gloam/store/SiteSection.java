package gloam.store;

import gloam.field.Forecast;
import gloam.gear.Coordinates;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.gear.Skyline;
import gloam.light.Atmosphere;
import gloam.planner.CarriedCamera;
import gloam.planner.Preview;
import gloam.planner.Previews;
import gloam.units.Angle;
import gloam.units.Nearest;
import gloam.units.Range;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A site of a trip as read from its keys.
 *
 * @param site     the site, under the usual dark sky where it states none
 * @param stated   whether it states its dark sky
 * @param preview  a digital frame made there
 * @param forecast what names the weather forecast for it
 */
record SiteSection(Site site, boolean stated, Value<Optional<Preview>> preview, Optional<Item> forecast) {

    private static final String DARK_SKY = "dark-sky-mag-arcsec2";
    private static final double STEPS_A_MAG = 100;
    private static final Range SITES = new Range("number of sites", 1, 50, "");

    /** A zenith far from towns; common practice, no source. */
    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;

    /** The sites in a list; metered where the trip has a digital frame for all of them. */
    static List<SiteSection> sites(Item item, boolean metered) {
        UniqueName names = new UniqueName();
        return item.list(SITES, site -> site(site, names, metered));
    }

    /** The name of one of the sites. */
    static String named(Item item, Value<List<SiteSection>> sites) {
        String name = item.text();
        List<String> known = sites.get().stream().map(read -> read.site.name()).toList();
        if (!known.contains(name)) {
            throw item.fault("no site is named " + Shown.quoted(name) + ". " + Nearest.hint(name, known));
        }
        return name;
    }

    /** The forecasts of the sites that have one of their own. */
    static Map<String, Value<Forecast>> forecasts(List<SiteSection> sites, Value<TripFile.Nights> nights) {
        Map<String, Value<Forecast>> forecasts = new LinkedHashMap<>();
        sites.forEach(read -> read.forecast.ifPresent(named -> forecasts.put(read.site.name(),
                named.value(item -> ForecastFile.named(item, nights.get().from())))));
        return forecasts;
    }

    /** The digital frames of a trip. */
    static Previews previews(Optional<Preview> everywhere, List<SiteSection> sites) {
        Map<String, Preview> bySite = new LinkedHashMap<>();
        sites.forEach(read -> read.preview.get().ifPresent(frame -> bySite.put(read.site.name(), frame)));
        return new Previews(everywhere, bySite, sites.stream().filter(SiteSection::stated)
                .map(read -> read.site.name()).collect(Collectors.toSet()));
    }

    /** The site under the sky that its frame shows, or else that of the trip, where it states none. */
    Value<Site> lit(Value<Optional<Preview>> everywhere, Value<List<CarriedCamera>> cameras) {
        Value<Optional<Preview>> frame = preview.content().flatMap(Function.identity()).isPresent() ? preview
                : everywhere;
        if (stated || frame.get().isEmpty()) {
            return new Value<>(frame.place(), Optional.of(site));
        }
        double mag = Math.rint(frame.get().get().sky(cameras.get().get(0).camera().lens())
                .magArcsec2() * STEPS_A_MAG) / STEPS_A_MAG;
        return frame.place().value(item -> site.under(mag));
    }

    private static SiteSection site(Item item, UniqueName names, boolean metered) {
        Fields fields = item.fields();
        Value<String> name = fields.required("name", names);
        Value<Coordinates> place = place(fields);
        Value<Double> heightM = heightM(fields, place);
        Value<ZoneId> zone = fields.required("zone", ItemTimes::zone);
        Value<Double> darkSky = darkSky(fields, metered);
        Value<Double> clear = heightM.map(Atmosphere::statedClearExtinctionMag);
        Value<Double> extinction = fields.orElse("extinction-mag", clear,
                clear.content().map(mag -> Shown.number(mag) + " (clear air at this height)")
                .orElse("unknown"), value -> value.number(Site.EXTINCTION));
        fields.defaultRule("extinction-mag", "that of clear air at this height");
        Value<Skyline> skyline = fields.orDefault("skyline", Skyline.FLAT, "level all around",
                SkylineFile::named);
        Value<Boolean> sea = fields.orDefault("sea-horizon", false, "false",
                Item::flag);
        Value<Optional<Preview>> preview = fields.optional("preview", TripFile::preview);
        Value<Optional<Item>> forecast = fields.optional("forecast", Function.identity());
        Value<List<LightDome>> domes = fields.orDefault("light-domes", List.of(), "none", SkySection::domes);
        Value<List<SkyReading>> readings = fields.orDefault("sky", List.of(), "none",
                value -> SkySection.readings(value, zone));
        fields.noOthers();
        Site site = new Site(name.get(), place.get().latitude(), place.get().longitude(), heightM.get(),
                zone.get(), darkSky.get(), extinction.get(),
                sea.get() ? skyline.get().overSea(heightM.get()) : skyline.get(), domes.get(),
                readings.get(), Site.USUAL_ZENITH_STOPS);
        return new SiteSection(site, fields.has(DARK_SKY), preview, forecast.get());
    }

    private static Value<Double> darkSky(Fields fields, boolean metered) {
        boolean shown = (metered || fields.has("preview")) && !fields.has(DARK_SKY);
        Value<Double> darkSky = shown
                ? fields.optional(DARK_SKY, Item::text).map(none -> DARK_SKY_MAG_ARCSEC2)
                : fields.numberOr(DARK_SKY, DARK_SKY_MAG_ARCSEC2, Site.DARK_SKY);
        fields.defaultRule(DARK_SKY, "what preview shows, or " + Shown.number(DARK_SKY_MAG_ARCSEC2));
        return darkSky;
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
