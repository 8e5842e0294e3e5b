package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Trips of more wishes than can be tried in every order, made so that all of them are known to fit into a few
 * nights out.
 */
@Tag("laws")
class CrowdedTripsTest {

    private static final int TRIPS = Math.max(1, PlannedSamples.TRIPS / 40);
    private static final int NIGHTS = 20;
    private static final int NIGHTS_OUT = 6;
    /** The fewest are hard to find: half as many more are still few. */
    private static final int MOST_NIGHTS_OUT = NIGHTS_OUT * 3 / 2;
    private static final int A_NIGHT = 6;
    private static final int WISHES = NIGHTS_OUT * A_NIGHT;
    private static final int SLOT_MIN = 60;
    private static final int ELSEWHERE = 4;
    private static final double ROUNDING = 1e-9;

    /** Some nights hold a group of wishes one after the other; each can be served on others as well. */
    private static List<List<List<Offer>>> offers(Random random, double othersWorth, int others) {
        List<List<List<Offer>>> nights = new ArrayList<>();
        for (int night = 0; night < NIGHTS; night++) {
            nights.add(List.of(new ArrayList<>()));
        }
        List<Integer> out = new ArrayList<>(IntStream.range(0, NIGHTS).boxed().toList());
        Collections.shuffle(out, random);
        for (int wish = 0; wish < WISHES + others; wish++) {
            double worth = wish < WISHES ? 1 : othersWorth;
            if (wish < WISHES) {
                add(nights, out.get(wish / A_NIGHT), wish, wish % A_NIGHT, worth);
            }
            for (int time = 0; time < ELSEWHERE; time++) {
                add(nights, random.nextInt(NIGHTS), wish, random.nextInt(A_NIGHT), worth);
            }
        }
        return nights;
    }

    private static void add(List<List<List<Offer>>> nights, int night, int wish, int slot, double worth) {
        List<Offer> there = nights.get(night).get(0);
        if (there.stream().noneMatch(offer -> offer.wish() == wish)) {
            there.add(Offer.at(wish, 0, slot * SLOT_MIN, (slot + 1) * SLOT_MIN,
                    Gain.of(worth, Chance.CERTAIN, 0)));
        }
    }

    private static Timetable.Choice choice(List<List<List<Offer>>> offers, int wishes) {
        int[] once = new int[wishes];
        Arrays.fill(once, 1);
        return new Timetable(once, WISHES, A_NIGHT, new int[] {0}).choose(offers);
    }

    private static long nightsOut(Timetable.Choice choice) {
        return choice.nights().stream().filter(night -> !night.exposed().isEmpty()).count();
    }

    static Stream<Random> trips() {
        return IntStream.range(0, TRIPS).mapToObj(Random::new);
    }

    @ParameterizedTest
    @MethodSource("trips")
    void allWishesAreServedOnFewNights(Random random) {
        Timetable.Choice choice = choice(offers(random, 0, 0), WISHES);
        assertEquals(WISHES, choice.worth(), ROUNDING);
        assertTrue(nightsOut(choice) <= MOST_NIGHTS_OUT, () -> "nights out: " + nightsOut(choice));
    }

    @ParameterizedTest
    @MethodSource("trips")
    void theWorthiestAreWhereThereAreFewerSheets(Random random) {
        Timetable.Choice choice = choice(offers(random, 0.5, WISHES / 2), WISHES + WISHES / 2);
        assertEquals(WISHES, choice.worth(), ROUNDING);
        assertTrue(nightsOut(choice) <= MOST_NIGHTS_OUT, () -> "nights out: " + nightsOut(choice));
    }
}
