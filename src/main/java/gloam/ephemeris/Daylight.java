package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** No film is exposed while the Sun is up, from sunrise to sunset over a level horizon. */
public final class Daylight {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

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
        during(ephemeris, site, openings).ifPresent(day -> {
            throw new BadInput(day + "; " + advice);
        });
    }

    /** What of the openings is by day, with the first instant of it; empty when none is. */
    public static Optional<String> during(Ephemeris ephemeris, Site site, List<Interval> openings) {
        return openings.stream().flatMap(open -> Courses.of(ephemeris, site, open).sun().horizon().above()
                .stream()).findFirst().map(day -> "the Sun is up while the shutter is open, from "
                + TIME.format(day.start().atZone(site.zone())) + " on");
    }
}
