package gloam.journal;

import gloam.film.FittedReciprocity.Doubt;
import gloam.journal.FilmGrid.Axis;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** How likely each film of a grid is, given the sheets judged so far. */
public final class Posterior {

    /** Films less likely than the likeliest by that factor are out of the question. */
    private static final double LEAST_LIKELY = 1e-6;
    private static final int STEPS = 41;

    private final FilmGrid grid;
    private final double[] weights;

    private Posterior(FilmGrid grid, double[] weights) {
        this.grid = grid;
        this.weights = weights;
    }

    /** Films with the logarithms of their probabilities, up to a constant. */
    static Posterior of(FilmGrid grid, double[] logs) {
        double most = Arrays.stream(logs).max().orElseThrow();
        double[] weights = Arrays.stream(logs).map(log -> Math.exp(log - most)).toArray();
        double sum = Arrays.stream(weights).sum();
        return new Posterior(grid, Arrays.stream(weights).map(weight -> weight / sum).toArray());
    }

    /**
     * What the sheets alone say of the speed offset, whatever was known of speeds before; wider than the grid
     * where they say little.
     *
     * @param before what was known before, on the same grid
     */
    Estimate speedOffsetWithout(Posterior before) {
        double[] known = before.shares(true);
        double[] sheetsAlone = IntStream.range(0, weights.length)
                .mapToDouble(film -> Math.log(weights[film] / known[film / grid.lnScales().steps()]))
                .toArray();
        return of(grid, sheetsAlone).speedOffsetStops();
    }

    /** What is known with an observation more that is that likely on each film. */
    Posterior with(double[] likelihoods) {
        return of(grid, IntStream.range(0, weights.length)
                .mapToDouble(film -> Math.log(weights[film] * likelihoods[film])).toArray());
    }

    /** A finer grid of the films that are in question. */
    FilmGrid closer() {
        return new FilmGrid(grid.published(), inQuestion(grid.speeds(), true),
                inQuestion(grid.lnScales(), false));
    }

    private Axis inQuestion(Axis axis, boolean speeds) {
        double[] shares = shares(speeds);
        double least = LEAST_LIKELY * Arrays.stream(shares).max().orElseThrow();
        int first = 0;
        while (shares[first] < least) {
            first++;
        }
        int last = axis.steps() - 1;
        while (shares[last] < least) {
            last--;
        }
        return new Axis(axis.at(Math.max(0, first - 1)), axis.at(Math.min(axis.steps() - 1, last + 1)),
                STEPS);
    }

    /** Probability of each speed, or of each failure. */
    private double[] shares(boolean speeds) {
        int failures = grid.lnScales().steps();
        double[] shares = new double[speeds ? grid.speeds().steps() : failures];
        for (int film = 0; film < weights.length; film++) {
            shares[speeds ? film / failures : film % failures] += weights[film];
        }
        return shares;
    }

    /** The films. */
    FilmGrid grid() {
        return grid;
    }

    /** Weight of a film; all together are 1. */
    double weight(int film) {
        return weights[film];
    }

    /** The number of the likeliest film. */
    int likeliest() {
        return IntStream.range(0, weights.length).boxed()
                .max(Comparator.comparingDouble(film -> weights[film])).orElseThrow();
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
