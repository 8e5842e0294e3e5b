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

    private static final long TENTH_NANOS = 100_000_000;
    private static final long MILLI_NANOS = 1_000_000;

    /** The time of an event, to 0.1 s, the accuracy claimed for events. */
    OffsetDateTime event(Instant at) {
        return rounded(at, TENTH_NANOS);
    }

    /** A time that was asked for, to 1 ms. */
    OffsetDateTime asked(Instant at) {
        return rounded(at, MILLI_NANOS);
    }

    private OffsetDateTime rounded(Instant at, long stepNanos) {
        long nanos = Math.floorDiv(at.getNano() + stepNanos / 2, stepNanos) * stepNanos;
        return Instant.ofEpochSecond(at.getEpochSecond(), nanos).atZone(zone).toOffsetDateTime();
    }
}
