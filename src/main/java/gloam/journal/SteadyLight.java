package gloam.journal;

import gloam.units.Stops;
import java.util.Arrays;

/**
 * The time to a tone under steady light, on each film of a grid.
 *
 * @param posterior how likely each film is
 * @param log2Times log2 of the time in s to the tone, by film
 */
record SteadyLight(Posterior posterior, double[] log2Times) {

    private static final double NINETEEN_OF_TWENTY = 0.025;

    /**
     * A light that the published film meters at that many s for its mid-tone, and the tone wanted of it in
     * stops.
     */
    static SteadyLight of(Posterior posterior, double meteredS, double toneStops) {
        return new SteadyLight(posterior, Arrays.stream(posterior.grid().log2CorrectedS(meteredS))
                .map(log2 -> log2 + toneStops).toArray());
    }

    /** Mean, in the logarithm, of the time in s, and its spread in stops. */
    Times times() {
        Estimate log2 = posterior.estimate(log2Times);
        return new Times(Stops.factor(log2.mean()),
                Stops.factor(posterior.quantile(log2Times, NINETEEN_OF_TWENTY)),
                Stops.factor(posterior.quantile(log2Times, 1 - NINETEEN_OF_TWENTY)), log2.sd());
    }

    /**
     * A time and how sure it is.
     *
     * @param timeS       the time in s
     * @param leastS      below which the right time lies once in forty
     * @param mostS       above which it lies once in forty
     * @param spreadStops standard deviation in stops
     */
    record Times(double timeS, double leastS, double mostS, double spreadStops) {
    }
}
