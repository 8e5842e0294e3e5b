package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.support.Places;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is left of a trip that has begun, and what it and its limits say of themselves. */
class TripTest {

    private static final LocalDate FIRST = LocalDate.of(2027, 2, 8);
    private static final Wish FIXED = Trips.repeated(Trips.pointed("fixed", Direction.ofDegrees(180, 40),
            SkyKind.DARK, new Wish.Tone.Free()), 3, 2);
    private static final Wish MARS = Trips.followed("mars", Body.MARS, SkyKind.ANY,
            new Wish.Tone.Free());
    private static final Wish MOON = Trips.followed("moon", Body.MOON, SkyKind.ANY,
            new Wish.Tone.Free());
    private static final Trip TRIP = Trips.trip(List.of(Places.MID_NORTH), FIRST, 3, 5,
            List.of(FIXED, MARS, MOON));
    /** In the afternoon of the second day, by the site's clocks. */
    private static final Instant SECOND_DAY = Instant.parse("2027-02-09T15:00:00Z");

    @Test
    void theRestBeginsWithTheNightOfNow() {
        Trip rest = TRIP.rest(SECOND_DAY);
        assertEquals(FIRST.plusDays(1), rest.firstNight());
        assertEquals(FIRST.plusDays(2), rest.lastNight());
        assertEquals(Optional.of(new Trip.Begun(SECOND_DAY, 0, List.of(), FIRST)), rest.begun());
        assertEquals(FIRST, TRIP.rest(SECOND_DAY.minus(Duration.ofDays(30))).firstNight());
        assertThrows(BadInput.class, () -> TRIP.rest(SECOND_DAY.plus(Duration.ofDays(2))));
        assertEquals(FIRST.plusDays(2), TRIP.rest(SECOND_DAY.plus(Duration.ofDays(1))).firstNight());
    }

    /** It stays the same trip to calendars, and what was spent stays so. */
    @Test
    void theRestIsOfTheSameTrip() {
        Trip rest = TRIP.rest(SECOND_DAY).withSpent(2);
        assertEquals(TRIP.identity(), rest.identity());
        assertEquals(2, rest.spent());
        assertEquals(0, TRIP.spent());
        Trip later = rest.rest(SECOND_DAY.plus(Duration.ofDays(1)));
        assertEquals(2, later.spent());
        assertEquals(TRIP.identity(), later.identity());
        assertNotEquals(TRIP.identity(), Trips.trip(TRIP.sites(), FIRST.plusDays(1), 3, 5, List.of())
                .identity());
    }

    @Test
    void someSheetIsLeft() {
        Trip rest = TRIP.rest(SECOND_DAY);
        assertEquals(4, rest.withSpent(4).spent());
        assertThrows(BadInput.class, () -> rest.withSpent(5));
        assertThrows(BadInput.class, () -> rest.withSpent(-1));
    }

    @Test
    void whatIsDoneIsWantedNoMore() {
        Trip left = TRIP.rest(SECOND_DAY).without(List.of("fixed", "mars", "fixed"));
        assertEquals(List.of("fixed", "moon"), left.wishes().stream().map(Wish::name).toList());
        assertEquals(1, left.wishes().get(0).repeat());
        assertEquals(List.of("fixed", "mars", "fixed"), left.begun().orElseThrow().done());
        assertEquals(List.of("mars", "moon"), TRIP.without(List.of("fixed", "fixed", "fixed")).wishes()
                .stream()
                .map(Wish::name).toList());
        assertThrows(BadInput.class, () -> TRIP.without(List.of("venus")));
    }

    /** The Moon is looked at anyway. */
    @Test
    void bodiesAreTheSunAndThePlanetsWanted() {
        Wish records = Trips.wish("again", new Aim.Point(Direction.ofDegrees(180, 40), Angle.ZERO),
                SkyKind.ANY, new Wish.Tone.Free(), new Wish.Records.These(List.of(Body.SATURN)));
        assertEquals(List.of(Body.SUN, Body.MARS, Body.SATURN), Trips.trip(TRIP.sites(), FIRST, 1, 1,
                List.of(MARS, MOON, records, MARS)).bodies());
    }

    @ParameterizedTest
    @CsvSource({"23:00, 01:00, 23:00, true", "23:00, 01:00, 01:00, true", "23:00, 01:00, 00:00, true",
        "23:00, 01:00, 01:01, false", "23:00, 01:00, 22:59, false", "20:00, 22:00, 20:00, true",
                "20:00, 22:00, 22:00, true",
        "20:00, 22:00, 22:01, false", "20:00, 22:00, 19:59, false", "20:00, 20:00, 20:00, true",
                "20:00, 20:00, 20:01, false"})
    void aPartOfTheNightMayGoOverMidnight(LocalTime from, LocalTime to, LocalTime time, boolean holds) {
        assertEquals(holds, new Limits.TimeOfNight(from, to).holds(time));
    }

    @Test
    void boundsHaveAMarginToBothSides() {
        Between both = Between.of(10, 30);
        assertEquals(5, both.margin(15), 1e-12);
        assertEquals(5, both.margin(25), 1e-12);
        assertEquals(-1, both.margin(9), 1e-12);
        assertEquals(-1, both.margin(31), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, Between.ANY.margin(5));
        assertTrue(Between.ANY.any() && !both.any());
        assertTrue(!new Between(OptionalDouble.of(1), OptionalDouble.empty()).any());
        assertTrue(!new Between(OptionalDouble.empty(), OptionalDouble.of(1)).any());
    }
}
