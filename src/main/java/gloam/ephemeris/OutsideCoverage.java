package gloam.ephemeris;

import gloam.units.Interval;
import java.time.Instant;
import java.time.ZoneOffset;

/** A date for which no ephemeris is at hand. */
public final class OutsideCoverage extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Names the date asked for and the dates covered. */
    public OutsideCoverage(Instant asked, Interval covered) {
        super("no ephemeris for " + day(asked) + "; the data cover " + day(covered.start()) + " … "
                + day(covered.endExclusive().minusNanos(1))
                + ". Choose a date inside, or see orekit-data-notes.md.");
    }

    private static String day(Instant at) {
        return at.atOffset(ZoneOffset.UTC).toLocalDate().toString();
    }
}
