package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The timetable against brute force over all schedules, and its limits on random cases. */
class TimetablePropertyTest {

    private static final int CASES = 300;
    /** Sums of at most six values, each rounded to a millionth. */
    private static final double ROUNDING = 6e-6;

    /** A small random trip: at most 3 nights, 2 sites, 4 wishes, 4 candidates a wish and night. */
    private record Case(int[] repeats, int sheets, int changeoverMin, List<List<List<Candidate<String>>>> candidates) {

        static Case of(long seed) {
            Random random = new Random(seed);
            int[] repeats = IntStream.generate(() -> 1 + random.nextInt(2)).limit(2 + random.nextInt(3)).toArray();
            int siteCount = 1 + random.nextInt(2);
            List<List<List<Candidate<String>>>> nights = new ArrayList<>();
            for (int night = 0; night < 1 + seed % 3; night++) {
                List<List<Candidate<String>>> sites = new ArrayList<>();
                for (int site = 0; site < siteCount; site++) {
                    sites.add(evening(random, repeats.length));
                }
                nights.add(sites);
            }
            return new Case(repeats, 1 + random.nextInt(5), random.nextInt(3), nights);
        }

        private static List<Candidate<String>> evening(Random random, int wishes) {
            List<Candidate<String>> evening = new ArrayList<>();
            for (int i = random.nextInt(7); i > 0; i--) {
                int openMin = random.nextInt(12);
                int closeMin = openMin + 1 + random.nextInt(6);
                double value = 1 + random.nextInt(4) * 0.5;
                evening.add(new Candidate<>("candidate " + i, random.nextInt(wishes), openMin, closeMin, value));
            }
            return evening;
        }

        double bruteForce() {
            return bruteForce(0, repeats, sheets);
        }

        private double bruteForce(int night, int[] left, int sheetsLeft) {
            if (night == candidates.size()) {
                return 0;
            }
            double best = bruteForce(night + 1, left, sheetsLeft);
            for (List<Candidate<String>> site : candidates.get(night)) {
                for (int subset = 1; subset < 1 << site.size(); subset++) {
                    best = Math.max(best, worth(site, subset, night, left, sheetsLeft));
                }
            }
            return best;
        }

        private double worth(List<Candidate<String>> site, int subset, int night, int[] left, int sheetsLeft) {
            int[] stillLeft = left.clone();
            List<Candidate<String>> chosen = new ArrayList<>();
            for (int i = 0; i < site.size(); i++) {
                if ((subset >> i & 1) == 1) {
                    Candidate<String> candidate = site.get(i);
                    boolean overlaps = chosen.stream().anyMatch(other ->
                            other.openMin() < candidate.closeMin() + changeoverMin
                                    && candidate.openMin() < other.closeMin() + changeoverMin);
                    if (overlaps || --stillLeft[candidate.wish()] < 0) {
                        return 0;
                    }
                    chosen.add(candidate);
                }
            }
            if (chosen.size() > sheetsLeft) {
                return 0;
            }
            return chosen.stream().mapToDouble(Candidate::value).sum()
                    + bruteForce(night + 1, stillLeft, sheetsLeft - chosen.size());
        }

        Timetable.Choice<String> choice() {
            return new Timetable(repeats, sheets, changeoverMin).choose(candidates);
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, CASES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isWorthAsMuchAsTheBestOfAllSchedules(int seed) {
        Case trip = Case.of(seed);
        Timetable.Choice<String> choice = trip.choice();
        assertEquals(trip.bruteForce(), choice.worth(), ROUNDING);
        assertEquals(choice.worth(), choice.bound(), ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheLimits(int seed) {
        Case trip = Case.of(seed);
        Timetable.Choice<String> choice = trip.choice();
        int[] served = new int[trip.repeats.length];
        for (int number = 0; number < choice.nights().size(); number++) {
            Timetable.Night<String> night = choice.nights().get(number);
            List<Candidate<String>> exposed = night.exposed();
            assertTrue(trip.candidates.get(number).get(night.site()).containsAll(exposed));
            for (int i = 0; i < exposed.size(); i++) {
                served[exposed.get(i).wish()]++;
                assertTrue(i == 0 || exposed.get(i - 1).closeMin() + trip.changeoverMin <= exposed.get(i).openMin());
            }
        }
        assertTrue(Arrays.stream(served).sum() <= trip.sheets);
        assertTrue(IntStream.range(0, served.length).allMatch(wish -> served[wish] <= trip.repeats[wish]));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void comesOutTheSameTwice(int seed) {
        assertEquals(Case.of(seed).choice(), Case.of(seed).choice());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void dropsOnlyWhatAnotherCandidateInsideMakesUpFor(int seed) {
        for (List<List<Candidate<String>>> night : Case.of(seed).candidates) {
            for (List<Candidate<String>> site : night) {
                Set<Candidate<String>> kept = new HashSet<>(Candidate.undominated(site));
                for (Candidate<String> candidate : site) {
                    assertTrue(kept.stream().anyMatch(other -> other.wish() == candidate.wish()
                            && other.openMin() >= candidate.openMin() && other.closeMin() <= candidate.closeMin()
                            && other.value() >= candidate.value()), candidate::toString);
                }
            }
        }
    }
}
