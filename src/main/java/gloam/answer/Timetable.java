package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.StarCatalogue;
import gloam.film.FilmStock;
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
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The timetable of a trip as announced to calendars.
 *
 * @param plan      the plan of the trip
 * @param identity  identity of the trip, the same in all its timetables
 * @param nights    its nights in order
 * @param cancelled windows of an earlier timetable that this one cancels
 */
public record Timetable(Plan plan, UUID identity, List<Night> nights, List<FormerPlan.Cancelled> cancelled) {

    /** Copies the lists. */
    public Timetable {
        nights = List.copyOf(nights);
        cancelled = List.copyOf(cancelled);
    }

    /**
     * One night.
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
     * An exposure as announced to calendars.
     *
     * @param window    the exposure
     * @param event     what a calendar keeps of it
     * @param prepareAt when to begin to set up, never before its camera is free
     */
    public record Announced(Plan.Window window, FormerPlan.Event event, Instant prepareAt) {
    }

    /**
     * A film fitted to a journal.
     *
     * @param film             its name
     * @param fittedToSheets   how many sheets it is fitted to
     * @param speedOffsetStops by how many stops it is slower than rated; minus is faster
     * @param exponent         exponent of its reciprocity law, local to 100 s
     */
    public record Fitted(String film, int fittedToSheets, double speedOffsetStops, double exponent) {

        private static final double EXPONENT_AT_S = 100;

        private static Fitted of(FilmStock film) {
            return new Fitted(film.name(), film.fittedToSheets(), film.speedOffsetStops(),
                    film.reciprocity().exponentAt(EXPONENT_AT_S));
        }
    }

    /** The films of the trip and its wishes that are fitted to a journal, each once. */
    public List<Fitted> fitted() {
        return Stream.of(Stream.of(plan.trip().film()),
                plan.trip().cameras().stream().flatMap(camera -> camera.film().stream()),
                plan.trip().wishes().stream().flatMap(wish -> wish.film().stream()))
                .flatMap(Function.identity())
                .filter(film -> film.fittedToSheets() > 0).map(Fitted::of).distinct().toList();
    }

    /**
     * The timetable of a trip.
     *
     * @param former   the earlier timetable that this one replaces
     * @param now      when it is made
     * @param progress informed of every night planned
     * @throws BadInput if the trip has no wishes
     */
    public static Timetable of(Ephemeris ephemeris, StarCatalogue stars, Trip trip,
            Optional<FormerPlan> former,
                               Instant now, Progress progress) {
        if (trip.wishes().isEmpty()) {
            throw new BadInput("the trip has no wishes; add a section wishes to the trip file");
        }
        return of(new Planner(ephemeris, stars).watchedBy(progress).plan(trip), former, now);
    }

    /** The identity of a named part of something that has one. */
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
