package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.support.Samples;
import gloam.support.SharedEphemeris;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One night's plan of one or two wishes against every opening minute, duration, f-number and camera that
 * the rules allow.
 */
class ExhaustiveSearchTest {

    private static final Ephemeris EPHEMERIS = new SharedEphemeris();
    private static final StarField STARS = StarField.of(Trips.stars());
    private static final int TRIPS = 50;
    private static final double ROUNDING = 1e-9;

    static Stream<Named<Trip>> trips() {
        return Samples.of(TRIPS, random -> {
            Trip trip = RandomTrips.trip(random);
            List<Wish> wishes = IntStream.range(0, 2)
                    .mapToObj(i -> Trips.repeated(RandomTrips.wish("wish " + i, random), 1,
                    1 + random.nextInt(3))).toList();
            return new Trip(trip.title(), trip.sites().subList(0, 1), trip.firstNight(), trip.firstNight(),
                    trip.cameras(), trip.film(), 2, trip.preview(), wishes, trip.forecast(), trip.begun(),
                    Outings.ANY);
        });
    }

    @ParameterizedTest
    @MethodSource("trips")
    void aPlanIsWorthAsMuchAsTheBestOfAllPairsOfExposures(Trip trip) {
        assertEquals(best(trip), planned(trip), ROUNDING);
    }

    @Test
    void theseTripsAreNotEmpty() {
        assertTrue(trips().filter(trip -> planned(trip.getPayload()) > 0.5).count() > TRIPS / 3);
    }

    private static double planned(Trip trip) {
        return new Planner(EPHEMERIS, Trips.stars()).plan(trip).nights().get(0).windows().stream()
                .mapToDouble(Plan.Window::score).sum();
    }

    private static double best(Trip trip) {
        Night night = Night.of(EPHEMERIS, trip.sites().get(0), trip.firstNight());
        SiteNight met = new SiteNight(trip, Equipment.all(trip), EPHEMERIS, STARS, night,
                new Shortfalls());
        double best = 0;
        for (Equipment with : Equipment.all(trip).get(0)) {
            Best one = Best.of(met, trip.wishes().get(0), with);
            for (Equipment otherWith : Equipment.all(trip).get(1)) {
                Best other = Best.of(met, trip.wishes().get(1), otherWith);
                best = Math.max(best, with.number() == otherWith.number()
                        ? oneAfterTheOther(one, other, trip.changeoverMin(with.number()))
                        : one.after[0] + other.after[0]);
            }
        }
        return best;
    }

    private static double oneAfterTheOther(Best one, Best other, int changeoverMin) {
        double best = 0;
        for (int freeMin = 0; freeMin < one.before.length; freeMin++) {
            int fromMin = Math.min(one.before.length - 1, freeMin + changeoverMin);
            best = Math.max(best, Math.max(one.before[freeMin] + other.after[fromMin],
                    other.before[freeMin] + one.after[fromMin]));
        }
        return best;
    }

    /**
     * The most that an exposure of a wish is worth.
     *
     * @param before when it is closed by each minute
     * @param after  when it opens from each minute on
     */
    private record Best(double[] before, double[] after) {

        static Best of(SiteNight met, Wish wish, Equipment with) {
            int minutes = met.sky().clock().minutes();
            Best best = new Best(new double[minutes + 1], new double[minutes + 1]);
            Aiming aiming = new Aiming(wish.aim(), met.sky(), with.camera());
            Optional<Moments> moments = Moments.of(Conditions.of(wish, met.sky(), aiming),
                    met.sky().sunDown());
            if (moments.isPresent()) {
                best.add(met.at(wish, with), minutes);
            }
            for (int minute = 1; minute <= minutes; minute++) {
                best.before[minute] = Math.max(best.before[minute], best.before[minute - 1]);
                best.after[minutes - minute] = Math.max(best.after[minutes - minute],
                        best.after[minutes - minute + 1]);
            }
            return best;
        }

        private void add(WishNight night, int minutes) {
            for (int durationMin : night.durations()) {
                for (int openMin = 0; openMin + durationMin <= minutes; openMin++) {
                    int closeMin = openMin + durationMin;
                    if (night.moments().throughout().get(openMin) && night.allows(openMin, closeMin)) {
                        for (int stop = 0; stop < night.with().fNumbers().size(); stop++) {
                            double worth = night.worth() * night.hundredths(stop, openMin, closeMin)
                                    / 100.0;
                            before[closeMin] = Math.max(before[closeMin], worth);
                            after[openMin] = Math.max(after[openMin], worth);
                        }
                    }
                }
            }
        }
    }
}
