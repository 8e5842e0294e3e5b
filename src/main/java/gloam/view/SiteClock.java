package gloam.view;

import gloam.answer.Exposures;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * Turns instants into what the clocks at a site show.
 *
 * @param zone the zone those clocks keep
 */
record SiteClock(ZoneId zone) {

    /** That of the site of an exposure, or of UTC where none is known. */
    static SiteClock of(Exposures answer) {
        return new SiteClock(answer.question().computed().map(known -> known.site().zone())
                .orElse(ZoneOffset.UTC));
    }

    /** What they show at an instant. */
    OffsetDateTime at(Instant instant) {
        return instant.atZone(zone).toOffsetDateTime();
    }
}
