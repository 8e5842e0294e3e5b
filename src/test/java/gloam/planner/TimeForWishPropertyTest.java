package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.Samples;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The ranking of nights promises what the timetable can serve, on random nights all over the Earth. */
class TimeForWishPropertyTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final StarField STARS = StarField.of(Trips.stars());
    private static final int NIGHTS = 48;

    private static final List<Asked> ALL = nights().flatMap(named -> asked(named.getPayload())).toList();

    /** A wish of a night: the time that the ranking finds for it, and what the timetable makes of it. */
    private record Asked(Wish wish, double share, boolean closed, boolean served) {
    }

    private static Stream<Named<Trip>> nights() {
        return Samples.of(NIGHTS, random -> {
            List<Site> places = Places.all();
            LocalDate date = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(330));
            List<Wish> wishes = IntStream.range(0, 6).mapToObj(i -> {
                Wish wish = Trips.random("wish " + i, random);
                return i % 2 == 0 ? wish : limited(wish, random);
            }).toList();
            return Trips.trip(List.of(places.get(random.nextInt(places.size()))), date, 1, 6, wishes);
        });
    }

    /** A wish narrowed by one thing. */
    private static Wish limited(Wish wish, RandomGenerator random) {
        Between any = Between.ANY;
        Optional<Limits.Side> noSide = Optional.empty();
        Optional<Limits.TimeOfNight> noTime = Optional.empty();
        LocalTime from = LocalTime.of(random.nextInt(24), random.nextInt(60));
        Limits limits = switch (random.nextInt(8)) {
            case 0 -> new Limits(upFrom(random.nextInt(30)), any, noSide, any, noTime, any, any, any);
            case 1 -> new Limits(any, upFrom(random.nextInt(100)), noSide, any, noTime, any, any, any);
            case 2 -> new Limits(any, any, Optional.of(Limits.Side.values()[random.nextInt(4)]), any, noTime, any, any, any);
            case 3 -> new Limits(any, any, noSide, upFrom(3 + random.nextInt(15)), noTime, any, any, any);
            case 4 -> new Limits(any, any, noSide, any, Optional.of(new Limits.TimeOfNight(from, from.plusHours(2))),
                    any, any, any);
            case 5 -> new Limits(any, any, noSide, any, noTime, upFrom(random.nextInt(60)), any, any);
            case 6 -> new Limits(any, any, noSide, any, noTime, any, upFrom(random.nextInt(100)), any);
            default -> new Limits(any, any, noSide, any, noTime, any, any, upFrom(random.nextInt(40)));
        };
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(), wish.shortest(),
                wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), limits);
    }

    private static Between upFrom(double least) {
        return new Between(OptionalDouble.of(least), OptionalDouble.empty());
    }

    private static Stream<Asked> asked(Trip trip) {
        Night night = Night.of(EPHEMERIS, trip.sites().get(0), trip.firstNight());
        NightSky fine = new NightSky(EPHEMERIS, night, trip.bodies(), Optional.empty(), NightClock.NODE_MIN);
        NightSky wide = new NightSky(EPHEMERIS, night, trip.bodies(), Optional.empty(), TimeForWish.LOOK_MIN);
        return trip.wishes().stream().map(wish -> {
            Kit kit = Kit.of(trip, wish);
            Aiming aiming = new Aiming(wish.aim(), fine, kit.camera());
            return new Asked(wish, TimeForWish.share(wish, kit, wide),
                    Moments.of(Conditions.of(wish, fine, aiming), fine.sunDown()).isEmpty(),
                    !new WindowFinder(wish, kit, fine, STARS).find().openings().isEmpty());
        });
    }

    static List<Asked> all() {
        return ALL;
    }

    @ParameterizedTest
    @MethodSource("all")
    void aWishThatCanBeServedHasTheTime(Asked asked) {
        assertTrue(!asked.served || asked.share == 1, asked::toString);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aWishWhoseConditionsNeverHoldHasNone(Asked asked) {
        assertTrue(!asked.closed || asked.share == 0, asked::toString);
    }

    @Test
    void someNightsAreOfEitherKind() {
        assertTrue(ALL.stream().filter(Asked::served).count() > NIGHTS / 2);
        assertTrue(ALL.stream().filter(Asked::closed).count() > NIGHTS / 2);
        assertTrue(ALL.stream().anyMatch(asked -> asked.share > 0 && asked.share < 1));
    }
}
