package gloam.exposure;

import gloam.units.Range;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/**
 * Several sheets of one picture, a stop of tone apart around the best guess: their half-stops either way adjoin.
 *
 * <p>Each is reckoned as if opened when the first is.
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

    /** That many sheets around a tone, by the exposure that makes a tone; empty where one of them never finishes. */
    public static Optional<Bracket> of(DoubleFunction<Exposure> toTone, double toneStops, int sheets) {
        SHEETS.check(sheets);
        List<Exposure> exposures = IntStream.range(0, sheets)
                .mapToObj(sheet -> toTone.apply(toneStops + sheet - (sheets - 1) / 2.0)).toList();
        if (exposures.stream().anyMatch(Exposure::neverFinishes)) {
            return Optional.empty();
        }
        double spreadStops = toTone.apply(toneStops).spreadStops();
        return Optional.of(new Bracket(exposures.stream().map(Exposure::correctedS).toList(),
                errorFunction(sheets / 2.0 / spreadStops / Math.sqrt(2))));
    }

    /** Error function from 0 on, to 1.5e-7: Abramowitz and Stegun 1964, 7.1.26. */
    public static double errorFunction(double x) {
        double t = 1 / (1 + 0.3275911 * x);
        double polynomial = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027
                + t * 1.061405429))));
        return 1 - polynomial * Math.exp(-x * x);
    }
}
