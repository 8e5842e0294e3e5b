package gloam.planner;

import gloam.ephemeris.Night;
import java.util.List;

/** Which nights may follow each other, by the numbers of night and, within it, site. */
interface Moves {

    /** Whether both are at the same site. */
    boolean stays(int night, int site, int later, int laterSite);

    /** Whether one gets from a night to a later one in time. */
    boolean fit(int night, int site, int later, int laterSite);

    /** What travel leaves of the nights given, at each the sites. */
    static Moves of(Travel travel, List<List<Night>> nights) {
        return new Moves() {
            @Override
            public boolean stays(int night, int site, int later, int laterSite) {
                return nights.get(night).get(site).site().equals(nights.get(later).get(laterSite).site());
            }

            @Override
            public boolean fit(int night, int site, int later, int laterSite) {
                return travel.fits(nights.get(night).get(site), nights.get(later).get(laterSite));
            }
        };
    }
}
