package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Plans nights of a trip each as if it were the only one, and no further than it may be worth as much as is
 * wanted. May be asked by several threads at once.
 */
final class NightAlone {

    private final Trip trip;
    private final List<List<Equipment>> equipment;
    private final Ephemeris ephemeris;
    private final StarField stars;
    private final Timetable timetable;
    private final int[] mostHundredths;
    private final List<LongAdder> lost;

    /** Plans nights of a trip. */
    NightAlone(Trip trip, Ephemeris ephemeris, StarField stars) {
        this.trip = trip;
        this.equipment = Equipment.all(trip);
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.timetable = Timetable.of(trip);
        this.mostHundredths = IntStream.range(0, trip.wishes().size()).map(number ->
                equipment.get(number).stream()
                .mapToInt(with -> WishLight.mostHundredths(trip.wishes().get(number), with, 0))
                .max().orElseThrow()).toArray();
        this.lost = Stream.generate(LongAdder::new).limit(trip.wishes().size()).toList();
    }

    /** By wish, what a night can gain by it at most, as far as its sky alone says. */
    long[] most(Night night) {
        SiteNight there = met(night, new Shortfalls());
        return IntStream.range(0, trip.wishes().size()).mapToLong(number -> there.mayOpen(number)
                ? most(number, there.worthShare()) : 0).toArray();
    }

    private long most(int number, double worthShare) {
        return Gain.of(trip.wishes().get(number).worth() * worthShare, mostHundredths[number], 0);
    }

    /** The timetable of a night. */
    Timetable.Night best(Night night) {
        return best(night, IntStream.range(0, trip.wishes().size()).mapToLong(number -> most(number, 1))
                .toArray(), Wanted.ANY).orElseThrow();
    }

    /**
     * How much a night must gain to be wanted.
     *
     * @param leastGain what it must gain as far as it is worth
     * @param atLeast   whether just that is enough
     */
    record Wanted(long leastGain, BooleanSupplier atLeast) {

        private static final Wanted ANY = new Wanted(0, () -> true);

        private boolean lets(long gain) {
            return gain > leastGain || gain == leastGain && atLeast.getAsBoolean();
        }
    }

    /**
     * The timetable of a night if it is wanted. Wishes by which other nights have gained less, beside those
     * before, than their skies said are looked at first.
     *
     * @param most what the night can gain by each wish at most
     */
    Optional<Timetable.Night> best(Night night, long[] most, Wanted wanted) {
        Shortfalls shortfalls = new Shortfalls();
        while (true) {
            SiteNight there = met(night, shortfalls);
            if (wanted.leastGain > 0 && !lets(there, most, wanted)) {
                return Optional.empty();
            }
            Timetable.Night best = timetable.choose(List.of(List.of(there.offers().all()))).nights().get(0);
            if (!there.wantStars(best.exposed()) || !there.fallShort(there.made(best.exposed()))) {
                return Optional.of(best);
            }
        }
    }

    private boolean lets(SiteNight there, long[] most, Wanted wanted) {
        List<Offer> offers = new ArrayList<>();
        long gained = 0;
        long open = Arrays.stream(most).sum();
        for (int wish : mostLostFirst()) {
            if (!wanted.lets(gained + open)) {
                return false;
            }
            open -= most[wish];
            offers.addAll(there.worthTo(wish).offers());
            long together = timetable.mostWorth(offers, wanted.leastGain - open);
            lost.get(wish).add(most[wish] - (together - gained));
            gained = together;
        }
        return wanted.lets(gained);
    }

    private List<Integer> mostLostFirst() {
        long[] by = lost.stream().mapToLong(LongAdder::sum).toArray();
        return IntStream.range(0, by.length).boxed().sorted(Comparator.comparingLong(wish -> -by[wish]))
                .toList();
    }

    private SiteNight met(Night night, Shortfalls shortfalls) {
        return new SiteNight(trip, equipment, ephemeris, stars, night, shortfalls);
    }
}
