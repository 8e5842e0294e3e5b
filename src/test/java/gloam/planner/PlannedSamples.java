package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.support.Samples;
import gloam.support.SharedEphemeris;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;

/** Random small trips with their plans; another number of them by {@code -Dgloam.laws=N}. */
final class PlannedSamples {

    static final Ephemeris EPHEMERIS = new SharedEphemeris();
    static final int TRIPS = Integer.getInteger("gloam.laws", 100);
    /** Sums of a few products of worths and hundredths. */
    static final double ROUNDING = 1e-9;

    private static List<Sample> known = List.of();

    /** A trip, its plan, and a seed for what is done to it. */
    record Sample(Trip trip, Plan plan, long seed) {
    }

    private static Sample drawn(RandomGenerator random) {
        Trip trip = RandomTrips.trip(random);
        return new Sample(trip, plan(trip), random.nextLong());
    }

    /** Planned by several threads, which must not wait for this class to be initialized. */
    static synchronized List<Sample> samples() {
        known = known.isEmpty() ? Samples.of(TRIPS, PlannedSamples::drawn).parallel().map(Named::getPayload)
                .toList() : known;
        return known;
    }

    /** The plans of all samples. */
    static Stream<Plan> plans() {
        return samples().stream().map(Sample::plan);
    }

    static Plan plan(Trip trip) {
        return new Planner(EPHEMERIS, Trips.stars()).plan(trip);
    }

    static double worth(Trip trip) {
        return worth(plan(trip));
    }

    static double worth(Plan plan) {
        return plan.nights().stream().flatMap(night -> night.windows().stream())
                .mapToDouble(Plan.Window::score).sum();
    }

    /** Holds a law of all samples, on as many threads as there are. */
    static void each(Consumer<Sample> law) {
        samples().parallelStream().forEach(law);
    }

    static Trip with(Trip trip, List<Site> sites, LocalDate first, LocalDate last, int sheets,
            List<Wish> wishes) {
        return new Trip(trip.title(), sites, first, last, trip.cameras(), trip.film(), sheets, trip.preview(),
                wishes, trip.forecast(), trip.begun(), trip.outings());
    }

    private PlannedSamples() {
    }
}
