package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.HighStand;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/**
 * The times at which a target is at or above some altitude in darkness, night by night.
 *
 * @param site   where
 * @param target the target's name
 * @param least  the least apparent altitude
 * @param nights every night asked for, in order
 */
public record HighStands(Site site, String target, Angle least, List<HighNight> nights) {

    /** Copies the list. */
    public HighStands {
        nights = List.copyOf(nights);
    }

    /**
     * What to look for.
     *
     * @param name   its name
     * @param target the target
     * @param least  the least apparent altitude
     */
    public record Wanted(String name, Target target, Angle least) {
    }

    /**
     * One night.
     *
     * @param evening  date of its evening
     * @param together how long the target is high enough in darkness
     * @param moonless how much of that time the Moon is below the horizon
     * @param stands   when it is, in order of time
     */
    public record HighNight(LocalDate evening, Duration together, Duration moonless, List<Stand> stands) {

        private static HighNight of(Ephemeris ephemeris, Night night, Wanted wanted) {
            List<HighStand> found = HighStand.of(ephemeris, night, wanted.target, wanted.least);
            List<Interval> spans = found.stream().map(HighStand::span).toList();
            return new HighNight(night.date(), Interval.total(spans),
                    Interval.total(spans.stream().flatMap(span -> span.without(night.moonUp()).stream())
                    .toList()),
                    found.stream().map(stand -> new Stand(stand,
                            ephemeris.position(wanted.target, night.site(), stand.highestAt()))).toList());
        }
    }

    /**
     * One span in which it is.
     *
     * @param stand   the span, and when in it the target is highest
     * @param highest where it stands then
     */
    public record Stand(HighStand stand, SkyPosition highest) {
    }

    /** The times in the nights from the first evening to the last, both included. */
    public static HighStands of(Ephemeris ephemeris, Site site, Wanted wanted, LocalDate first,
            LocalDate last) {
        return new HighStands(site, wanted.name, wanted.least, Night.range(ephemeris, site, first, last)
                .stream()
                .map(night -> HighNight.of(ephemeris, night, wanted)).toList());
    }
}
