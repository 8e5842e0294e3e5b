package gloam.exposure;

import gloam.units.Range;
import gloam.units.StandardNormal;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/**
 * Several sheets of one picture, a stop of tone apart around the best guess: their half-stops either way
 * adjoin.
 *
 * <p>Each is computed as if opened when the first is.
 *
 * @param exposuresS     times to give in s, shortest first
 * @param chanceOfOneHit chance, 0 to 1, that one of them comes within half a stop of the wanted tone
 */
public record Bracket(List<Double> exposuresS, double chanceOfOneHit) {

    /** A tone so near the one wanted is the one wanted. */
    public static final double RIGHT_STOPS = 0.5;
    /** Allowed numbers of sheets. */
    public static final Range SHEETS = new Range("bracket", 1, 9, "sheets");

    /** Copies the list. */
    public Bracket {
        exposuresS = List.copyOf(exposuresS);
    }

    /**
     * Chance, 0 to 1, that a sheet is right: that its tone, normal about what was computed, comes within half
     * a stop of the one wanted.
     *
     * @param offStops    by how many stops the computed tone is off the wanted one
     * @param spreadStops standard deviation of the tone
     */
    public static double rightChance(double offStops, double spreadStops) {
        return StandardNormal.below((RIGHT_STOPS - offStops) / spreadStops)
                - StandardNormal.below((-RIGHT_STOPS - offStops) / spreadStops);
    }

    /**
     * That many sheets around a tone, by the exposure that makes a tone; empty where one of them never
     * finishes.
     */
    public static Optional<Bracket> of(DoubleFunction<Exposure> toTone, double toneStops, int sheets) {
        SHEETS.check(sheets);
        List<Exposure> exposures = IntStream.range(0, sheets)
                .mapToObj(sheet -> toTone.apply(toneStops + sheet - (sheets - 1) / 2.0)).toList();
        if (exposures.stream().anyMatch(Exposure::neverFinishes)) {
            return Optional.empty();
        }
        double spreadStops = toTone.apply(toneStops).spreadStops();
        return Optional.of(new Bracket(exposures.stream().map(Exposure::correctedS).toList(),
                rightChance(0, spreadStops / sheets)));
    }
}
