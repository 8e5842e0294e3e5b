package gloam.journal;

import gloam.film.FilmStock;
import gloam.film.FilmStock.Layer;
import gloam.film.FittedReciprocity;
import gloam.film.FittedReciprocity.Doubt;
import gloam.film.Reciprocity;
import gloam.units.Stops;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * The possible films: the published one, slower or faster and with more or less reciprocity failure, on a
 * dense grid of both.
 *
 * <p>The failure is scaled in log time, which for a power law is its exponent less one. A quantity of each
 * film is an array in the grid's order: all failures of the first speed, then of the next.
 */
public final class FilmGrid {

    /** Standard deviation of the speed offset before a sheet is judged; batch and temperature, no source. */
    private static final double SPEED_PRIOR_STOPS = 0.5;
    /**
     * Standard deviation of the logarithm of the failure's scale before a sheet is judged; spread of makers'
     * tables.
     */
    private static final double FAILURE_PRIOR = 0.35;
    /** Steepest local exponent that silver halides show, P = k/(k-1) for k = 2 (Gerth 1974). */
    private static final double STEEPEST = 2;
    /** Where the local exponent of a law that is no power law is quoted. */
    private static final double EXPONENT_AT_S = 100;

    private static final int STEPS = 101;
    private static final double REACH = 4;

    private final FilmStock published;
    private final double[] offsetsStops = new double[STEPS];
    private final double[] scales = new double[STEPS];

    /** The grid around a published film. */
    public FilmGrid(FilmStock published) {
        this.published = published;
        for (int i = 0; i < STEPS; i++) {
            double sds = REACH * (2.0 * i / (STEPS - 1) - 1);
            offsetsStops[i] = published.speedOffsetStops() + SPEED_PRIOR_STOPS * sds;
            scales[i] = Math.exp(FAILURE_PRIOR * sds);
        }
    }

    /** The published film. */
    public FilmStock published() {
        return published;
    }

    /** How many films it holds. */
    int size() {
        return STEPS * STEPS;
    }

    /** Speed offset of each film from its rated speed, in stops. */
    double[] speedOffsetsStops() {
        return each(film -> offsetsStops[film / STEPS]);
    }

    /** Scale of the failure of each film. */
    double[] failureScales() {
        return each(film -> scales[film % STEPS]);
    }

    /** Local exponent of each film. */
    double[] exponents() {
        double failure = published.reciprocity().exponentAt(EXPONENT_AT_S) - 1;
        return each(film -> 1 + scales[film % STEPS] * failure);
    }

    /** Weight of each film before any sheet is judged. */
    double[] priorWeights() {
        double[] exponents = exponents();
        return each(film -> {
            double speedSds = (offsetsStops[film / STEPS] - published.speedOffsetStops()) / SPEED_PRIOR_STOPS;
            double failureSds = Math.log(scales[film % STEPS]) / FAILURE_PRIOR;
            return exponents[film] > STEEPEST ? 0
                    : Math.exp(-(speedSds * speedSds + failureSds * failureSds) / 2);
        });
    }

    /** Tone, in stops from the mid-tone, that an exposure gives on each film. */
    double[] toneStops(List<Opening> openings) {
        double[] progress = new double[size()];
        for (int speed = 0; speed < STEPS; speed++) {
            for (Opening opening : openings) {
                addProgress(opening, speed, progress);
            }
        }
        return each(film -> Stops.between(1, progress[film]));
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
        for (int failure = 0; failure < STEPS; failure++) {
            double sum = 0;
            double before = Math.exp(-lnMetered[0] - scales[failure] * lnFailure[0]);
            for (int i = 1; i < moments; i++) {
                double after = Math.exp(-lnMetered[i] - scales[failure] * lnFailure[i]);
                sum += logarithmicMean(before, after);
                before = after;
            }
            progress[speed * STEPS + failure] += panelS * (moments == 1 ? before : sum);
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
        double[] lnFailure = new double[STEPS];
        double[] lnMetered = new double[STEPS];
        for (int speed = 0; speed < STEPS; speed++) {
            double own = meteredS * Stops.factor(offsetsStops[speed] - published.speedOffsetStops());
            lnMetered[speed] = Math.log(own);
            lnFailure[speed] = Math.log(published.reciprocity().correctedS(own)) - lnMetered[speed];
        }
        return each(film -> (lnMetered[film / STEPS] + scales[film % STEPS] * lnFailure[film / STEPS])
                / Math.log(2));
    }

    /** One film of the grid. */
    FilmStock film(int film) {
        return film(published.fittedToSheets(), offsetsStops[film / STEPS],
                law -> new FittedReciprocity(law, scales[film % STEPS], law.coveredToS(), Doubt.NONE));
    }

    /** The film at that speed, the laws of its layers fitted to so many sheets. */
    FilmStock film(int sheets, double speedOffsetStops, UnaryOperator<Reciprocity> fitted) {
        List<Layer> layers = published.layers().stream().map(layer -> new Layer(layer.name(),
                layer.reciprocity() instanceof Reciprocity.None ? layer.reciprocity()
                        : fitted.apply(layer.reciprocity()))).toList();
        return new FilmStock(published.name(), published.iso(), published.kind(), layers, published.tone(),
                speedOffsetStops, published.source(), sheets);
    }

    private double midToneLxS(int speed) {
        return published.midToneLxS() * Stops.factor(offsetsStops[speed] - published.speedOffsetStops());
    }

    private double[] each(IntToDoubleFunction ofFilm) {
        return IntStream.range(0, size()).mapToDouble(ofFilm).toArray();
    }
}
