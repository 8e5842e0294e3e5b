package gloam.view;

import gloam.gear.Site;

/**
 * A site as reports give it.
 *
 * @param name              its name
 * @param latitudeDeg       north positive
 * @param longitudeDeg      east positive
 * @param heightM           over the ellipsoid
 * @param zone              the time zone of every time in the report
 * @param darkSkyMagArcsec2 moonless zenith
 * @param extinctionMag     at the zenith
 */
public record SiteRow(String name, double latitudeDeg, double longitudeDeg, double heightM, String zone,
                    double darkSkyMagArcsec2, double extinctionMag) {

    static SiteRow of(Site site) {
        return new SiteRow(site.name(), site.latitude().degrees(),
                site.longitude().degrees(), site.heightM(), site.zone().getId(),
                site.darkSkyMagArcsec2(), site.extinctionMag());
    }
}
