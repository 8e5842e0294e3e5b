package gloam.ephemeris;

import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** A date for which no ephemeris is at hand. */
public final class OutsideCoverage extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Names the date asked for and the dates covered. */
    public OutsideCoverage(Instant asked, Interval covered) {
        this(day(asked), covered);
    }

    /** Names the night asked for by its evening, and the dates covered. */
    public OutsideCoverage(LocalDate evening, Interval covered) {
        this("the whole night of " + evening, covered);
    }

    private OutsideCoverage(String asked, Interval covered) {
        super("no ephemeris for " + asked + "; the data cover " + day(covered.start()) + " … "
                + day(covered.endExclusive().minusNanos(1))
                + ". Choose a date inside, or see orekit-data-notes.md.");
    }

    private static String day(Instant at) {
        return at.atOffset(ZoneOffset.UTC).toLocalDate().toString();
    }
}
