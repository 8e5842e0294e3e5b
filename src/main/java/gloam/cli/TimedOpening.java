package gloam.cli;

import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An opening of the shutter as an option gives it, an interval of ISO 8601: two of when it opens, when it
 * closes and how long it is open.
 *
 * @param open  when it opens
 * @param close when it closes
 * @param lasts how long it is open
 */
record TimedOpening(Optional<Moment> open, Optional<Moment> close, Optional<Duration> lasts) {

    /** The solidus between the two, not one in the name of a zone. */
    private static final Pattern HALVES = Pattern.compile("(.+?)/(\\s*(?:\\d|[Pp][\\dTt]).*)");
    private static final Pattern DATED = Pattern.compile("\\d{4}-.*");

    /** The opening of a text such as 2027-02-08T20:10/40m or 2027-02-08T20:10/2027-02-08T20:50. */
    static TimedOpening parse(String text) {
        Matcher halves = HALVES.matcher(text.strip());
        if (!halves.matches()) {
            throw unreadable(text);
        }
        String first = halves.group(1).strip();
        String second = halves.group(2).strip();
        boolean opens = DATED.matcher(first).matches();
        boolean closes = DATED.matcher(second).matches();
        if (!opens && !closes) {
            throw unreadable(text);
        }
        return new TimedOpening(opens ? Optional.of(Moment.parse(first)) : Optional.empty(),
                closes ? Optional.of(Moment.parse(second)) : Optional.empty(),
                opens && closes ? Optional.empty() : Optional.of(Quantity.duration(opens ? second : first)));
    }

    /**
     * The span meant at a site whose clocks keep that zone.
     *
     * @throws BadInput when it closes before it opens, or at a time that those clocks skip or show twice
     */
    Interval in(ZoneId zone) {
        Instant start = open.map(moment -> moment.in(zone))
                .orElseGet(() -> close.orElseThrow().in(zone).minus(lasts.orElseThrow()));
        Instant end = close.map(moment -> moment.in(zone)).orElseGet(() -> start.plus(lasts.orElseThrow()));
        if (!start.isBefore(end)) {
            throw new BadInput("the shutter closes at " + close.orElseThrow().local()
                    + ", not after it opens at "
                    + open.orElseThrow().local() + ". Give the later date after midnight");
        }
        return new Interval(start, end);
    }

    private static BadInput unreadable(String text) {
        return new BadInput("expected an opening such as 2027-02-08T20:10/40m or "
                + "2027-02-08T20:10/2027-02-08T20:50, found \"" + text + "\"");
    }
}
