package gloam.exposure;

/**
 * How long the shutter stays open for a tone, and how sure that is.
 *
 * @param meteredS         time without reciprocity failure, in s; infinite when never
 * @param correctedS       time to give, in s; infinite when it never finishes
 * @param lowS             the time to give if sky and film are faster than taken by one standard deviation
 * @param highS            the same if slower; infinite when it would not finish
 * @param reciprocityStops what reciprocity failure costs, log2 of corrected over metered time, 0 or more
 * @param extrapolated     whether the film's law is continued beyond what its source covers
 * @param neverFinishes    whether the tone is not reached in the time there is
 * @param skyToneStops     the tone made, in stops from the mid-tone: the wanted one or the nearest reached
 * @param spreadStops      standard deviation of that tone
 */
public record Exposure(double meteredS, double correctedS, double lowS, double highS, double reciprocityStops,
                       boolean extrapolated, boolean neverFinishes, double skyToneStops, double spreadStops) {
}
