package gloam.view;

import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Trip;
import gloam.view.PlanReport.CancelledRow;
import gloam.view.PlanReport.WindowRow;
import gloam.units.Interval;
import java.nio.charset.StandardCharsets;
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
 * Makes the rows of a plan's windows one after the other, and knows what an earlier plan had announced of them.
 *
 * <p>A window's identity is made of the trip's, the wish's name and the number of the wish's sheet, those served
 * before counted. Its sequence number is the earlier plan's where nothing changed, else a greater one.
 */
final class WindowRows {

    /** Time to level a tripod, aim and focus in the dark: common practice, no source. */
    private static final Duration SET_UP = Duration.ofMinutes(20);

    private final Trip trip;
    private final Optional<FormerPlan> former;
    private final UUID identity;
    private final int revision;
    private final Map<String, Integer> served = new HashMap<>();
    private final Set<UUID> planned = new HashSet<>();
    private Instant free;

    /** The rows of a trip's windows, made now. */
    WindowRows(Trip trip, Optional<FormerPlan> former, Instant now) {
        this.trip = trip;
        this.former = former;
        this.identity = former.map(FormerPlan::identity).orElseGet(trip::identity);
        this.revision = (int) ChronoUnit.MINUTES.between(Instant.EPOCH, now);
        this.free = trip.begun().map(Trip.Begun::at).orElse(Instant.MIN);
        trip.begun().ifPresent(begun -> begun.done().forEach(wish -> served.merge(wish, 1, Integer::sum)));
    }

    /** The trip's identity, the earlier plan's if there is one. */
    UUID identity() {
        return identity;
    }

    /** The row of the next window. */
    WindowRow next(Plan.Window window, String site, SiteClock clock) {
        String wish = window.wish().name();
        UUID own = within(identity, wish + "\n" + served.merge(wish, 1, Integer::sum));
        planned.add(own);
        Instant prepareAt = preparation(window.open());
        free = window.open().endExclusive();
        return WindowRow.of(window, trip.film(),
                new FormerPlan.Event(own, sequence(own, details(window, site, prepareAt, clock))), prepareAt, clock);
    }

    /** What a calendar shows of it, cut as the report cuts it. */
    private FormerPlan.Details details(Plan.Window window, String site, Instant prepareAt, SiteClock clock) {
        return new FormerPlan.Details(window.sheet(), site, window.wish().film().orElse(trip.film()).name(),
                clock.event(prepareAt).toInstant(), new Interval(clock.event(window.open().start()).toInstant(),
                        clock.event(window.open().endExclusive()).toInstant()),
                cut("azimuthDeg", window.aim().azimuth().degrees()), cut("altitudeDeg", window.aim().altitude().degrees()),
                cut("rollDeg", window.wish().aim().roll().degrees()),
                cut("fNumber", window.fNumber().marked()));
    }

    private static double cut(String name, double number) {
        return Double.parseDouble(Accuracy.of(name).text(number));
    }

    /** As long before as setting up takes, or the changeover where that is longer, but not before the camera is free. */
    private Instant preparation(Interval open) {
        Duration changeover = trip.camera().changeover();
        Instant lead = open.start().minus(changeover.compareTo(SET_UP) > 0 ? changeover : SET_UP);
        return free.isAfter(lead) ? free : lead;
    }

    private int sequence(UUID own, FormerPlan.Details details) {
        Optional<FormerPlan.Window> same = former.stream().flatMap(plan -> plan.windows().stream())
                .filter(window -> window.event().identity().equals(own) && window.details().equals(details)).findFirst();
        return same.map(window -> window.event().sequence())
                .orElseGet(() -> former.flatMap(plan -> plan.sequence(own)).map(this::after).orElse(revision));
    }

    private int after(int sequence) {
        return Math.max(revision, sequence + 1);
    }

    /** What the earlier plan announced for later and this one, all its rows made, does not plan. */
    List<CancelledRow> cancelled(SiteClock clock) {
        return former.stream().flatMap(plan -> Stream.concat(plan.windows().stream().filter(this::ahead)
                        .map(window -> new FormerPlan.Cancelled(new FormerPlan.Event(window.event().identity(),
                                after(window.event().sequence())), window.wish(), window.details().site(),
                                window.details().open())), plan.cancelled().stream()))
                .filter(window -> !planned.contains(window.event().identity()))
                .map(window -> CancelledRow.of(window, clock)).toList();
    }

    private boolean ahead(FormerPlan.Window window) {
        return trip.begun().map(begun -> !window.details().open().start().isBefore(begun.at())).orElse(true);
    }

    /** The identity of something named within what has one. */
    static UUID within(UUID whole, String name) {
        return UUID.nameUUIDFromBytes((whole + "\n" + name).getBytes(StandardCharsets.UTF_8));
    }
}
