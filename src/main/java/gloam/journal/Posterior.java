package gloam.journal;

import gloam.film.FittedReciprocity.Doubt;
import java.util.Comparator;
import java.util.stream.IntStream;

/** How likely each film of a grid is, given the sheets judged so far. */
public final class Posterior {

    private final FilmGrid grid;
    private final double[] weights;

    private Posterior(FilmGrid grid, double[] weights) {
        this.grid = grid;
        this.weights = weights;
        double sum = IntStream.range(0, weights.length).mapToDouble(i -> weights[i]).sum();
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    /** What is known before any sheet is judged. */
    public static Posterior prior(FilmGrid grid) {
        return new Posterior(grid, grid.priorWeights());
    }

    /** What is known with one observation more. */
    Posterior with(Evidence evidence) {
        return new Posterior(grid, IntStream.range(0, weights.length)
                .mapToDouble(film -> weights[film] * evidence.of(film)).toArray());
    }

    /** The films. */
    FilmGrid grid() {
        return grid;
    }

    /** Weight of a film; all together are 1. */
    double weight(int film) {
        return weights[film];
    }

    /** By how many stops the film is slower than rated; minus is faster. */
    public Estimate speedOffsetStops() {
        return estimate(grid.speedOffsetsStops());
    }

    /** Exponent of the film's reciprocity law; the local one at 100 s metered if it is no power law. */
    public Estimate exponent() {
        return estimate(grid.exponents());
    }

    /** Correlation of speed offset and exponent, -1 to 1; 0 if the film has no reciprocity failure. */
    public double correlation() {
        double[] offsets = grid.speedOffsetsStops();
        double[] exponents = grid.exponents();
        double sds = estimate(offsets).sd() * estimate(exponents).sd();
        double product = mean(IntStream.range(0, weights.length)
                .mapToDouble(film -> offsets[film] * exponents[film]).toArray());
        return sds < 1e-12 ? 0 : (product - mean(offsets) * mean(exponents)) / sds;
    }

    /** How well speed and failure are known together. */
    Doubt doubt() {
        return new Doubt(speedOffsetStops().sd(), estimate(grid.failureScales()).sd(), correlation());
    }

    /** Chance that an observation is a wrong note. */
    double strayChance(Evidence evidence) {
        return mean(IntStream.range(0, weights.length).mapToDouble(evidence::strayOn).toArray());
    }

    /** Mean of a quantity that each film has. */
    double mean(double[] ofFilms) {
        double sum = 0;
        for (int film = 0; film < weights.length; film++) {
            sum += weights[film] * ofFilms[film];
        }
        return sum;
    }

    /** Mean and standard deviation of a quantity that each film has. */
    Estimate estimate(double[] ofFilms) {
        double mean = mean(ofFilms);
        double variance = 0;
        for (int film = 0; film < weights.length; film++) {
            variance += weights[film] * (ofFilms[film] - mean) * (ofFilms[film] - mean);
        }
        return new Estimate(mean, Math.sqrt(variance));
    }

    /** The value below which a quantity lies with a chance, 0 to 1: linear between the grid's values. */
    double quantile(double[] ofFilms, double chance) {
        int[] order = IntStream.range(0, weights.length).boxed()
                .sorted(Comparator.comparingDouble(film -> ofFilms[film])).mapToInt(Integer::intValue)
                .toArray();
        double below = 0;
        double lastValue = ofFilms[order[0]];
        double lastChance = 0;
        for (int i = 0; i < order.length;) {
            double value = ofFilms[order[i]];
            double here = 0;
            for (; i < order.length && ofFilms[order[i]] == value; i++) {
                here += weights[order[i]];
            }
            double middle = below + here / 2;
            if (middle >= chance) {
                return middle == lastChance ? value
                        : lastValue + (value - lastValue) * (chance - lastChance) / (middle - lastChance);
            }
            below += here;
            lastValue = value;
            lastChance = middle;
        }
        return lastValue;
    }
}
