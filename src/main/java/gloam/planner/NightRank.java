package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Night;
import java.util.List;

/**
 * One night at one site with what makes it worth going out.
 *
 * @param night             the night and its site
 * @param darkHours         hours with the Sun's centre below -18°
 * @param moonlessDarkHours hours of these with the Moon below the horizon
 * @param moon              the Moon half-way through the Sun's absence, or half-way from noon to noon where there is none
 * @param served            wishes that the night has the time for; empty where none are asked of it
 * @param score             0 (no use) to 1 (time for every wish, or twelve hours of true darkness or more)
 * @param reason            why it stands where it does, in one line
 */
public record NightRank(Night night, double darkHours, double moonlessDarkHours, Appearance moon, List<Wish> served,
                        double score, String reason) {

    /** Copies the list. */
    public NightRank {
        served = List.copyOf(served);
    }
}
