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
 * One night at one site and what it is good for.
 *
 * @param night             date of the evening
 * @param site              where
 * @param events            what happens, in order
 * @param darkHours         hours with the Sun below -18°
 * @param moonlessDarkHours those of them with the Moon below the horizon
 * @param moon              the Moon half-way through the night
 * @param score             what the night is worth against the others, more is better
 * @param wishes            names of the trip's wishes that it has the time for, where nights are ranked by wishes
 * @param reason            why, in one line
 */
public record NightRow(LocalDate night, String site, List<EventRow> events, double darkHours,
                       double moonlessDarkHours, MoonRow moon, double score, List<String> wishes, String reason) {

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
                rank.darkHours(), rank.moonlessDarkHours(), MoonRow.of(rank.night().middle(), rank.moon(), new SiteClock(rank.night().site().zone())),
                rank.score(),
                served, NightWords.reason(rank));
    }

    /** Something that happens at a moment. */
    public record EventRow(OffsetDateTime at, String what) {

        static EventRow of(Event event, SiteClock clock) {
            return new EventRow(clock.at(event.at()), event.what().label());
        }
    }
}
