package gloam.view;

import gloam.ephemeris.Event;
import gloam.ephemeris.SkylinePassage;
import gloam.planner.NightRank;
import gloam.planner.Wish;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One night at one site and its worth.
 *
 * @param night             date of the evening
 * @param site              where
 * @param events            events of the sky, in order of time
 * @param darkHours         hours with the Sun's centre below -18°
 * @param moonlessDarkHours those of them with the Moon below the horizon
 * @param moon              the Moon half-way through the night
 * @param score             worth of the night, 0 to 1; more is better
 * @param wishes            names of the trip's wishes that it leaves time for; empty if nights are ranked by
 *                          their sky
 * @param reason            why, in one line
 */
public record NightRow(LocalDate night, String site, List<EventRow> events, double darkHours,
                       double moonlessDarkHours, MoonRow moon, double score, List<String> wishes,
                       String reason) {

    static NightRow of(NightRank rank) {
        return row(rank, events(rank, new SiteClock(rank.night().site().zone())));
    }

    /** The same with the bodies' passages of the skyline among the events. */
    static NightRow of(NightRank rank, List<SkylinePassage> passages) {
        SiteClock clock = new SiteClock(rank.night().site().zone());
        List<EventRow> events = events(rank, clock);
        passages.forEach(passage -> events.add(new EventRow(clock.at(passage.at()), passage.label())));
        events.sort(Comparator.comparing(EventRow::at));
        return row(rank, events);
    }

    /** Such as "Dark for 10 h 22 min, 5 h 35 min of it without the Moon", or "Never dark". */
    String darkness() {
        return darkHours == 0 ? "Never dark" : "Dark for " + Wording.hours(darkHours) + ", "
                + Wording.hours(moonlessDarkHours) + " of it without the Moon";
    }

    private static List<EventRow> events(NightRank rank, SiteClock clock) {
        List<EventRow> events = new ArrayList<>();
        for (Event event : rank.night().events()) {
            events.add(EventRow.of(event, clock));
        }
        return events;
    }

    private static NightRow row(NightRank rank, List<EventRow> events) {
        List<String> served = new ArrayList<>();
        for (Wish wish : rank.served()) {
            served.add(wish.name());
        }
        return new NightRow(rank.night().date(), rank.night().site().name(), events,
                rank.darkHours(), rank.moonlessDarkHours(),
                MoonRow.of(rank.night().middle(), rank.moon(), new SiteClock(rank.night().site().zone())),
                rank.score(),
                served, NightWords.reason(rank));
    }

    /** An event of the sky, such as {@code civil-dusk}. */
    public record EventRow(OffsetDateTime at, String what) {

        static EventRow of(Event event, SiteClock clock) {
            return new EventRow(clock.at(event.at()), event.what().label());
        }
    }
}
