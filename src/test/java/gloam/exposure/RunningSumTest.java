package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Closed forms: of an exponential from a to b over T the integral is T (b − a) / ln(b / a). */
class RunningSumTest {

    private static final Instant START = Instant.parse("2027-02-06T20:00:00Z");
    private static final double STEP_S = 10;

    @Test
    void growthIsExponentialBetweenSteps() {
        RunningSum sum = sum(1, Math.E, Math.E * Math.E);
        assertEquals(10 * (Math.E - 1), sum.between(at(0), at(10)), 1e-9);
        assertEquals(10 * (Math.exp(0.5) - 1), sum.between(at(0), at(5)), 1e-9);
        assertEquals(10 * (Math.exp(1.5) - Math.exp(0.5)), sum.between(at(5), at(15)), 1e-9);
    }

    @Test
    void nearlyEvenLightIsSummedLikeEven() {
        double last = 2 * (1 + 8e-7);
        assertEquals(5 * (2 + (2 + (last - 2) / 2)) / 2, sum(2, last).between(at(0), at(5)), 1e-9);
    }

    @Test
    void fromAndToDarknessItIsStraight() {
        RunningSum sum = sum(0, 2, 0, 0);
        assertEquals(10, sum.between(at(0), at(10)), 1e-9);
        assertEquals(2.5, sum.between(at(0), at(5)), 1e-9);
        assertEquals(7.5, sum.between(at(10), at(15)), 1e-9);
        assertEquals(0, sum.between(at(20), at(30)), 1e-9);
    }

    @Test
    void reachedTurnsTheSumRound() {
        RunningSum sum = sum(1, Math.E, Math.E, 0);
        double amount = sum.between(at(3), at(17));
        assertEquals(17, seconds(sum.reached(at(3), amount).orElseThrow()), 1e-6);
        assertEquals(Optional.of(at(3)), sum.reached(at(3), 0));
        double all = sum.between(at(0), at(30));
        assertEquals(30, seconds(sum.reached(at(0), all).orElseThrow()), 1e-3,
                "the last of a fading light comes slowly");
        assertEquals(Optional.empty(), sum.reached(at(0), all * (1 + 1e-9)));
    }

    @Test
    void lightNextToDarknessIsStraightBetweenSamples() {
        LightCurve lamp = at -> seconds(at) < 15 ? 0 : 4;
        LightCurve sampled = new SampledLight(lamp, new Interval(at(0), at(30)), Duration.ofSeconds(10));
        assertEquals(0, sampled.illuminanceLx(at(5)), 1e-12);
        assertEquals(1, sampled.illuminanceLx(at(12.5)), 1e-9);
        assertEquals(4, sampled.illuminanceLx(at(25)), 1e-9);
    }

    private static RunningSum sum(double... ratesPerS) {
        return new RunningSum(new Grid(START, STEP_S, ratesPerS.length - 1), ratesPerS);
    }

    private static Instant at(double seconds) {
        return START.plusNanos(Math.round(seconds * 1e9));
    }

    private static double seconds(Instant at) {
        return Duration.between(START, at).toNanos() * 1e-9;
    }
}
