package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every plan keeps to, on random trips all over the Earth. */
class PlannerPropertyTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final int TRIPS = 24;
    /** Rounding of a worth times a satisfaction of at most one. */
    private static final double FULL = 1 + 1e-9;

    private static final List<Plan> PLANS = trips().map(named -> plan(named.getPayload())).toList();

    static List<Plan> plans() {
        return PLANS;
    }

    private static Stream<Named<Trip>> trips() {
        return Samples.of(TRIPS, random -> {
            List<Site> places = Places.all();
            Site one = places.get(random.nextInt(places.size()));
            Site other = places.get(random.nextInt(places.size()));
            LocalDate first = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(330));
            List<Wish> wishes = IntStream.range(0, 4).mapToObj(i -> Trips.random("wish " + i, random))
                    .toList();
            return Trips.trip(List.of(one, other), first, 2, 1 + random.nextInt(4), wishes);
        });
    }

    private static Plan plan(Trip trip) {
        return new Planner(EPHEMERIS, Trips.stars()).plan(trip);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void exposesOnlyWithTheSunDownAndInTheSkyWanted(Plan plan) {
        for (Plan.NightPlan night : plan.nights()) {
            for (Plan.Window window : night.windows()) {
                assertTrue(inside(window.open(), night.night().sunDown()), window::toString);
                boolean darkWanted = window.wish().sky() == SkyKind.DARK
                        || window.wish().sky() == SkyKind.MOONLIT;
                assertTrue(!darkWanted || inside(window.open(), night.night().darkness()), window::toString);
                assertTrue(window.wish().sky() != SkyKind.MOONLIT
                        || inside(window.open(), night.night().moonUp()), window::toString);
                assertTrue(window.wish().sky() != SkyKind.DUSK
                        || sunDeg(night.night(), window.open().start()) > -18.01, window::toString);
                assertTrue(window.wish().sky() != SkyKind.DAWN
                        || sunDeg(night.night(), window.open().endExclusive()) > -18.01, window::toString);
            }
        }
    }

    private static double sunDeg(Night night, Instant at) {
        return EPHEMERIS.position(Body.SUN, night.site(), at).airlessAltitude().degrees();
    }

    private static boolean inside(Interval open, List<Interval> spans) {
        return spans.stream().anyMatch(span -> !span.start().isAfter(open.start())
                && !span.endExclusive().isBefore(open.endExclusive()));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void leavesTheChangeoverAndNumbersTheSheetsInOrder(Plan plan) {
        assertTrue(plan.sheetsUsed() <= plan.trip().sheets());
        int sheet = 0;
        for (Plan.NightPlan night : plan.nights()) {
            Instant free = Instant.MIN;
            for (Plan.Window window : night.windows()) {
                assertEquals(++sheet, window.sheet());
                assertFalse(window.open().start().isBefore(free), window::toString);
                free = window.open().endExclusive().plus(plan.trip().camera().changeover());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void keepsTheWishesBounds(Plan plan) {
        for (Plan.NightPlan night : plan.nights()) {
            for (Plan.Window window : night.windows()) {
                Wish wish = window.wish();
                assertFalse(window.open().lasts().compareTo(wish.shortest()) < 0, window::toString);
                assertFalse(window.open().lasts().compareTo(wish.longest()) > 0, window::toString);
                assertEquals(0, window.open().start().atZone(ZoneOffset.UTC).getSecond());
                assertEquals(0, window.open().endExclusive().atZone(ZoneOffset.UTC).getSecond());
                assertTrue(plan.trip().camera().lens().fNumbers().contains(window.fNumber()));
                assertTrue(window.score() <= wish.worth() * FULL && window.score() > 0);
                assertTrue(window.aim().altitude().degrees() > 0, window::toString);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void givesEveryWishOfEveryNightAWindowOrAReason(Plan plan) {
        assertEquals(plan.trip().dates(), plan.nights().stream().map(night -> night.night().date()).toList());
        for (Plan.NightPlan night : plan.nights()) {
            Set<Wish> answered = new HashSet<>();
            night.windows().forEach(window -> answered.add(window.wish()));
            night.refused().forEach(refusal -> {
                assertTrue(answered.add(refusal.wish()), "either served or refused");
            });
            assertEquals(new HashSet<>(plan.trip().wishes()), answered);
        }
    }

    @Test
    void plansTheSameTwice() {
        PLANS.stream().limit(4).forEach(plan -> assertEquals(plan, plan(plan.trip())));
    }

    @Test
    void theseTripsAreNotEmpty() {
        Set<SkyKind> served = new HashSet<>();
        PLANS.stream().flatMap(plan -> plan.nights().stream()).flatMap(night -> night.windows().stream())
                .forEach(window -> served.add(window.wish().sky()));
        assertEquals(Set.of(SkyKind.values()), served, "every kind of sky is exposed somewhere");
    }
}
