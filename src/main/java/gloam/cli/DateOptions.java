package gloam.cli;

import gloam.planner.Trip;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which nights: from one evening to another. */
final class DateOptions {

    private static final Range NIGHTS = new Range("number of nights", 1, 3660, "");

    @Option(names = "--from", paramLabel = "DATE",
            description = "Evening of the first night (default: the trip's first).")
    private Optional<LocalDate> from;

    @Option(names = "--to", paramLabel = "DATE", description = "Evening of the last night (default: the trip's last).")
    private Optional<LocalDate> to;

    /** Whether an evening was given. */
    boolean given() {
        return from.isPresent() || to.isPresent();
    }

    /** The evenings, at least one, in order. */
    List<LocalDate> dates(Optional<Trip> trip) {
        LocalDate first = from.or(() -> trip.map(Trip::firstNight)).orElseThrow(() ->
                new BadInput("the nights are not said; give --from DATE and --to DATE, or --trip FILE"));
        return between(first, to.or(() -> trip.map(Trip::lastNight)).orElse(first));
    }

    /** The evenings from one to another. */
    static List<LocalDate> between(LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            throw new BadInput("the last night " + last + " is before the first, " + first + "; give a later one "
                    + "(--to)");
        }
        FromOption.checked("--to", NIGHTS, ChronoUnit.DAYS.between(first, last) + 1);
        return first.datesUntil(last.plusDays(1)).toList();
    }
}
