package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** No film is exposed while the Sun is up, from sunrise to sunset over a level horizon. */
public final class Daylight {

    private Daylight() {
    }

    /**
     * Refuses to have the shutter open by day.
     *
     * @throws BadInput when the Sun is up during one of the openings, with the first instant of it
     */
    public static void refuse(Ephemeris ephemeris, Site site, List<Interval> openings) {
        refuse(ephemeris, site, openings, "open it after sunset and close it before sunrise");
    }

    /**
     * The same with other advice.
     *
     * @param advice what to do, as the end of a sentence
     */
    public static void refuse(Ephemeris ephemeris, Site site, List<Interval> openings, String advice) {
        sunUp(ephemeris, site, openings).ifPresent(from -> {
            throw new BadInput("the Sun is up while the shutter is open, from "
                    + from.toLocalDateTime().truncatedTo(ChronoUnit.MINUTES) + " on; " + advice);
        });
    }

    /** From when on the Sun is up during one of the openings, by the site's clocks; empty when it is not. */
    public static Optional<ZonedDateTime> sunUp(Ephemeris ephemeris, Site site, List<Interval> openings) {
        return openings.stream().flatMap(open -> Courses.of(ephemeris, site, open).sun().horizon().above()
                .stream()).findFirst().map(day -> day.start().atZone(site.zone()));
    }
}
