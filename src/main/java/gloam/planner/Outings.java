package gloam.planner;

import gloam.units.Range;
import java.util.Optional;

/**
 * When people go out on a trip, and for how much.
 *
 * @param evenings        on which evenings
 * @param sheetsPerNight  how many sheets are exposed on one night at most, 1 to 500
 * @param awake           hours by the site's clocks outside which nothing is set up, opened or closed; empty
 *                        for the whole night
 * @param travel          how long it takes from site to site
 */
public record Outings(Evenings evenings, int sheetsPerNight, Optional<Limits.TimeOfNight> awake,
        Travel travel) {

    /** Allowed numbers of sheets a night. */
    public static final Range SHEETS_PER_NIGHT = new Range("sheets a night", 1, 500, "");

    /** Every evening, all night. */
    public static final Outings ANY =
            new Outings(Evenings.ALL, (int) SHEETS_PER_NIGHT.most(), Optional.empty(), Travel.NONE);

    /** Refuses a number of sheets outside its range with {@link gloam.units.BadInput}. */
    public Outings {
        SHEETS_PER_NIGHT.check(sheetsPerNight);
    }
}
