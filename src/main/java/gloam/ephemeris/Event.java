package gloam.ephemeris;

import gloam.units.Crossings;
import gloam.units.Label;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * Something that happens in the sky of a site at an instant.
 *
 * @param at   when
 * @param what what happens
 */
public record Event(Instant at, Kind what) {

    /** Earlier events first, those of one instant in the order of their kinds. */
    public static final Comparator<Event> IN_TIME = (one, other) -> {
        int byTime = one.at.compareTo(other.at);
        return byTime == 0 ? one.what.compareTo(other.what) : byTime;
    };

    /** What can happen in a night. */
    public enum Kind {
        SUNSET, CIVIL_DUSK, NAUTICAL_DUSK, ASTRONOMICAL_DUSK,
        ASTRONOMICAL_DAWN, NAUTICAL_DAWN, CIVIL_DAWN, SUNRISE,
        MOONRISE, MOON_TRANSIT, MOONSET;

        private final String label = Label.of(this);

        /** The name as reports write it, such as {@code civil-dusk}. */
        public String label() {
            return label;
        }
    }

    /** Adds an event for each crossing: one kind upward, one downward. */
    static void add(List<Event> events, Crossings crossings, Kind rising, Kind falling) {
        for (Crossings.Crossing crossing : crossings.all()) {
            events.add(new Event(crossing.at(), crossing.rising() ? rising : falling));
        }
    }
}
