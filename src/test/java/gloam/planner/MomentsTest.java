package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class MomentsTest {

    private static final int CASES = 5000;
    private static final int NIGHT_MIN = 600;

    /** Every exposure that the conditions of a night let is one that may hold: by trying all of them. */
    @Test
    void missesNoExposure() {
        RandomGenerator random = new Random(1);
        int held = 0;
        int refused = 0;
        for (int number = 0; number < CASES; number++) {
            int shortestMin = 1 + (number % 2 == 0 ? random.nextInt(10) : random.nextInt(200));
            BitSet minutes = runs(random, NIGHT_MIN);
            List<Condition> conditions = conditions(random, shortestMin);
            boolean may = Moments.mayHold(conditions, minutes, shortestMin);
            if (Moments.of(conditions, minutes).stream().anyMatch(moments -> any(moments, shortestMin))) {
                assertTrue(may, "case " + number);
                held++;
            }
            refused += may ? 0 : 1;
        }
        assertTrue(held > CASES / 50 && refused > CASES / 4, held + " held, " + refused + " refused");
    }

    /** Exposures of one length open at the minutes at which each of them holds: by trying all of them. */
    @Test
    void opensWhereAnExposureHolds() {
        RandomGenerator random = new Random(2);
        int open = 0;
        for (int number = 0; number < CASES; number++) {
            int durationMin = 1 + random.nextInt(150);
            Optional<Moments> drawn = Moments.of(conditions(random, durationMin), runs(random, NIGHT_MIN));
            if (drawn.isPresent()) {
                BitSet openings = new BitSet();
                for (int openMin = 0; openMin + durationMin <= NIGHT_MIN; openMin++) {
                    openings.set(openMin, drawn.get().hold(openMin, openMin + durationMin / 2,
                            openMin + durationMin));
                }
                assertEquals(openings, drawn.get().openings(durationMin), "case " + number);
                open += openings.cardinality();
            }
        }
        assertTrue(open > CASES / 10, open + " open");
    }

    private static List<Condition> conditions(RandomGenerator random, int shortestMin) {
        List<Condition> conditions = new ArrayList<>();
        for (Condition.When when : Condition.When.values()) {
            BitSet holding = runs(random, when == Condition.When.THROUGHOUT ? shortestMin + 10 : 150);
            conditions.add(new Condition(Requirement.Plain.SUN_DOWN, when, among -> {
                BitSet both = (BitSet) among.clone();
                both.and(holding);
                return both;
            }, Optional.empty()));
        }
        return conditions;
    }

    private static boolean any(Moments moments, int shortestMin) {
        for (int openMin = 0; openMin + shortestMin <= NIGHT_MIN; openMin++) {
            for (int closeMin = openMin + shortestMin; closeMin <= NIGHT_MIN; closeMin++) {
                if (moments.hold(openMin, (openMin + closeMin) / 2, closeMin)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static BitSet runs(RandomGenerator random, int mostMin) {
        BitSet minutes = new BitSet();
        for (int run = 0; run < 3; run++) {
            int first = random.nextInt(NIGHT_MIN);
            minutes.set(first, Math.min(NIGHT_MIN, first + 1 + random.nextInt(mostMin)));
        }
        return minutes;
    }
}
