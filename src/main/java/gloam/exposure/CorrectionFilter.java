package gloam.exposure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * The colour-correction filter that takes a cast away, found by computing the sheet with it on.
 *
 * @param hue its colour
 * @param cc  its value: a hundred times the density in the light that it holds back, 10 and more
 */
public record CorrectionFilter(String hue, double cc) {

    /** Stronger ones are not made. */
    private static final double MOST_CC = 200;
    private static final double CC_A_DENSITY = 100;
    private static final double WITHIN_CC = 0.01;
    private static final int MOST_STEPS = 100;

    /**
     * The filter for layers that came to some tones: red, green and blue.
     *
     * @param filtered the tones when a filter lets shares of each layer's light through, all else being equal
     * @return empty where no cast shows, or none that a filter takes away
     */
    static Optional<CorrectionFilter> of(List<Double> toneStops,
            Function<List<Double>, List<Double>> filtered) {
        ColourShift shift = ColourShift.ofTones(toneStops);
        if (shift.cast().isEmpty()) {
            return Optional.empty();
        }
        int odd = shift.odd();
        boolean holdsOddBack = shift.ofLayer(odd) > 0;
        try {
            double cc = new BrentSolver(WITHIN_CC).solve(MOST_STEPS, value -> {
                double share = Math.pow(10, -value / CC_A_DENSITY);
                return ColourShift.ofTones(filtered.apply(IntStream.range(0, toneStops.size())
                        .mapToObj(layer -> layer == odd == holdsOddBack ? share : 1.0).toList()))
                        .ofLayer(odd);
            }, 0, MOST_CC);
            return Optional.of(new CorrectionFilter(ColourShift.opposite(odd, holdsOddBack), cc));
        } catch (MathRuntimeException noneIsStrongEnough) {
            return Optional.empty();
        }
    }
}
