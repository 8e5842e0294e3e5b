package gloam.journal;

import gloam.units.StandardNormal;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.stream.IntStream;

/** How likely each time is to be the one that makes a wanted tone in a steady light, in narrow steps. */
final class TimeSpread {

    /** Standard deviation of a tone by what is not known of the light. */
    static final double LIGHT_STOPS = 0.4;
    private static final int STEPS_A_STOP = 24;

    private final double firstLog2S;
    private final double[] weights;

    private TimeSpread(double firstLog2S, double[] weights) {
        this.firstLog2S = firstLog2S;
        this.weights = weights;
    }

    /** The spread of a light's times over the films. */
    static TimeSpread of(SteadyLight light) {
        double[] log2Times = light.log2Times();
        double least = Arrays.stream(log2Times).min().orElseThrow();
        double most = Arrays.stream(log2Times).max().orElseThrow();
        double[] weights = new double[(int) Math.round((most - least) * STEPS_A_STOP) + 1];
        for (int film = 0; film < log2Times.length; film++) {
            weights[(int) Math.round((log2Times[film] - least) * STEPS_A_STOP)] += light.posterior()
                    .weight(film);
        }
        return new TimeSpread(least, weights);
    }

    /** Chance that a sheet open for that time comes out right. */
    double rightChance(double timeS) {
        return IntStream.range(0, weights.length)
                .mapToDouble(step -> weights[step] * right(offStops(timeS, step))).sum();
    }

    /** Chance that one of several sheets, all exposed before the first is looked at, comes out right. */
    double oneRightChance(double... timesS) {
        return IntStream.range(0, weights.length).mapToDouble(step -> weights[step]
                * (1 - Arrays.stream(timesS).map(timeS -> 1 - right(offStops(timeS, step)))
                .reduce(1, (a, b) -> a * b)))
                .sum();
    }

    /**
     * Chance that a first sheet is right, or else the best second one chosen after the first was judged in
     * words.
     */
    double rightByTheSecondChance(double firstS, double[] secondsS, double wantedStops) {
        double chance = rightChance(firstS);
        double[][] rights = Arrays.stream(secondsS).mapToObj(secondS -> IntStream.range(0, weights.length)
                .mapToDouble(step -> right(offStops(secondS, step))).toArray()).toArray(double[][]::new);
        for (ToneWord word : ToneWord.values()) {
            double[] wrong = IntStream.range(0, weights.length).mapToDouble(step ->
                    weights[step] * wrongAndJudged(word, offStops(firstS, step), wantedStops)).toArray();
            chance += Arrays.stream(rights).mapToDouble(right -> IntStream.range(0, wrong.length)
                    .mapToDouble(step -> wrong[step] * right[step]).sum()).max().orElseThrow();
        }
        return chance;
    }

    /** How far the computed tone of a time is off the wanted one. */
    private double offStops(double timeS, int step) {
        return Stops.between(1, timeS) - firstLog2S - (double) step / STEPS_A_STOP;
    }

    private static double chanceBetween(double above, double upTo, double tone) {
        return upTo <= above ? 0 : StandardNormal.below((upTo - tone) / Verdict.USUAL_SPREAD_STOPS)
                - StandardNormal.below((above - tone) / Verdict.USUAL_SPREAD_STOPS);
    }

    private static double right(double offStops) {
        return chanceBetween(-NextSheet.RIGHT_STOPS, NextSheet.RIGHT_STOPS, offStops);
    }

    private static double wrongAndJudged(ToneWord word, double offStops, double wantedStops) {
        double above = word.aboveStops() - wantedStops;
        double upTo = word.upToStops() - wantedStops;
        return chanceBetween(above, upTo, offStops) - chanceBetween(
                Math.max(above, -NextSheet.RIGHT_STOPS), Math.min(upTo, NextSheet.RIGHT_STOPS), offStops);
    }
}
