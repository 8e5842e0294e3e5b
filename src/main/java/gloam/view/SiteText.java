package gloam.view;

import gloam.gear.Site;

/** Text of a site. */
final class SiteText {

    private SiteText() {
    }

    static String of(Site site) {
        String coordinates = coordinates(site);
        String name = site.name().equals(coordinates) ? "" : site.name() + ", ";
        return name + coordinates + ", " + Wording.plain(site.heightM()) + " m (times in " + site.zone()
                .getId() + ")";
    }

    private static String coordinates(Site site) {
        double northDeg = site.latitude().degrees();
        double eastDeg = site.longitude().degrees();
        return Wording.number(Math.abs(northDeg), 4) + "° " + (northDeg < 0 ? "S" : "N") + " "
                + Wording.number(Math.abs(eastDeg), 4) + "° " + (eastDeg < 0 ? "W" : "E");
    }
}
