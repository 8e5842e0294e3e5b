package gloam.answer;

import gloam.gear.FNumber;
import gloam.gear.Lens;

/**
 * What a star's image measures in µm.
 *
 * @param togetherUm    all in quadrature
 * @param defocusUm     by a focus nearer than the stars
 * @param diffractionUm by diffraction
 * @param lensAndFilmUm by the lens's own faults and the film
 * @param hyperfocalM   nearest focus whose blur at infinity is no wider than that of lens and film
 */
public record SpotWidths(double togetherUm, double defocusUm, double diffractionUm, double lensAndFilmUm,
                         double hyperfocalM) {

    /** The spot of a lens at an f-number. */
    public static SpotWidths of(Lens lens, FNumber fNumber) {
        return new SpotWidths(um(lens.spotMm(fNumber)), um(lens.defocusMm(fNumber)),
                um(lens.diffractionMm(fNumber)),
                lens.spotUm(), lens.hyperfocalM(fNumber, lens.spotUm() / 1000));
    }

    private static double um(double mm) {
        return mm * 1000;
    }
}
