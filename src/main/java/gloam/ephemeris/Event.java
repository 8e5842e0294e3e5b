package gloam.ephemeris;

import java.time.Instant;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Something that happens in the sky of a site at an instant.
 *
 * @param at   when
 * @param what what happens
 */
public record Event(Instant at, Kind what) {

    /** Earlier events first, those of one instant in the order of their kinds. */
    public static final Comparator<Event> IN_TIME = Comparator.comparing(Event::at)
            .thenComparing(Event::what);

    /** What can happen in a night. */
    public enum Kind {
        SUNSET, CIVIL_DUSK, NAUTICAL_DUSK, ASTRONOMICAL_DUSK,
        ASTRONOMICAL_DAWN, NAUTICAL_DAWN, CIVIL_DAWN, SUNRISE,
        MOONRISE, MOON_TRANSIT, MOONSET;

        /** The name as reports write it, such as {@code civil-dusk}. */
        public String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** An event for each crossing: one kind upward, one downward. */
    static Stream<Event> ofCrossings(Crossings crossings, Kind rising, Kind falling) {
        return crossings.all().stream()
                .map(crossing -> new Event(crossing.at(), crossing.rising() ? rising : falling));
    }
}
