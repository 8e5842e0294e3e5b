package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Timetable.Announced;
import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.planner.Alternatives;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Planner;
import gloam.planner.Progress;
import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.planner.Wish;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TimetableTest {

    private static final Instant NOW = Instant.parse("2027-01-01T12:00:00Z");
    private static final Instant LATER = NOW.plus(Duration.ofHours(1));
    private static final Wish STARS = Trips.repeated(Trips.pointed("stars", Direction.ofDegrees(0, 44),
            SkyKind.DARK, new Wish.Tone.Free()), 2, 1);
    private static final Trip TRIP =
            Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 2, 2, List.of(STARS));
    private static final Plan PLAN = new Planner(new AnalyticEphemeris(), StarCatalogue.builtIn()).plan(TRIP);

    private static List<Announced> windows(Timetable timetable) {
        return timetable.nights().stream().flatMap(night -> night.windows().stream()).toList();
    }

    /** A timetable as a file keeps it: times to a tenth of a second, angles to the fifth decimal. */
    private static FormerPlan saved(Timetable timetable, Duration shift) {
        return new FormerPlan(timetable.identity(), windows(timetable).stream().map(announced -> {
            Plan.Window window = announced.window();
            Interval open = new Interval(tenth(window.open().start().plus(shift)),
                    tenth(window.open().endExclusive()));
            return new FormerPlan.Window(announced.event(), window.wish().name(),
                    new FormerPlan.Details(window.sheet(),
                    Places.MID_NORTH.name(), TRIP.film().name(), tenth(announced.prepareAt()), open,
                    cut(window.aim().azimuth().degrees()), cut(window.aim().altitude().degrees()), 0,
                    window.fNumber().marked(), Optional.of(window.camera().name())));
        }).toList(), List.of());
    }

    private static Instant tenth(Instant at) {
        return at.plusMillis(50).truncatedTo(ChronoUnit.SECONDS)
                .plusMillis(at.plusMillis(50).getNano() / 100_000_000 * 100L);
    }

    private static double cut(double degrees) {
        return Math.rint(degrees * 1e5) / 1e5;
    }

    /** Twenty minutes to set up, common practice; but not while the sheet before is open. */
    @Test
    void settingUpBeginsTwentyMinutesBeforeOrWhenTheCameraIsFree() {
        Plan evening = new Planner(new AnalyticEphemeris(), StarCatalogue.builtIn()).plan(
                Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 2,
                List.of(STARS, Trips.pointed("more",
                Direction.ofDegrees(180, 44), SkyKind.DARK, new Wish.Tone.Free()))));
        List<Announced> windows = windows(Timetable.of(evening, Optional.empty(), NOW));
        assertEquals(2, windows.size());
        Interval first = windows.get(0).window().open();
        assertEquals(first.start().minus(Duration.ofMinutes(20)), windows.get(0).prepareAt());
        Instant lead = windows.get(1).window().open().start().minus(Duration.ofMinutes(20));
        assertEquals(lead.isAfter(first.endExclusive()) ? lead : first.endExclusive(), windows.get(1)
                .prepareAt());
    }

    @Test
    void everySheetOfAWishHasAnIdentityOfItsOwnThatLasts() {
        List<Announced> one = windows(Timetable.of(PLAN, Optional.empty(), NOW));
        List<Announced> again = windows(Timetable.of(PLAN, Optional.empty(), LATER));
        assertNotEquals(one.get(0).event().identity(), one.get(1).event().identity());
        assertEquals(one.stream().map(window -> window.event().identity()).toList(),
                again.stream().map(window -> window.event().identity()).toList());
        assertEquals(TRIP.identity(), Timetable.of(PLAN, Optional.empty(), NOW).identity());
    }

    /** What a calendar knows already is not told again; what has moved is told under a greater number. */
    @Test
    void onlyWhatChangedHasAGreaterNumber() {
        Timetable before = Timetable.of(PLAN, Optional.empty(), NOW);
        List<Announced> same = windows(Timetable.of(PLAN, Optional.of(saved(before, Duration.ZERO)), LATER));
        List<Announced> moved = windows(Timetable.of(PLAN,
                Optional.of(saved(before, Duration.ofMinutes(-1))), LATER));
        for (int i = 0; i < same.size(); i++) {
            int sequence = windows(before).get(i).event().sequence();
            assertEquals(sequence, same.get(i).event().sequence());
            assertEquals(sequence + 60, moved.get(i).event().sequence()); // an hour later, counted in minutes
        }
    }

    @Test
    void whatIsNotPlannedAnyMoreIsTakenBack() {
        Timetable before = Timetable.of(PLAN, Optional.empty(), NOW);
        Plan empty = new Plan(TRIP, List.of(), List.of(), Alternatives.NONE);
        Timetable after = Timetable.of(empty, Optional.of(saved(before, Duration.ZERO)), LATER);
        assertEquals(windows(before).stream().map(window -> window.event().identity()).toList(),
                after.cancelled().stream().map(window -> window.event().identity()).toList());
        after.cancelled().forEach(window -> assertEquals(windows(before).get(0).event().sequence() + 60,
                window.event().sequence()));
        assertTrue(Timetable.of(PLAN, Optional.of(saved(before, Duration.ZERO)), LATER).cancelled()
                .isEmpty());
    }

    /** Sheets counted on from those served, none set up before the trip's rest begins. */
    @Test
    void whatIsLeftOfATripCountsOnFromWhatIsDone() {
        Timetable all = Timetable.of(PLAN, Optional.empty(), NOW);
        Interval second = windows(all).get(1).window().open();
        Instant begun = second.start().minus(Duration.ofMinutes(5));
        Trip rest = TRIP.rest(begun).without(List.of("stars"));
        Plan left = new Plan(rest, PLAN.nights().subList(1, 2), List.of(), Alternatives.NONE);
        List<Announced> windows = windows(Timetable.of(left, Optional.empty(), NOW));
        assertEquals(1, windows.size());
        assertEquals(windows(all).get(1).event().identity(), windows.get(0).event().identity());
        assertEquals(begun, windows.get(0).prepareAt());
    }

    /** What was over when the rest of the trip began is not taken back. */
    @Test
    void onlyWhatIsAheadIsTakenBack() {
        Timetable before = Timetable.of(PLAN, Optional.empty(), NOW);
        Instant begun = windows(before).get(1).window().open().start();
        Plan nothing = new Plan(TRIP.rest(begun), List.of(), List.of(), Alternatives.NONE);
        assertEquals(List.of(windows(before).get(1).event().identity()),
                Timetable.of(nothing, Optional.of(saved(before, Duration.ZERO)), LATER).cancelled().stream()
                .map(window -> window.event().identity()).toList());
    }

    /** On a computer whose clock is behind, a change still gets a greater number than what it changes. */
    @Test
    void aChangeCountsOnWhateverTheClockSays() {
        Timetable before = Timetable.of(PLAN, Optional.empty(), NOW);
        List<Announced> moved = windows(Timetable.of(PLAN, Optional.of(saved(before, Duration.ofMinutes(-1))),
                NOW.minus(Duration.ofDays(1))));
        assertEquals(windows(before).get(0).event().sequence() + 1, moved.get(0).event().sequence());
    }

    /** What is cancelled stays so in every timetable after, and comes back under a greater number. */
    @Test
    void whatWasTakenBackIsRemembered() {
        Timetable before = Timetable.of(PLAN, Optional.empty(), NOW);
        Plan empty = new Plan(TRIP, List.of(), List.of(), Alternatives.NONE);
        Timetable none = Timetable.of(empty, Optional.of(saved(before, Duration.ZERO)), LATER);
        FormerPlan former = new FormerPlan(none.identity(), List.of(), none.cancelled());
        assertEquals(none.cancelled(), Timetable.of(empty, Optional.of(former), LATER).cancelled());
        Timetable again = Timetable.of(PLAN, Optional.of(former), LATER);
        assertEquals(List.of(), again.cancelled());
        windows(again).forEach(window -> assertEquals(none.cancelled().get(0).event().sequence() + 1,
                window.event().sequence()));
    }

    @Test
    void aTripWithoutWishesHasNoTimetable() {
        Trip bare = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 2, List.of());
        assertThrows(BadInput.class, () -> Timetable.of(new AnalyticEphemeris(), StarCatalogue.builtIn(),
                bare,
                Optional.empty(), NOW, Progress.NONE));
        assertEquals(2, windows(Timetable.of(new AnalyticEphemeris(), StarCatalogue.builtIn(), TRIP,
                Optional.empty(),
                NOW, Progress.NONE)).size());
    }

    @Test
    void anEarlierPlanSuitsATripWhoseWishesItServes() {
        FormerPlan former = saved(Timetable.of(PLAN, Optional.empty(), NOW), Duration.ZERO);
        assertTrue(former.suits(TRIP));
        assertTrue(former.suits(Trips.trip(List.of(Places.EQUATOR), Trips.DARK_NIGHT.plusDays(1), 2, 2,
                List.of(STARS))));
        assertFalse(former.suits(Trips.trip(List.of(Places.EQUATOR), Trips.DARK_NIGHT.plusDays(1), 2, 2,
                List.of(
                Trips.pointed("others", Direction.ofDegrees(0, 44), SkyKind.DARK,
                new Wish.Tone.Free())))));
    }
}
