package gloam.journal;

import gloam.journal.Evidence.Slope;
import gloam.journal.FilmGrid.Axis;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;

/**
 * The probability of a film, whatever the unknowns that sheets share: their density integrated by Laplace's
 * approximation, a normal distribution about its mode.
 *
 * <p>Unknowns from {@link #shared} on never meet in one term, so that they are eliminated one by one.
 *
 * @param terms  the factors of the density
 * @param shared how many unknowns any two terms may share
 * @param all    how many unknowns there are
 */
record Laplace(List<Term> terms, int shared, int all) {

    private static final int MOST_ROUNDS = 60;
    private static final double NEAR_ENOUGH = 1e-4;
    private static final double LONGEST_STEP = 1;

    /**
     * A linear sum of the film's speed and of unknowns.
     *
     * @param onSpeed  factor of the speed
     * @param unknowns numbers of the unknowns
     * @param factors  theirs
     */
    record Row(double onSpeed, int[] unknowns, double[] factors) {

        /** Nothing. */
        static final Row NONE = of(0, Map.of());

        static Row of(double onSpeed, Map<Integer, Double> factors) {
            return new Row(onSpeed, factors.keySet().stream().mapToInt(Integer::intValue).toArray(),
                    factors.values().stream().mapToDouble(Double::doubleValue).toArray());
        }

        double at(double speed, double[] values) {
            double sum = onSpeed * speed;
            for (int i = 0; i < unknowns.length; i++) {
                sum += factors[i] * values[unknowns[i]];
            }
            return sum;
        }
    }

    /** What is computed for a sheet on films of a grid's failures: linear between the speeds of an axis. */
    record Response(Axis speeds, int failures, float[] ofFilms) {

        private int panel(double speed) {
            return (int) Math.max(0, Math.min(speeds.steps() - 2.0,
                    Math.floor((speed - speeds.from()) / speeds.width())));
        }

        double at(double speed, int failure) {
            int panel = panel(speed);
            return ofFilms[panel * failures + failure]
                    + (speed - speeds.at(panel)) * steepness(panel, failure);
        }

        double steepness(double speed, int failure) {
            return steepness(panel(speed), failure);
        }

        private double steepness(int panel, int failure) {
            return (ofFilms[(panel + 1) * failures + failure] - ofFilms[panel * failures + failure])
                    / speeds.width();
        }
    }

    /**
     * A factor of the density.
     *
     * @param row      what it is a function of
     * @param response what is computed of that; empty for the row itself
     * @param plus     what comes on top of that, free of the film's speed
     * @param density  its logarithm
     */
    record Term(Row row, Optional<Response> response, Row plus, DoubleFunction<Slope> density) {

        static Term prior(Row row, DoubleFunction<Slope> density) {
            return new Term(row, Optional.empty(), Row.NONE, density);
        }

        double value(double speed, int failure, double[] values) {
            double sum = row.at(speed, values);
            return (response.isEmpty() ? sum : response.get().at(sum, failure))
                    + plus.at(0, values);
        }

        double steepness(double speed, int failure, double[] values) {
            return response.isEmpty() ? 1 : response.get().steepness(row.at(speed, values), failure);
        }
    }

    /**
     * The unknowns likeliest on a film.
     *
     * @param values the unknowns
     * @param log    logarithm of the film's probability, up to a constant
     */
    record Mode(double[] values, double log) {
    }

    /** The mode on the film of a speed, in stops slower than published, and a failure. */
    Mode at(double speed, int failure, double[] start) {
        double[] values = start.clone();
        for (int round = 0;; round++) {
            Curvature about = about(speed, failure, values);
            double[] step = about.solve(about.gradient);
            double longest = Arrays.stream(step).map(Math::abs).max().orElse(0);
            if (longest < NEAR_ENOUGH || round == MOST_ROUNDS) {
                return new Mode(values, about.log - about.lnDeterminant / 2);
            }
            for (int i = 0; i < all; i++) {
                values[i] += step[i] * Math.min(1, LONGEST_STEP / longest);
            }
        }
    }

    /** How the density runs about values of the unknowns. */
    Curvature about(double speed, int failure, double[] values) {
        Curvature about = new Curvature(shared, all);
        terms.forEach(term -> about.add(term, speed, failure, values));
        about.eliminate();
        return about;
    }

    /** A log density, its slope, and its second derivatives with their sign turned. */
    static final class Curvature {

        private final double[][] sharedPart;
        private final double[][] acrossPart;
        private final double[] ownPart;
        private final double[] gradient;
        private double log;
        private double lnDeterminant;
        private CholeskyDecomposition reduced;

        private Curvature(int shared, int all) {
            sharedPart = new double[shared][shared];
            acrossPart = new double[all - shared][shared];
            ownPart = new double[all - shared];
            gradient = new double[all];
        }

        private void add(Term term, double speed, int failure, double[] values) {
            Slope slope = term.density.apply(term.value(speed, failure, values));
            double steepness = term.steepness(speed, failure, values);
            int count = term.row.unknowns.length + term.plus.unknowns.length;
            for (int i = 0; i < count; i++) {
                gradient[number(term, i)] += slope.gradient() * factor(term, i, steepness);
                for (int j = 0; j < count; j++) {
                    add(number(term, i), number(term, j), slope.curvature() * factor(term, i, steepness)
                            * factor(term, j, steepness));
                }
            }
            log += slope.log();
        }

        private static int number(Term term, int i) {
            int own = term.row.unknowns.length;
            return i < own ? term.row.unknowns[i] : term.plus.unknowns[i - own];
        }

        private static double factor(Term term, int i, double steepness) {
            int own = term.row.unknowns.length;
            return i < own ? steepness * term.row.factors[i] : term.plus.factors[i - own];
        }

        private void add(int i, int j, double curvature) {
            int shared = sharedPart.length;
            if (i < shared && j < shared) {
                sharedPart[i][j] += curvature;
            } else if (i == j) {
                ownPart[i - shared] += curvature;
            } else if (i >= shared) {
                acrossPart[i - shared][j] += curvature;
            }
        }

        /** Eliminates what is not shared. */
        private void eliminate() {
            double[][] rest = Arrays.stream(sharedPart).map(double[]::clone).toArray(double[][]::new);
            for (int own = 0; own < ownPart.length; own++) {
                lnDeterminant += Math.log(ownPart[own]);
                for (int i = 0; i < rest.length; i++) {
                    for (int j = 0; acrossPart[own][i] != 0 && j < rest.length; j++) {
                        rest[i][j] -= acrossPart[own][i] * acrossPart[own][j] / ownPart[own];
                    }
                }
            }
            reduced = new CholeskyDecomposition(MatrixUtils.createRealMatrix(rest), 1e-9, 0);
            for (int i = 0; i < rest.length; i++) {
                lnDeterminant += 2 * Math.log(reduced.getL().getEntry(i, i));
            }
        }

        private double[] solve(double[] right) {
            int shared = sharedPart.length;
            double[] rest = Arrays.copyOf(right, shared);
            for (int own = 0; own < ownPart.length; own++) {
                for (int i = 0; i < shared; i++) {
                    rest[i] -= acrossPart[own][i] * right[shared + own] / ownPart[own];
                }
            }
            RealVector solved = reduced.getSolver().solve(MatrixUtils.createRealVector(rest));
            double[] all = Arrays.copyOf(solved.toArray(), right.length);
            for (int own = 0; own < ownPart.length; own++) {
                double sum = right[shared + own];
                for (int i = 0; i < shared; i++) {
                    sum -= acrossPart[own][i] * all[i];
                }
                all[shared + own] = sum / ownPart[own];
            }
            return all;
        }

        /** Variance of a sum of unknowns about the mode. */
        double variance(Row row) {
            double[] right = new double[sharedPart.length + ownPart.length];
            for (int i = 0; i < row.unknowns.length; i++) {
                right[row.unknowns[i]] += row.factors[i];
            }
            double[] solved = solve(right);
            double variance = 0;
            for (int i = 0; i < right.length; i++) {
                variance += right[i] * solved[i];
            }
            return variance;
        }
    }
}
