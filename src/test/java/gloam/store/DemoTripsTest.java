package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Wish;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoTripsTest {

    private static final Path DEMO = Path.of("demo-data");

    @ParameterizedTest
    @ValueSource(strings = {"trip.yaml", "trip-arctic.yaml", "trip-south.yaml"})
    void demoTripsAreRead(String name) {
        TripFile.Reading reading = TripFile.read(DEMO.resolve(name));
        assertTrue(reading.trip().wishes().size() >= 3);
        assertTrue(reading.defaultsUsed().stream().allMatch(line -> line.matches("[a-z0-9.\\[\\]-]+: .+")));
    }

    @Test
    void mainDemoTripHasWhatADemoNeeds() {
        Trip trip = TripFile.read(DEMO.resolve("trip.yaml")).trip();
        assertEquals(10, trip.dates().size());
        assertEquals(2, trip.sites().size());
        assertEquals(1, trip.sites().stream().filter(site -> site.skyline().points().size() > 1).count());
        assertEquals(8, trip.sheets());
        assertTrue(trip.wishes().size() >= 6);
        assertEquals(Set.of(SkyKind.values()),
                new HashSet<>(trip.wishes().stream().map(Wish::sky).toList()));
        assertTrue(!trip.film().colour() && trip.wishes().stream()
                .anyMatch(wish -> wish.film().isPresent() && wish.film().get().colour()));
    }

    @Test
    void otherDemoTripsLieWhereTheyShould() {
        double arctic = TripFile.read(DEMO.resolve("trip-arctic.yaml")).trip().sites().get(0).latitude()
                .degrees();
        double south = TripFile.read(DEMO.resolve("trip-south.yaml")).trip().sites().get(0).latitude()
                .degrees();
        assertTrue(arctic > 66.6 && south < 0);
    }
}
