package gloam.cli;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.ZoneId;

/**
 * An opening of the shutter as an option gives it.
 *
 * @param openAt when it opens
 * @param lasts  how long it is open
 */
record TimedOpening(Moment openAt, Duration lasts) {

    /** The opening of a text such as 2027-02-08T20:10/40m. */
    static TimedOpening parse(String text) {
        int slash = text.lastIndexOf('/');
        if (slash < 0) {
            throw new BadInput("expected an opening such as 2027-02-08T20:10/40m, found \"" + text + "\"");
        }
        return new TimedOpening(Moment.parse(text.substring(0, slash)), Converters.duration(text.substring(slash + 1)));
    }

    /** The span meant at a site whose clocks keep that zone. */
    Interval in(ZoneId zone) {
        return Interval.lasting(openAt.in(zone), lasts);
    }
}
