package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Finite;

/**
 * A sheet and the sky it has seen, against which trails must show.
 *
 * @param film        the film
 * @param lens        the lens
 * @param fNumber     its f-number
 * @param exposureS   how long the shutter is open, the longest time of several, more than 0
 * @param skyProgress the sky's progress at the end of the exposure, 0 or more
 * @param skyLx       illuminance of the sky on the film half-way through, 0 or more
 */
public record ExposedSheet(FilmStock film, Lens lens, FNumber fNumber, double exposureS, double skyProgress,
                           double skyLx) {

    /** Refuses what is not finite. */
    public ExposedSheet {
        Finite.check(exposureS, "exposure in s");
        Finite.check(skyProgress, "progress of the sky");
        Finite.check(skyLx, "illuminance of the sky in lx");
    }

    /** Tone of the sky on it, in stops from the mid-tone. */
    public double skyToneStops() {
        return ExposureEngine.toneStops(skyProgress);
    }
}
