package gloam.store;

import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.light.Atmosphere;
import gloam.units.Angle;
import gloam.units.Range;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;

/** Reads the sites of a trip from their keys. */
final class SiteSection {

    private static final Range SITES = new Range("number of sites", 1, 50, "");

    /** A zenith far from towns; common practice, no source. */
    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;

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
        Value<Double> latitudeDeg = fields.number("latitude-deg", Site.LATITUDE);
        Value<Double> longitudeDeg = fields.number("longitude-deg", Site.LONGITUDE);
        Value<Double> heightM = fields.number("height-m", Site.HEIGHT);
        Value<ZoneId> zone = fields.required("zone", Item::zone);
        Value<Double> darkSky = fields.numberOr("dark-sky-mag-arcsec2", DARK_SKY_MAG_ARCSEC2, Site.DARK_SKY);
        Value<Double> clear = heightM.map(SiteSection::clearExtinctionMag);
        Value<Double> extinction = fields.orElse("extinction-mag", clear,
                clear.content().map(mag -> Shown.number(mag) + " (clear air at this height)").orElse("unknown"),
                value -> value.number(Site.EXTINCTION));
        Value<Skyline> skyline = fields.orDefault("skyline", Skyline.FLAT, "level all around", SkylineFile::named);
        Value<Boolean> sea = fields.orDefault("sea-horizon", false, "false",
                Item::flag);
        fields.noOthers();
        return new Site(name.get(), Angle.ofDegrees(latitudeDeg.get()), Angle.ofDegrees(longitudeDeg.get()),
                heightM.get(), zone.get(), darkSky.get(), extinction.get(),
                sea.get() ? skyline.get().overSea(heightM.get()) : skyline.get());
    }

    /** To a thousandth, so that what is said is what is used. */
    private static double clearExtinctionMag(double heightM) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.3f", Atmosphere.clearExtinctionMag(heightM)));
    }
}
