package gloam.journal;

import gloam.film.FilmStock;
import gloam.film.FilmStock.Layer;
import gloam.film.FittedReciprocity;
import gloam.film.FittedReciprocity.Doubt;
import gloam.film.Reciprocity;
import gloam.units.StandardNormal;
import gloam.units.Stops;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * The possible films: the published one, slower or faster and with more or less reciprocity failure, on a
 * grid of both.
 *
 * <p>The failure is scaled in log time, which for a power law is its exponent less one. A quantity of each
 * film is an array in the grid's order: all failures of the first speed, then of the next.
 *
 * @param published the published film
 * @param speeds    stops by which the films are slower than it
 * @param lnScales  logarithms of the scale of the failure
 */
public record FilmGrid(FilmStock published, Axis speeds, Axis lnScales) {

    /**
     * Standard deviation of the logarithm of the failure's scale before a sheet is judged; spread of makers'
     * tables.
     */
    private static final double FAILURE_PRIOR = 0.35;
    /** Steepest local exponent that silver halides show, P = k/(k-1) for k = 2 (Gerth 1974). */
    private static final double STEEPEST = 2;
    /** Where the local exponent of a law that is no power law is quoted. */
    private static final double EXPONENT_AT_S = 100;

    /** Slower or faster than published by at most so many stops: what is older still is no such film. */
    private static final double REACH_STOPS = 4;
    private static final double REACH = 4;
    private static final int SPEEDS = 49;
    private static final int FAILURES = 33;

    /** Evenly spaced values, both ends included. */
    record Axis(double from, double upTo, int steps) {

        double at(int step) {
            return from + step * width();
        }

        double width() {
            return (upTo - from) / (steps - 1);
        }
    }

    /** All that a published film may turn out to be. */
    public FilmGrid(FilmStock published) {
        this(published, new Axis(-REACH_STOPS, REACH_STOPS, SPEEDS),
                new Axis(-REACH * FAILURE_PRIOR, REACH * FAILURE_PRIOR, FAILURES));
    }

    /** The same failures with other speeds. */
    FilmGrid withSpeeds(Axis others) {
        return new FilmGrid(published, others, lnScales);
    }

    /** How many films it holds. */
    int size() {
        return speeds.steps * lnScales.steps;
    }

    /** Number of a film by those of its speed and failure. */
    int number(int speed, int failure) {
        return speed * lnScales.steps + failure;
    }

    /** Speed offset of each film from its rated speed, in stops. */
    double[] speedOffsetsStops() {
        return each(film -> offsetStops(film / lnScales.steps));
    }

    /** Scale of the failure of each film. */
    double[] failureScales() {
        return each(film -> scale(film % lnScales.steps));
    }

    /** Local exponent of each film. */
    double[] exponents() {
        double failure = failure();
        return each(film -> 1 + scale(film % lnScales.steps) * failure);
    }

    /** Logarithm of the prior density of a failure, up to a constant. */
    double lnPrior(int failure) {
        double sds = (lnScales.at(failure) - lnMiddle(failure())) / FAILURE_PRIOR;
        return scale(failure) * failure() > STEEPEST - 1 ? Double.NEGATIVE_INFINITY : -sds * sds / 2;
    }

    /**
     * Middle of the normal distribution of the scale's logarithm for which the mean of the scales that are
     * not too steep is 1: the published law is what is to be expected.
     */
    private static double lnMiddle(double failure) {
        double steepest = failure <= 0 ? Double.POSITIVE_INFINITY : Math.log((STEEPEST - 1) / failure);
        double middle = -FAILURE_PRIOR * FAILURE_PRIOR / 2;
        for (int round = 0; round < 20; round++) {
            double cut = (steepest - middle) / FAILURE_PRIOR;
            middle = -FAILURE_PRIOR * FAILURE_PRIOR / 2 - Math.log(StandardNormal.below(cut - FAILURE_PRIOR)
                    / StandardNormal.below(cut));
        }
        return middle;
    }

    /** Tone, in stops from the mid-tone, that an exposure gives on each film. */
    double[] toneStops(List<Opening> openings) {
        double[] progress = new double[size()];
        for (int speed = 0; speed < speeds.steps; speed++) {
            for (Opening opening : openings) {
                addProgress(opening, speed, progress);
            }
        }
        return each(film -> Stops.between(1, progress[film]));
    }

    /** Tone, in stops from the mid-tone, that an exposure gives on the published film. */
    static double publishedToneStops(FilmStock published, List<Opening> openings) {
        Axis about = new Axis(-1, 1, 3);
        FilmGrid films = new FilmGrid(published, about, about);
        return films.toneStops(openings)[films.number(1, 1)];
    }

    /**
     * Progress of an opening with the rate taken as exponential between the moments for which light is known.
     */
    private void addProgress(Opening opening, int speed, double[] progress) {
        int moments = opening.illuminancesLx().size();
        double panelS = opening.open().seconds() / Math.max(1, moments - 1);
        double[] lnMetered = new double[moments];
        double[] lnFailure = new double[moments];
        for (int i = 0; i < moments; i++) {
            double meteredS = midToneLxS(speed) / opening.illuminancesLx().get(i);
            lnMetered[i] = Math.log(meteredS);
            lnFailure[i] = Math.log(published.reciprocity().correctedS(meteredS)) - lnMetered[i];
        }
        for (int failure = 0; failure < lnScales.steps; failure++) {
            double sum = 0;
            double before = Math.exp(-lnMetered[0] - scale(failure) * lnFailure[0]);
            for (int i = 1; i < moments; i++) {
                double after = Math.exp(-lnMetered[i] - scale(failure) * lnFailure[i]);
                sum += logarithmicMean(before, after);
                before = after;
            }
            progress[number(speed, failure)] += panelS * (moments == 1 ? before : sum);
        }
    }

    /** Mean over a panel of what changes exponentially from one value to another. */
    static double logarithmicMean(double before, double after) {
        double ratio = after / before;
        return Math.abs(ratio - 1) < 1e-4 ? (before + after) / 2 : (after - before) / Math.log(ratio);
    }

    /**
     * Time in s to the mid-tone on each film, as log2, in a light that the published film meters at that many
     * s.
     */
    double[] log2CorrectedS(double meteredS) {
        double[] lnFailure = new double[speeds.steps];
        double[] lnMetered = new double[speeds.steps];
        for (int speed = 0; speed < speeds.steps; speed++) {
            double own = meteredS * Stops.factor(speeds.at(speed));
            lnMetered[speed] = Math.log(own);
            lnFailure[speed] = Math.log(published.reciprocity().correctedS(own)) - lnMetered[speed];
        }
        return each(film -> (lnMetered[film / lnScales.steps]
                + scale(film % lnScales.steps) * lnFailure[film / lnScales.steps]) / Math.log(2));
    }

    /** One film of the grid. */
    FilmStock film(int film) {
        double offset = Math.max(FilmStock.SPEED_OFFSET.least(),
                Math.min(FilmStock.SPEED_OFFSET.most(), offsetStops(film / lnScales.steps)));
        return film(published.fittedToSheets(), offset,
                law -> new FittedReciprocity(law, scale(film % lnScales.steps), law.coveredToS(),
                Doubt.NONE));
    }

    /** The film at that speed, the laws of its layers fitted to so many sheets. */
    FilmStock film(int sheets, double speedOffsetStops, UnaryOperator<Reciprocity> fitted) {
        List<Layer> layers = published.layers().stream().map(layer -> new Layer(layer.name(),
                layer.reciprocity() instanceof Reciprocity.None ? layer.reciprocity()
                        : fitted.apply(layer.reciprocity()))).toList();
        return new FilmStock(published.name(), published.iso(), published.kind(), layers, published.tone(),
                speedOffsetStops, published.source(), sheets);
    }

    private double scale(int failure) {
        return Math.exp(lnScales.at(failure));
    }

    private double failure() {
        return published.reciprocity().exponentAt(EXPONENT_AT_S) - 1;
    }

    private double offsetStops(int speed) {
        return published.speedOffsetStops() + speeds.at(speed);
    }

    private double midToneLxS(int speed) {
        return published.midToneLxS() * Stops.factor(speeds.at(speed));
    }

    private double[] each(IntToDoubleFunction ofFilm) {
        return IntStream.range(0, size()).mapToDouble(ofFilm).toArray();
    }
}
