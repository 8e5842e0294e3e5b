package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Night;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.Instant;
import java.time.LocalDate;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Summer time in the United Kingdom: from 01:00 UTC on the last Sunday of March to that of October (IANA tzdata). */
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
        assertEquals(Optional.empty(), ClockChange.of(Night.of(new AnalyticEphemeris(), Places.HALF_HOUR_ZONE, Places.CLOCKS_BACK)));
    }

    private static Optional<Instant> of(LocalDate evening) {
        return ClockChange.of(Night.of(new AnalyticEphemeris(), Places.CLOCK_CHANGE, evening))
                .map(ZoneOffsetTransition::getInstant);
    }
}
