package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Night;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Summer time in the United Kingdom: from 01:00 UTC on the last Sunday of March to that of October (IANA
 * tzdata).
 */
class ClockChangeTest {

    @Test
    void theNightOfTheChangeHasIt() {
        assertEquals(Optional.of(Instant.parse("2027-03-28T01:00:00Z")), of(Places.CLOCKS_FORWARD));
        assertEquals(Optional.of(Instant.parse("2027-10-31T01:00:00Z")), of(Places.CLOCKS_BACK));
    }

    @Test
    void otherNightsHaveNone() {
        assertEquals(Optional.empty(), of(Places.CLOCKS_BACK.minusDays(1)));
        assertEquals(Optional.empty(), of(Places.CLOCKS_BACK.plusDays(1)));
        assertEquals(Optional.empty(),
                ClockChange.of(Night.of(new AnalyticEphemeris(), Places.HALF_HOUR_ZONE, Places.CLOCKS_BACK)));
    }

    /**
     * Clocks go from 00:59 to 02:00: of an hour that reaches into the gap the rest is shown, of one inside it
     * nothing.
     */
    @ParameterizedTest
    @CsvSource({"23:00, 00:30, 23:00, 00:30", "00:30, 01:30, 00:30, 00:59", "01:30, 03:00, 02:00, 03:00",
        "00:30, 03:00, 00:30, 03:00", "01:00, 02:00, 02:00, 02:00", "00:59, 01:59, 00:59, 00:59"})
    void whatTheClocksSkipIsNotShown(LocalTime from, LocalTime to, LocalTime shownFrom, LocalTime shownTo) {
        assertEquals(Optional.of(new Limits.TimeOfNight(shownFrom, shownTo)),
                shown(Places.CLOCKS_FORWARD, from, to));
        assertEquals(Optional.of(new Limits.TimeOfNight(from, to)), shown(Places.CLOCKS_BACK, from, to));
        assertEquals(Optional.of(new Limits.TimeOfNight(from, to)),
                shown(Places.CLOCKS_BACK.minusDays(7), from, to));
    }

    @Test
    void aTimeThatIsSkippedWholeIsNone() {
        assertEquals(Optional.empty(), shown(Places.CLOCKS_FORWARD, LocalTime.of(1, 0), LocalTime.of(1, 59)));
        assertEquals(Optional.empty(),
                shown(Places.CLOCKS_FORWARD, LocalTime.of(1, 10), LocalTime.of(1, 20)));
    }

    private static Optional<Limits.TimeOfNight> shown(LocalDate evening, LocalTime from, LocalTime to) {
        return ClockChange.shown(Night.of(new AnalyticEphemeris(), Places.CLOCK_CHANGE, evening),
                new Limits.TimeOfNight(from, to));
    }

    private static Optional<Instant> of(LocalDate evening) {
        return ClockChange.of(Night.of(new AnalyticEphemeris(), Places.CLOCK_CHANGE, evening))
                .map(ZoneOffsetTransition::getInstant);
    }
}
