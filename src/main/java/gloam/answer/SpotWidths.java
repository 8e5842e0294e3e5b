package gloam.answer;

import gloam.gear.FNumber;
import gloam.gear.Lens;

/**
 * The size of a star's image.
 *
 * @param togetherUm    width in all, in µm: the square root of the sum of squares
 * @param defocusUm     width by a focus closer than the stars, in µm
 * @param diffractionUm width by diffraction, in µm
 * @param lensAndFilmUm width by the lens's aberrations and the film, in µm
 * @param hyperfocalM   closest focus, in metres, whose blur at infinity is no wider than that of lens and
 *                      film
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
