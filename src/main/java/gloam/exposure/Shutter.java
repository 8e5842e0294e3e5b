package gloam.exposure;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * When the shutter was open before and when it may be open now, on one sheet.
 *
 * @param earlier   openings already made, in order, all over before the present one
 * @param available from opening it now to when it must be closed at the latest
 */
public record Shutter(List<Interval> earlier, Interval available) {

    /** Sorts the openings; refuses those that overlap with {@link BadInput}. */
    public Shutter {
        earlier = Interval.sorted(earlier);
        List<Interval> all = new ArrayList<>(earlier);
        all.add(available);
        if (Interval.overlapping(all).isPresent()) {
            throw new BadInput("openings of the shutter overlap; let each end before the next begins");
        }
    }

    /** A sheet without earlier openings. */
    public static Shutter on(Interval available) {
        return new Shutter(List.of(), available);
    }

    /** When it opens now. */
    public Instant opensAt() {
        return available.start();
    }

    /** From the first opening to when it must be closed. */
    public Interval span() {
        return new Interval(earlier.isEmpty() ? opensAt() : earlier.get(0).start(), available.endExclusive());
    }

    /** How long it was open before. */
    public Duration openBefore() {
        return Interval.total(earlier);
    }

    /** The same sheet, the present opening closed after that many s, 1 ns at least, or not opened for 0. */
    List<Interval> openings(double seconds) {
        List<Interval> openings = new ArrayList<>(earlier);
        if (seconds > 0) {
            long nanos = Math.max(1, Math.round(seconds * 1e9));
            openings.add(Interval.lasting(opensAt(), Duration.ofNanos(nanos)));
        }
        return openings;
    }
}
