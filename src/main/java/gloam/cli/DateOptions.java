package gloam.cli;

import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Which nights: from one evening to another. */
final class DateOptions extends OptionGroup {

    private static final Range NIGHTS = new Range("number of nights", 1, 3660, "");

    private final Option<LocalDate> from = option("--from", "DATE", LocalDate.class,
            "Evening of the first night (default: the trip's first).");

    private final Option<LocalDate> to = option("--to", "DATE", LocalDate.class,
            "Evening of the last night (default: the trip's last).");

    /** Whether an evening was given. */
    boolean given() {
        return from.given() || to.given();
    }

    /**
     * The evenings that there are at one of some sites or more, of a trip those that are free; one at least,
     * in order.
     */
    List<LocalDate> dates(Optional<Trip> trip, List<Site> sites) {
        LocalDate first = from.given() ? from.get() : trip.map(Trip::firstNight).orElseThrow(() ->
                new BadInput("no nights given; use --from DATE and --to DATE, or --trip FILE"));
        LocalDate last = to.given() ? to.get() : trip.map(Trip::lastNight).orElse(first);
        refuse(first, last);
        List<LocalDate> evenings = Night.evenings(sites, first, last);
        return trip.isPresent() ? trip.get().outings().evenings().among(evenings) : evenings;
    }

    /** The dates from one to another, at least one. */
    static List<LocalDate> between(LocalDate first, LocalDate last) {
        refuse(first, last);
        return first.datesUntil(last.plusDays(1)).toList();
    }

    private static void refuse(LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            throw new BadInput("the last night " + last + " is before the first, " + first
                    + "; give a later one (--to)");
        }
        FromOption.checked("--to", NIGHTS, ChronoUnit.DAYS.between(first, last) + 1);
    }
}
