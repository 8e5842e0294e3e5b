package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Ephemeris;
import gloam.support.Samples;
import gloam.support.SharedEphemeris;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a refusal says is so: its bound, moved by what it says, makes the wish possible that night. */
@Tag("laws")
class RefusalLawsPropertyTest {

    private static final Ephemeris EPHEMERIS = new SharedEphemeris();
    private static final int TRIPS = 3 * PlannedSamples.TRIPS;
    /** Texts round tones to a tenth; upwards they still leave room. */
    private static final double TENTH = 0.1;

    private static Stream<Trip> trips() {
        return Samples.of(TRIPS, random -> {
            Trip trip = RandomTrips.trip(random);
            return new Trip(trip.title(), trip.sites().subList(0, 1), trip.firstNight(), trip.firstNight(),
                    trip.cameras(), trip.film(), 1, trip.preview(), trip.wishes().subList(0, 1),
                    Weather.UNKNOWN, trip.begun(), Outings.ANY);
        }).parallel().map(named -> named.getPayload());
    }

    private static Plan.NightPlan night(Trip trip) {
        return new Planner(EPHEMERIS, Trips.stars()).plan(trip).nights().get(0);
    }

    private static Trip with(Trip trip, Wish wish) {
        return new Trip(trip.title(), trip.sites(), trip.firstNight(), trip.lastNight(), trip.cameras(),
                trip.film(), trip.sheets(), trip.preview(), List.of(wish), trip.forecast(), trip.begun(),
                Outings.ANY);
    }

    @Test
    void theBoundMovedByWhatTheReasonSaysMakesTheWishPossible() {
        Set<Class<?>> seen = ConcurrentHashMap.newKeySet();
        trips().forEach(trip -> night(trip).refused().forEach(refusal -> moved(refusal).ifPresent(wish -> {
            Reason reason = reason(refusal);
            seen.add(reason.getClass());
            Plan.NightPlan then = night(with(trip, wish));
            assertTrue(then.windows().size() == 1 || reason instanceof Reason.NoDuration
                    && !(reason(then.refused().get(0)) instanceof Reason.NoDuration),
                    () -> refusal + " then " + then.refused());
        })));
        assertTrue(seen.containsAll(Set.of(Reason.ToneMissed.class, Reason.TooFewStars.class,
                Reason.NoDuration.class)), seen::toString);
    }

    /** The reason, whichever camera it speaks of. */
    private static Reason reason(Plan.Refusal refusal) {
        return refusal.reason() instanceof Reason.With with ? with.reason() : refusal.reason();
    }

    /** The wish with the bound moved that its refusal names. */
    private static Optional<Wish> moved(Plan.Refusal refusal) {
        Wish wish = refusal.wish();
        Reason reason = reason(refusal);
        if (reason instanceof Reason.ToneMissed missed) {
            double stops = Math.ceil(missed.nearest().toneStops() / TENTH) * TENTH;
            return Optional.of(wish.toned(wish.tone() instanceof Wish.Tone.AtMost
                    ? new Wish.Tone.AtMost(stops) : new Wish.Tone.Near(stops)));
        } else if (reason instanceof Reason.TooFewStars few && few.recorded() > 0) {
            return Optional.of(wish.recording(new Wish.Records.AtLeast(few.recorded())));
        } else if (reason instanceof Reason.NoDuration none && none.mostMin() > 0) {
            if (none.mostBy() == DurationLimit.EXPOSURE) {
                return Optional.of(lasting(wish, wish.shortest(), Duration.ofMinutes(none.leastMin())));
            } else if (none.leastBy() == DurationLimit.EXPOSURE) {
                return Optional.of(lasting(wish, Duration.ofMinutes(none.mostMin()), wish.longest()));
            }
        }
        return Optional.empty();
    }

    /** The wish with that given up which its remedy names has a window, its stars counted. */
    @Test
    void aRemedyMakesTheWishPossible() {
        Set<Remedy.Change> seen = ConcurrentHashMap.newKeySet();
        trips().map(RefusalLawsPropertyTest::wantingStars).forEach(trip -> night(trip).refused().forEach(
                refusal -> refusal.remedy().filter(Remedy.Changed.class::isInstance)
                .map(Remedy.Changed.class::cast).ifPresent(changed -> {
                    seen.add(changed.change());
                    assertTrue(night(with(trip, given(refusal.wish(), changed))).windows().size() == 1,
                            () -> refusal + " of " + trip);
                })));
        assertTrue(seen.size() > 4, seen::toString);
    }

    /** The trip with so many stars wanted of every other wish that they are often too few. */
    private static Trip wantingStars(Trip trip) {
        Wish wish = trip.wishes().get(0);
        int trails = 5 + (int) ((wish.longest().plus(wish.shortest()).toMinutes() + 2) % 30);
        return trails % 2 == 0 ? trip : with(trip, wish.recording(new Wish.Records.AtLeast(trails)));
    }

    private static Wish given(Wish wish, Remedy.Changed changed) {
        return switch (changed.change()) {
            case F_NUMBERS -> wish.through(List.of());
            case TRAIL_LENGTH -> wish.drawing(new TrailLength(OptionalDouble.empty(),
                    OptionalDouble.empty()));
            case SHORTEST -> wish.from(Duration.ofMinutes(Math.round(changed.amount())));
            case TONE -> wish.toned(wish.tone() instanceof Wish.Tone.AtMost
                    ? new Wish.Tone.AtMost(changed.amount()) : new Wish.Tone.Near(changed.amount()));
            case RECORDS -> wish.recording(new Wish.Records.Nothing());
            case SKY -> wish.under(SkyKind.ANY);
            case CLEAR -> wish;
        };
    }

    /** A trip that puts up with the chance of a clear sky that a remedy names has the window it promises. */
    @Test
    void theChanceOfARemedyAgainstCloudIsEnough() {
        AtomicInteger seen = new AtomicInteger();
        Samples.of(TRIPS / 2, random -> {
            Trip trip = RandomTrips.trip(random);
            return under(trip, RandomTrips.weather(random, trip.sites()));
        }).parallel().map(Named::getPayload).forEach(cloudy -> night(cloudy).refused().forEach(refusal -> {
            if (refusal.remedy().orElse(null) instanceof Remedy.Changed changed
                    && changed.change() == Remedy.Change.CLEAR) {
                assertTrue(night(under(with(cloudy, refusal.wish()),
                        cloudy.forecast().leastClear(changed.amount()))).windows().size() == 1,
                        () -> refusal + " of " + cloudy);
                seen.incrementAndGet();
            }
        }));
        assertTrue(seen.get() > TRIPS / 200, seen + " remedies");
    }

    private static Trip under(Trip trip, Weather weather) {
        return new Trip(trip.title(), trip.sites().subList(0, 1), trip.firstNight(), trip.firstNight(),
                trip.cameras(), trip.film(), 1, trip.preview(), trip.wishes().subList(0, 1), weather,
                trip.begun(), Outings.ANY);
    }

    private static Wish lasting(Wish wish, Duration shortest, Duration longest) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                shortest, longest, wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), wish.limits());
    }

    /** What a remedy promises to open the wish is so: it was found by the search of the timetable. */
    @Test
    void aRemedyOnAnotherNightIsAWindowThere() {
        trips().limit(TRIPS / 5).forEach(trip -> {
            Trip longer = new Trip(trip.title(), trip.sites(), trip.firstNight(),
                    trip.firstNight().plusDays(5), trip.cameras(), trip.film(), 6, trip.preview(),
                    trip.wishes(), trip.forecast(), trip.begun(), Outings.ANY);
            new Planner(EPHEMERIS, Trips.stars()).plan(longer).nights()
                    .forEach(night -> night.refused().forEach(refusal ->
                    refusal.remedy().filter(Remedy.Elsewhere.class::isInstance).ifPresent(remedy -> {
                        Trip there = new Trip(trip.title(), List.of(trip.sites().get(0)), date(remedy),
                                date(remedy),
                                trip.cameras(), trip.film(), 1, trip.preview(), List.of(refusal.wish()),
                                trip.forecast(), trip.begun(), Outings.ANY);
                        assertTrue(night(there).windows().size() == 1, () -> refusal + " of " + longer);
                    })));
        });
    }

    private static LocalDate date(Remedy remedy) {
        return ((Remedy.Elsewhere) remedy).night().date();
    }
}
