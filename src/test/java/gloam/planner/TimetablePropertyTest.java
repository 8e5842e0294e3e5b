package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The timetable against brute force over all schedules, and its limits on random cases. */
class TimetablePropertyTest {

    private static final int CASES = 300;
    /** So that nights end at different hours. */
    private static final int STEP_MIN = 25;
    /** Of sums of floating point numbers. */
    private static final double ROUNDING = 1e-9;

    /**
     * What a timetable comes to, in the order in which the guide prefers one to another: more worth, then
     * fewer nights out, fewer moves, the earlier end of the nights by full hours, the earlier nights.
     */
    private record Value(double worth, int nightsOut, int moves, int hours, int nights)
            implements Comparable<Value> {

        static final Value NOTHING = new Value(0, 0, 0, 0, 0);

        /** The value of one night. */
        static Value of(int night, boolean moved, List<Offer> exposed) {
            return new Value(exposed.stream().mapToDouble(offer -> Gain.worth(offer.gain())).sum(), 1,
                    moved ? 1 : 0, exposed.stream().mapToInt(Case::close).max().orElseThrow() / 60,
                    night * exposed.size());
        }

        Value plus(Value other) {
            return new Value(worth + other.worth, nightsOut + other.nightsOut, moves + other.moves,
                    hours + other.hours, nights + other.nights);
        }

        Value max(Value other) {
            return compareTo(other) >= 0 ? this : other;
        }

        @Override
        public int compareTo(Value other) {
            return Math.abs(worth - other.worth) > ROUNDING ? Double.compare(worth, other.worth)
                    : Comparator.comparingInt(Value::nightsOut).thenComparingInt(Value::moves)
                    .thenComparingInt(Value::hours).thenComparingInt(Value::nights).compare(other, this);
        }
    }

    /** A small random trip: at most 3 nights, 2 sites, 4 wishes, 6 offers a site and night, 2 cameras. */
    private record Case(int[] repeats, int sheets, int perNight, int[] changeoverMin, int wayNights,
            List<List<List<Offer>>> offers) {

        static Case of(long seed) {
            Random random = new Random(seed);
            int[] repeats = IntStream.generate(() -> 1 + random.nextInt(2)).limit(2 + random.nextInt(3))
                    .toArray();
            int siteCount = 1 + random.nextInt(2);
            int[] changeoverMin = random.ints(1 + random.nextInt(2), 0, 3).map(steps -> STEP_MIN * steps)
                    .toArray();
            List<List<List<Offer>>> nights = new ArrayList<>();
            for (int night = 0; night < 1 + seed % 3; night++) {
                List<List<Offer>> sites = new ArrayList<>();
                for (int site = 0; site < siteCount; site++) {
                    sites.add(evening(random, repeats.length, changeoverMin.length));
                }
                nights.add(sites);
            }
            return new Case(repeats, 1 + random.nextInt(5), 1 + random.nextInt(4), changeoverMin,
                    random.nextInt(3), nights);
        }

        private static List<Offer> evening(Random random, int wishes, int cameras) {
            List<Offer> evening = new ArrayList<>();
            for (int i = random.nextInt(7); i > 0; i--) {
                int openMin = STEP_MIN * random.nextInt(12);
                int closeMin = openMin + STEP_MIN * (1 + random.nextInt(6));
                double value = 1 + random.nextInt(4) * 0.5;
                evening.add(Offer.at(random.nextInt(wishes), random.nextInt(cameras), openMin, closeMin,
                        Gain.of(value, Chance.CERTAIN, 0)));
            }
            return evening;
        }

        Value bruteForce() {
            return bruteForce(0, repeats, sheets, -1, 0);
        }

        private Value bruteForce(int night, int[] left, int sheetsLeft, int before, int at) {
            if (night == offers.size()) {
                return Value.NOTHING;
            }
            Value best = bruteForce(night + 1, left, sheetsLeft, before, at);
            for (int site = 0; site < offers.get(night).size(); site++) {
                boolean reached = before < 0 || fit(before, at, night, site);
                boolean moved = before >= 0 && at != site;
                for (int subset = 1; reached && subset < 1 << offers.get(night).get(site).size(); subset++) {
                    best = best.max(value(site, subset, night, moved, left, sheetsLeft));
                }
            }
            return best;
        }

        /** A move takes so many nights. */
        boolean fit(int night, int site, int later, int laterSite) {
            return site == laterSite || later - night > wayNights;
        }

        private Value value(int place, int subset, int night, boolean moved, int[] left,
                int sheetsLeft) {
            int[] stillLeft = left.clone();
            List<Offer> chosen = new ArrayList<>();
            List<Offer> site = offers.get(night).get(place);
            for (int i = 0; i < site.size(); i++) {
                if ((subset >> i & 1) == 1) {
                    Offer offer = site.get(i);
                    boolean overlaps = chosen.stream().anyMatch(other ->
                            other.camera() == offer.camera()
                                    && other.firstOpenMin() < close(offer) + changeoverMin[offer.camera()]
                                    && offer.firstOpenMin() < close(other) + changeoverMin[offer.camera()]);
                    boolean again = chosen.stream().anyMatch(other -> other.wish() == offer.wish());
                    if (overlaps || again || --stillLeft[offer.wish()] < 0) {
                        return Value.NOTHING;
                    }
                    chosen.add(offer);
                }
            }
            if (chosen.size() > Math.min(sheetsLeft, perNight)) {
                return Value.NOTHING;
            }
            return Value.of(night, moved, chosen)
                    .plus(bruteForce(night + 1, stillLeft, sheetsLeft - chosen.size(), night, place));
        }

        private static int close(Offer offer) {
            return offer.firstOpenMin() + offer.durationMin();
        }

        Timetable.Choice choice() {
            return new Timetable(repeats, sheets, perNight, changeoverMin).moving(new Moves() {
                @Override
                public boolean stays(int night, int site, int later, int laterSite) {
                    return site == laterSite;
                }

                @Override
                public boolean fit(int night, int site, int later, int laterSite) {
                    return Case.this.fit(night, site, later, laterSite);
                }
            }).choose(offers);
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, CASES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isAsGoodAsTheBestOfAllSchedules(int seed) {
        Case trip = Case.of(seed);
        Timetable.Choice choice = trip.choice();
        Value best = trip.bruteForce();
        assertEquals(best.worth, choice.worth(), ROUNDING);
        assertEquals(choice.worth(), choice.bound(), ROUNDING);
        assertEquals(0, best.compareTo(value(choice)), () -> best + " and " + value(choice));
    }

    /** What a night is worth comes out without looking at what is preferred, as far as it is asked for. */
    @ParameterizedTest
    @MethodSource("seeds")
    void saysWhatANightIsWorth(int seed) {
        Case trip = Case.of(seed);
        Timetable limits = new Timetable(trip.repeats, trip.sheets, trip.perNight, trip.changeoverMin);
        for (List<Offer> offers : trip.offers.get(0)) {
            long gained = Gain.ofWorth(limits.choose(List.of(List.of(offers))).nights().get(0).gained());
            assertEquals(gained, limits.mostWorth(offers, 0));
            assertEquals(gained, limits.mostWorth(offers, gained));
            assertTrue(limits.mostWorth(offers, gained + 1) <= gained);
        }
    }

    private static Value value(Timetable.Choice choice) {
        Value all = Value.NOTHING;
        int before = -1;
        for (int number = 0; number < choice.nights().size(); number++) {
            Timetable.Night night = choice.nights().get(number);
            if (!night.exposed().isEmpty()) {
                all = all.plus(Value.of(number, before >= 0 && before != night.site(),
                        night.exposed().stream()
                        .map(one -> Offer.at(one.wish(), one.camera(), one.openMin(), one.closeMin(),
                        one.gain()))
                        .toList()));
                before = night.site();
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheLimits(int seed) {
        Case trip = Case.of(seed);
        Timetable.Choice choice = trip.choice();
        int[] served = new int[trip.repeats.length];
        int before = -1;
        for (int number = 0; number < choice.nights().size(); number++) {
            Timetable.Night night = choice.nights().get(number);
            List<Timetable.Exposed> exposed = night.exposed();
            assertTrue(trip.offers.get(number).get(night.site()).containsAll(exposed.stream().map(one ->
                    Offer.at(one.wish(), one.camera(), one.openMin(), one.closeMin(), one.gain())).toList()));
            assertTrue(exposed.size() <= trip.perNight);
            if (!exposed.isEmpty()) {
                assertTrue(before < 0 || trip.fit(before, choice.nights().get(before).site(), number,
                        night.site()));
                before = number;
            }
            int[] freeMin = new int[trip.changeoverMin.length];
            for (Timetable.Exposed one : exposed) {
                served[one.wish()]++;
                assertTrue(freeMin[one.camera()] <= one.openMin());
                freeMin[one.camera()] = one.closeMin() + trip.changeoverMin[one.camera()];
            }
            assertEquals(exposed.stream().map(Timetable.Exposed::wish).distinct().count(), exposed.size());
        }
        assertTrue(Arrays.stream(served).sum() <= trip.sheets);
        assertTrue(IntStream.range(0, served.length).allMatch(wish -> served[wish] <= trip.repeats[wish]));
    }

    @Test
    void someExposeWithTwoCamerasAtOnce() {
        assertTrue(seeds().mapToObj(Case::of).flatMap(trip -> trip.choice().nights().stream())
                .filter(night -> IntStream.range(1, night.exposed().size()).anyMatch(number ->
                night.exposed().get(number).openMin() < night.exposed().get(number - 1).closeMin()))
                .count() > CASES / 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void comesOutTheSameTwice(int seed) {
        assertEquals(Case.of(seed).choice(), Case.of(seed).choice());
    }
}
