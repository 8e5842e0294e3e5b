package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Night;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Summer time in the United Kingdom: from 01:00 UTC on the last Sunday of March to that of October (IANA tzdata). */
class ClockChangeTest {

    @Test
    void theNightOfTheChangeTellsIt() {
        assertEquals(Optional.of("on Sun 2027-03-28 the clocks go forward from 01:00 to 02:00"), of(Places.CLOCKS_FORWARD));
        assertEquals(Optional.of("on Sun 2027-10-31 the clocks go back from 02:00 to 01:00; times that come twice stand with "
                + "their offset from UTC"), of(Places.CLOCKS_BACK));
    }

    @Test
    void otherNightsTellNothing() {
        assertEquals(Optional.empty(), of(Places.CLOCKS_BACK.minusDays(1)));
        assertEquals(Optional.empty(), of(Places.CLOCKS_BACK.plusDays(1)));
        assertEquals(Optional.empty(), ClockChange.of(Night.of(new AnalyticEphemeris(), Places.HALF_HOUR_ZONE, Places.CLOCKS_BACK)));
    }

    private static Optional<String> of(LocalDate evening) {
        return ClockChange.of(Night.of(new AnalyticEphemeris(), Places.CLOCK_CHANGE, evening));
    }
}
