package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.support.Places;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TripCheckTest {

    /** By a power law of 1.2 a metered t s becomes t^1.2 s: 0.2 · log2 t stops, of 60, 600 and 3600 s. */
    @Test
    void failureIsToldAtAMinuteTenMinutesAndAnHour() {
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 2, List.of());
        TripCheck check = TripCheck.of(trip, List.of("a default"), Optional.of("journal.jsonl"),
                Optional.of("pack 7"));
        List<Double> stops = check.failureStops();
        assertEquals(1.1814, stops.get(0), 1e-4); // given to four decimals
        assertEquals(1.8458, stops.get(1), 1e-4);
        assertEquals(2.3628, stops.get(2), 1e-4);
        assertEquals(List.of("a default"), check.defaultsUsed());
        assertEquals(Optional.of("journal.jsonl"), check.journal());
        assertEquals(Optional.of("pack 7"), check.batch());
    }
}
