package gloam.view;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/**
 * Turns instants into what the clocks at a site show.
 *
 * @param zone the zone those clocks keep
 */
record SiteClock(ZoneId zone) {

    /** What they show at an instant. */
    OffsetDateTime at(Instant instant) {
        return instant.atZone(zone).toOffsetDateTime();
    }
}
