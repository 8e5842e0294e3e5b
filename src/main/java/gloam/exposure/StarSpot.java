package gloam.exposure;

import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Angle;

/**
 * The spot that a star or a body makes on the film: what light the entrance pupil gathers, over the spot's
 * width.
 *
 * @param widthMm       width of the spot
 * @param illuminanceLx its light, taken as even over the square of the width
 */
public record StarSpot(double widthMm, double illuminanceLx) {

    /** Illuminance by a star of V = 0 outside the air (Allen; Schaefer 1990; Crumey 2014), 1 % unsure. */
    private static final double ZERO_MAG_LX = 2.54e-6;

    /**
     * The spot on the lens's axis.
     *
     * @param magnitude    V as it arrives: the air's loss and the lens's fall-off added
     * @param semidiameter half the angle of the body's disc, zero for a star
     */
    public static StarSpot of(Lens lens, FNumber fNumber, double magnitude, Angle semidiameter) {
        double widthMm = Math.hypot(lens.spotMm(fNumber), discMm(lens, semidiameter));
        return new StarSpot(widthMm, fluxLxMm2(lens, fNumber, magnitude) / (widthMm * widthMm));
    }

    /** Width of a body's disc on the film in mm. */
    public static double discMm(Lens lens, Angle semidiameter) {
        return 2 * lens.imageDistanceMm() * Math.tan(semidiameter.radians());
    }

    /** The light through the entrance pupil, in lx mm² (millionths of a lumen). */
    static double fluxLxMm2(Lens lens, FNumber fNumber, double magnitude) {
        double pupilMm = lens.focalLengthMm() / fNumber.exact();
        return lens.transmission() * ZERO_MAG_LX * Math.pow(10, -0.4 * magnitude) * Math.PI / 4 * pupilMm
                * pupilMm;
    }
}
