package gloam.exposure;

import gloam.units.Finite;

/**
 * How long the shutter stays open for a tone, and how sure that is.
 *
 * <p>On a sheet that was opened before, the times are those still to give, 0 where it has the tone already.
 *
 * @param meteredS         time without reciprocity failure, in s; infinite when not in the time there is
 * @param correctedS       time to give, in s; infinite when it never finishes
 * @param lowS             the time to give if sky and film are faster than taken by one standard deviation
 * @param highS            the same if slower; infinite when it would not finish
 * @param reciprocityStops what reciprocity failure costs: the light laid down over the light that counted, 0
 *                         or more; under steady light the corrected over the metered time
 * @param contrast         stops of tone that a stop of difference in the scene makes, 1 without failure
 * @param extrapolated     whether the film's law is continued beyond what its source covers
 * @param neverFinishes    whether the tone is not reached in the time there is: by the end of the night, or
 *                         under light that stays as it is in {@link #LONGEST_S}
 * @param toneStops        the tone made, in stops from the mid-tone: the wanted one or the nearest reached;
 *                         negative infinity where no light at all falls
 * @param spreadStops      standard deviation of that tone, infinite there
 */
public record Exposure(double meteredS, double correctedS, double lowS, double highS, double reciprocityStops,
                       double contrast, boolean extrapolated, boolean neverFinishes, double toneStops,
                       double spreadStops) {

    /** The longest exposure under light that stays as it is: a year of 365.25 days, in s. */
    public static final double LONGEST_S = 31_557_600;

    /** Refuses what is not a number, and infinity where it is no answer. */
    public Exposure {
        Finite.check(contrast, "contrast");
        if (toneStops != Double.NEGATIVE_INFINITY) {
            Finite.check(toneStops, "tone in stops");
            Finite.check(spreadStops, "spread in stops");
        }
        if (Double.isNaN(meteredS + correctedS + lowS + highS + reciprocityStops)) {
            throw new IllegalArgumentException("a time of an exposure is not a number");
        }
    }
}
