package gloam.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.ReciprocityTable.Point;
import gloam.support.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReciprocityPropertyTest {

    record Case(Reciprocity law, double meteredS) {
    }

    static Stream<Named<Case>> cases() {
        return Samples.of(300, random -> new Case(law(random), logUniform(random, 1e-4, 1e6)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void neverShortens(Case drawn) {
        assertTrue(drawn.law.correctedS(drawn.meteredS) >= drawn.meteredS);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void growsWithTheMeteredTime(Case drawn) {
        assertTrue(drawn.law.correctedS(drawn.meteredS * 1.001) > drawn.law.correctedS(drawn.meteredS));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void hasNoSteps(Case drawn) {
        double step = drawn.law.correctedS(drawn.meteredS * (1 + 1e-9))
                / drawn.law.correctedS(drawn.meteredS) - 1;
        assertEquals(0, step, 2e-8); // slopes inside a table may exceed 2, but not 20
    }

    @ParameterizedTest
    @MethodSource("cases")
    void canBeReadBackwards(Case drawn) {
        double correctedS = drawn.law.correctedS(drawn.meteredS);
        // bisection to rounding
        assertEquals(drawn.meteredS, drawn.law.meteredS(correctedS), 1e-9 * drawn.meteredS);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void exponentIsTheSlopeOfTheCurve(Case drawn) {
        double h = 1e-6;
        double left = slope(drawn.law, drawn.meteredS * (1 - 2 * h), drawn.meteredS * (1 - h));
        double right = slope(drawn.law, drawn.meteredS * (1 + h), drawn.meteredS * (1 + 2 * h));
        double exponent = drawn.law.exponentAt(drawn.meteredS);
        // 1e-5 because the difference quotient loses ten of sixteen digits; either side, because laws have
        // corners
        assertTrue(Math.abs(exponent - left) < 1e-5 || Math.abs(exponent - right) < 1e-5,
                exponent + " is neither " + left + " nor " + right);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void beyondItsSourceTheExponentStaysFromOneToTwo(Case drawn) {
        double beyondS = Math.min(1e9, 10 * drawn.law.coveredToS());
        assertTrue(Reciprocity.EXPONENT.check(drawn.law.exponentAt(beyondS)) >= 1);
        assertEquals(!(drawn.law instanceof Reciprocity.None), drawn.law.extrapolated(beyondS));
        assertFalse(drawn.law.extrapolated(1));
    }

    private static double slope(Reciprocity law, double fromS, double toS) {
        return Math.log(law.correctedS(toS) / law.correctedS(fromS)) / Math.log(toS / fromS);
    }

    static Reciprocity law(RandomGenerator random) {
        return switch (random.nextInt(5)) {
            case 0 -> Reciprocity.none();
            case 1 -> Reciprocity.power(random.nextDouble(1, 2), logUniform(random, 0.01, 100));
            case 2 -> new Reciprocity.AddedPower(random.nextDouble(0.01, 1), random.nextDouble(1, 2));
            case 3 -> new Reciprocity.Catenary(random.nextDouble(0.01, 1), logUniform(random, 0.01, 10),
                    logUniform(random, 0.01, 10));
            default -> Reciprocity.table(points(random));
        };
    }

    private static List<Point> points(RandomGenerator random) {
        List<Point> points = new ArrayList<>();
        double meteredS = logUniform(random, 1, 10);
        double correctedS = meteredS * random.nextDouble(1, 3);
        for (int i = random.nextInt(2, 6); i > 0; i--) {
            points.add(new Point(meteredS, correctedS));
            double longer = random.nextDouble(1.5, 10);
            meteredS *= longer;
            correctedS = Math.max(meteredS, correctedS * random.nextDouble(1.01, 3) * longer);
        }
        return points;
    }

    private static double logUniform(RandomGenerator random, double least, double most) {
        return Math.exp(random.nextDouble(Math.log(least), Math.log(most)));
    }
}
