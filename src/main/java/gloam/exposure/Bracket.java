package gloam.exposure;

import gloam.units.Range;
import gloam.units.Stops;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Several sheets of one picture, a stop apart around the best guess: their half-stops either way adjoin.
 *
 * <p>Takes the light as steady over all of them.
 *
 * @param exposuresS     times to give in s, shortest first
 * @param chanceOfOneHit chance, 0 to 1, that one of them comes within half a stop of the wanted tone
 */
public record Bracket(List<Double> exposuresS, double chanceOfOneHit) {

    /** Allowed numbers of sheets. */
    public static final Range SHEETS = new Range("bracket", 1, 9, "sheets");

    /** Copies the list. */
    public Bracket {
        exposuresS = List.copyOf(exposuresS);
    }

    /** The bracket of that many sheets around an exposure that finishes. */
    public static Bracket of(Exposure exposure, int sheets) {
        SHEETS.check(sheets);
        if (exposure.neverFinishes()) {
            throw new IllegalArgumentException("an exposure that never finishes has no bracket");
        }
        List<Double> exposuresS = IntStream.range(0, sheets)
                .mapToObj(sheet -> exposure.correctedS() * Stops.factor(sheet - (sheets - 1) / 2.0)).toList();
        return new Bracket(exposuresS, errorFunction(sheets / 2.0 / exposure.spreadStops() / Math.sqrt(2)));
    }

    /** Error function from 0 on, to 1.5e-7: Abramowitz and Stegun 1964, 7.1.26. */
    static double errorFunction(double x) {
        double t = 1 / (1 + 0.3275911 * x);
        double polynomial = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027
                + t * 1.061405429))));
        return 1 - polynomial * Math.exp(-x * x);
    }
}
