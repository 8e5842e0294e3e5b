package gloam.journal;

import gloam.gear.Site;
import gloam.units.Angle;
import java.time.ZoneId;

/**
 * Where a sheet was exposed, as the journal keeps it.
 *
 * @param name     the site's name
 * @param latitude north positive; it decides the season
 * @param zone     the zone its clocks keep
 */
public record Place(String name, Angle latitude, ZoneId zone) {

    /** Refuses a latitude outside its range with {@link gloam.units.BadInput}. */
    public Place {
        Site.LATITUDE.check(latitude.degrees());
    }

    /** The place of a site. */
    public static Place of(Site site) {
        return new Place(site.name(), site.latitude(), site.zone());
    }
}
