package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.StarCatalogue;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Planner;
import gloam.planner.Progress;
import gloam.planner.Trip;
import gloam.units.BadInput;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The timetable of a trip as it is announced.
 *
 * @param plan      what the trip comes to
 * @param identity  the trip's, kept through all its timetables
 * @param nights    its nights in order
 * @param cancelled windows that an earlier timetable announced and this one takes back
 */
public record Timetable(Plan plan, UUID identity, List<Night> nights, List<FormerPlan.Cancelled> cancelled) {

    /** Copies the lists. */
    public Timetable {
        nights = List.copyOf(nights);
        cancelled = List.copyOf(cancelled);
    }

    /**
     * One night's part.
     *
     * @param plan    the night
     * @param windows its exposures in order
     */
    public record Night(Plan.NightPlan plan, List<Announced> windows) {

        /** Copies the list. */
        public Night {
            windows = List.copyOf(windows);
        }
    }

    /**
     * An exposure as calendars are told of it.
     *
     * @param window    the exposure
     * @param event     what a calendar keeps of it
     * @param prepareAt when to begin to set up, never while the sheet before is open
     */
    public record Announced(Plan.Window window, FormerPlan.Event event, Instant prepareAt) {
    }

    /**
     * The timetable of a trip.
     *
     * @param former   the timetable before, whose place it takes
     * @param now      when it is made
     * @param progress told of every night looked at
     * @throws BadInput when the trip has no wishes
     */
    public static Timetable of(Ephemeris ephemeris, StarCatalogue stars, Trip trip,
            Optional<FormerPlan> former,
                               Instant now, Progress progress) {
        if (trip.wishes().isEmpty()) {
            throw new BadInput("the trip has no wishes; add a section wishes to the trip file");
        }
        return of(new Planner(ephemeris, stars).watchedBy(progress).plan(trip), former, now);
    }

    /** The identity of something named within what has one. */
    public static UUID within(UUID whole, String name) {
        return UUID.nameUUIDFromBytes((whole + "\n" + name).getBytes(StandardCharsets.UTF_8));
    }

    /** The announcement of a plan. */
    static Timetable of(Plan plan, Optional<FormerPlan> former, Instant now) {
        Announcements announcements = new Announcements(plan.trip(), former, now);
        List<Night> nights = new ArrayList<>();
        for (Plan.NightPlan night : plan.nights()) {
            List<Announced> windows = new ArrayList<>();
            night.windows().forEach(window -> windows.add(announcements.next(window, night.night().site())));
            nights.add(new Night(night, windows));
        }
        return new Timetable(plan, announcements.identity(), nights, announcements.cancelled());
    }
}
