package gloam.journal;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What one observation of a sheet says about each film of a grid.
 *
 * <p><b>Model.</b> A tone in words is an ordered probit: the computed tone with a normal error between the
 * word's bounds; a tone in stops or a faintest magnitude is normal about the computed one. One observation in
 * twenty is taken to be about anything, which keeps a wrong note from bending the curve. <b>Valid.</b> Sound
 * sheets.
 * <b>Error.</b> That of the spreads, which are common sense without a source. <b>Departures.</b> Two
 * observations of one sheet count as independent though they share the sky's error.
 *
 * @param chances chance of the observation on each film, or its density, if the note is right
 * @param stray   the same if it is wrong
 */
record Evidence(double[] chances, double stray) {

    private static final NormalDistribution STANDARD_NORMAL = new NormalDistribution();
    private static final double STRAY_SHARE = 0.05;
    private static final double STRAY_TONES_STOPS = 10;
    private static final double STRAY_MAGNITUDES = 12;
    private static final double SIGHTING_SPREAD_MAG = 0.5;

    /** What a verdict says where the exposure gives those tones. */
    static Evidence of(Verdict verdict, double[] tonesStops) {
        if (verdict instanceof Verdict.InStops measured) {
            return normal(tonesStops, measured.stops(), measured.spreadStops(), STRAY_TONES_STOPS);
        }
        return of(((Verdict.InWords) verdict).word(), tonesStops);
    }

    /** What a word says where the exposure gives those tones. */
    static Evidence of(ToneWord word, double[] tonesStops) {
        double[] chances = new double[tonesStops.length];
        for (int i = 0; i < chances.length; i++) {
            chances[i] = chance(word, tonesStops[i]);
        }
        return new Evidence(chances, 1.0 / ToneWord.values().length);
    }

    /** What the faintest magnitude seen says where the film draws stars to those limits. */
    static Evidence ofFaintest(double magnitude, double[] limitsMag) {
        return normal(limitsMag, magnitude, SIGHTING_SPREAD_MAG, STRAY_MAGNITUDES);
    }

    /** Chance that a film gives the observation, whether the note is right or wrong. */
    double of(int film) {
        return (1 - STRAY_SHARE) * chances[film] + STRAY_SHARE * stray;
    }

    /** Chance that the note is wrong, were the film that one. */
    double strayOn(int film) {
        return STRAY_SHARE * stray / of(film);
    }

    /** Probability of a word for a computed tone in stops. */
    static double chance(ToneWord word, double toneStops) {
        return chanceBetween(word.aboveStops(), word.upToStops(), toneStops);
    }

    /** Probability that a sheet comes out between two tones for a computed one, all in stops. */
    static double chanceBetween(double aboveStops, double upToStops, double toneStops) {
        return upToStops <= aboveStops ? 0 : normalBelow((upToStops - toneStops) / Verdict.USUAL_SPREAD_STOPS)
                - normalBelow((aboveStops - toneStops) / Verdict.USUAL_SPREAD_STOPS);
    }

    private static Evidence normal(double[] expected, double seen, double spread, double width) {
        double[] densities = Arrays.stream(expected)
                .map(mean -> STANDARD_NORMAL.density((seen - mean) / spread) / spread).toArray();
        return new Evidence(densities, 1 / width);
    }

    /** Share of a standard normal distribution below a value. */
    static double normalBelow(double sds) {
        return STANDARD_NORMAL.cumulativeProbability(sds);
    }
}
