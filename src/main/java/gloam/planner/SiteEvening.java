package gloam.planner;

import gloam.ephemeris.Night;
import gloam.gear.Site;
import java.time.LocalDate;
import java.util.List;

/** An evening at a site. */
record SiteEvening(LocalDate date, Site site) {

    /** Every evening that there is at some sites, by date, then by the sites' order. */
    static List<SiteEvening> all(List<LocalDate> dates, List<Site> sites) {
        return dates.stream().flatMap(date ->
                Night.having(sites, date).stream().map(site -> new SiteEvening(date, site))).toList();
    }
}
