package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.exposure.Bracket;
import gloam.units.Stops;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.DoubleAdder;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Plans nights of a trip each as if it were the only one, and no further than it may be worth as much as is
 * wanted. May be asked by several threads at once.
 */
final class NightAlone {

    /** Of sums in another order. */
    private static final double ROUNDING = 1e-9;

    private final Trip trip;
    private final List<List<Equipment>> equipment;
    private final Ephemeris ephemeris;
    private final StarField stars;
    private final int[] mostHundredths;
    private final List<DoubleAdder> lost;

    /** Plans nights of a trip. */
    NightAlone(Trip trip, Ephemeris ephemeris, StarField stars) {
        this.trip = trip;
        this.equipment = Equipment.all(trip);
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.mostHundredths = IntStream.range(0, trip.wishes().size()).map(number ->
                equipment.get(number).stream()
                .mapToInt(with -> mostHundredths(trip.wishes().get(number), with))
                .max().orElseThrow()).toArray();
        this.lost = Stream.generate(DoubleAdder::new).limit(trip.wishes().size()).toList();
    }

    /** The chance of a wish's tone in hundredths, if it could be met exactly. */
    private static int mostHundredths(Wish wish, Equipment with) {
        return wish.tone() instanceof Wish.Tone.Near near && wish.later().isEmpty()
                ? Chance.hundredths(Bracket.rightChance(0, with.response().leastSpreadStops(
                log2RatePerS(near.stops() - near.withinStops(), wish.longest()),
                log2RatePerS(near.stops() + near.withinStops(), wish.shortest())))) : Chance.CERTAIN;
    }

    private static double log2RatePerS(double toneStops, Duration exposure) {
        return toneStops - Stops.between(1, exposure.toSeconds());
    }

    /** By wish, what a night can be worth to it at most, as far as its sky alone says. */
    double[] most(Night night) {
        SiteNight there = met(night, new Shortfalls());
        return IntStream.range(0, trip.wishes().size()).mapToDouble(number -> there.open(number)
                ? Gain.worth(Gain.of(trip.wishes().get(number).worth() * there.worthShare(),
                mostHundredths[number], 0)) : 0).toArray();
    }

    /** The timetable of a night. */
    Timetable.Night best(Night night) {
        return best(night, new Shortfalls());
    }

    private Timetable.Night best(Night night, Shortfalls shortfalls) {
        SiteNight there = met(night, shortfalls);
        return best(there, there.offers(), 0, shortfalls);
    }

    /**
     * The timetable of a night if it is worth so much; empty or worth less if not. Wishes to which other
     * nights have been worth less than their skies said are looked at first.
     *
     * @param most what the night can be worth to each wish at most
     */
    Optional<Timetable.Night> best(Night night, double[] most, double leastWorth) {
        Shortfalls shortfalls = new Shortfalls();
        SiteNight there = met(night, shortfalls);
        double[] left = most.clone();
        EveningOffers.ToWish[] toWishes = new EveningOffers.ToWish[left.length];
        for (int wish : mostLostFirst()) {
            if (Arrays.stream(left).sum() < leastWorth - ROUNDING) {
                return Optional.empty();
            }
            toWishes[wish] = there.to(wish);
            left[wish] = Gain.worth(toWishes[wish].most());
            lost.get(wish).add(most[wish] - left[wish]);
        }
        return Optional.of(best(there, new EveningOffers(night, List.of(toWishes)), leastWorth, shortfalls));
    }

    private List<Integer> mostLostFirst() {
        double[] by = lost.stream().mapToDouble(DoubleAdder::sum).toArray();
        return IntStream.range(0, by.length).boxed().sorted(Comparator.comparingDouble(wish -> -by[wish]))
                .toList();
    }

    private Timetable.Night best(SiteNight there, EveningOffers offers, double leastWorth,
            Shortfalls shortfalls) {
        Timetable.Night best = Timetable.of(trip).choose(List.of(List.of(offers.all())),
                Gain.atLeast(leastWorth - ROUNDING)).nights().get(0);
        double worth = best.exposed().stream().mapToDouble(Timetable.Exposed::worth).sum();
        return worth >= leastWorth - ROUNDING && there.wantStars(best.exposed())
                && there.fallShort(there.made(best.exposed()))
                ? best(offers.night(), shortfalls) : best;
    }

    private SiteNight met(Night night, Shortfalls shortfalls) {
        return new SiteNight(trip, equipment, ephemeris, stars, night, shortfalls);
    }
}
