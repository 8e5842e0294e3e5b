package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Night;
import java.util.List;

/**
 * One night at one site with what makes it worth going out.
 *
 * @param night             the night and its site
 * @param darkHours         hours with the Sun's centre below -18°
 * @param moonlessDarkHours hours of these with the Moon below the horizon
 * @param trulyDarkHours    hours of darkness in which the Moon adds hardly any light
 * @param moon              the Moon half-way through the Sun's absence, or half-way from noon to noon where
 *                          there is none
 * @param high              bright planets that stand high while it is dark
 * @param asked             wishes asked of it; 0 where it is ranked by its sky alone
 * @param served            wishes that the night has the time for; empty where none are asked of it
 * @param score             0 (no use) to 1 (time for every wish, or twelve hours of true darkness or more)
 */
public record NightRank(Night night, double darkHours, double moonlessDarkHours, double trulyDarkHours,
                        Appearance moon, List<Body> high, int asked, List<Wish> served, double score) {

    /** Copies the lists. */
    public NightRank {
        high = List.copyOf(high);
        served = List.copyOf(served);
    }
}
