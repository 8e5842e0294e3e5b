package gloam.answer;

import gloam.answer.Timetable.Announced;
import gloam.gear.Site;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Trip;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Announces a plan's windows one after the other, and knows what an earlier plan had announced of them.
 *
 * <p>A window's identity is made of the trip's, the wish's name and the number of the wish's sheet, those
 * served before counted. Its sequence number is the earlier plan's where nothing changed, else a greater one.
 */
final class Announcements {

    private final Trip trip;
    private final Optional<FormerPlan> former;
    private final UUID identity;
    private final int revision;
    private final Map<String, Integer> served = new HashMap<>();
    private final Set<UUID> planned = new HashSet<>();
    private final Map<String, Instant> free = new HashMap<>();
    private final Instant begun;

    /** The announcements of a trip's windows, made now. */
    Announcements(Trip trip, Optional<FormerPlan> former, Instant now) {
        this.trip = trip;
        this.former = former;
        this.identity = former.map(FormerPlan::identity).orElseGet(trip::identity);
        this.revision = (int) ChronoUnit.MINUTES.between(Instant.EPOCH, now);
        this.begun = trip.begun().map(Trip.Begun::at).orElse(Instant.MIN);
        trip.begun().ifPresent(begun -> begun.done().forEach(wish -> served.merge(wish, 1, Integer::sum)));
    }

    /** The trip's identity, the earlier plan's if there is one. */
    UUID identity() {
        return identity;
    }

    /** The announcement of the next window. */
    Announced next(Plan.Window window, Site site) {
        String wish = window.wish().name();
        UUID own = Timetable.within(identity, wish + "\n" + served.merge(wish, 1, Integer::sum));
        planned.add(own);
        Instant prepareAt = preparation(window);
        free.put(window.camera().name(), window.whole().endExclusive());
        return new Announced(window, new FormerPlan.Event(own,
                sequence(own, details(window, site, prepareAt))),
                prepareAt);
    }

    /** What a calendar shows of it. */
    private FormerPlan.Details details(Plan.Window window, Site site, Instant prepareAt) {
        return new FormerPlan.Details(window.sheet(), site.name(),
                window.film().name(), prepareAt, window.whole(),
                window.aim().azimuth().degrees(), window.aim().altitude().degrees(),
                window.wish().aim().roll().degrees(), window.fNumber().marked(),
                Optional.of(window.camera().name()));
    }

    /**
     * As long before as setting up takes, or the changeover where that is longer, but not before the camera
     * is free.
     */
    private Instant preparation(Plan.Window window) {
        Instant lead = window.whole().start().minus(trip.preparation());
        Instant from = free.getOrDefault(window.camera().name(), begun);
        return from.isAfter(lead) ? from : lead;
    }

    private int sequence(UUID own, FormerPlan.Details details) {
        Optional<FormerPlan.Window> same = former.stream().flatMap(plan -> plan.windows().stream())
                .filter(window -> window.event().identity().equals(own) && window.details().shows(details))
                .findFirst();
        return same.map(window -> window.event().sequence())
                .orElseGet(() -> former.flatMap(plan -> plan.sequence(own)).map(this::after)
                .orElse(revision));
    }

    private int after(int sequence) {
        return Math.max(revision, sequence + 1);
    }

    /** What the earlier plan announced for later and this one, all its windows announced, does not plan. */
    List<FormerPlan.Cancelled> cancelled() {
        return former.stream().flatMap(plan -> Stream.concat(plan.windows().stream().filter(this::ahead)
                        .map(window -> new FormerPlan.Cancelled(new FormerPlan.Event(
                                window.event().identity(), after(window.event().sequence())), window.wish(),
                                window.details().site(), window.details().open())),
                        plan.cancelled().stream()))
                .filter(window -> !planned.contains(window.event().identity())).toList();
    }

    private boolean ahead(FormerPlan.Window window) {
        return trip.begun().map(begun -> !window.details().open().start().isBefore(begun.at())).orElse(true);
    }
}
