package gloam.exposure;

import gloam.film.FilmStock;
import gloam.light.SkyColour;
import java.util.List;

/**
 * What part of the light's colours a layer of film takes.
 *
 * <p><b>Model.</b> Light of a colour index B−V as the black body of its temperature (Ballesteros 2012),
 * Planck's law at one wavelength for each layer, over that at 550 nm; white is daylight of 5500 K, for which
 * daylight film is balanced (ISO 7589). <b>Valid.</b> B−V from −0.4 to 2. <b>Error.</b> A third of a stop by
 * films' sensitivities alone. <b>Departures.</b> No lines of airglow or lamps; light of unknown colour is
 * taken as white.
 */
public enum Band {
    /** Of a layer sensitive to red. */
    RED(650e-9),
    /** Of one sensitive to green. */
    GREEN(550e-9),
    /** Of one sensitive to blue. */
    BLUE(450e-9),
    /** Of the one layer of black-and-white film. */
    ALL(Double.NaN);

    /** Second radiation constant, m K (CODATA 2018). */
    private static final double C2_M_K = 1.438776877e-2;
    private static final double VISUAL_M = 550e-9;
    private static final double DAYLIGHT_K = 5500;
    private static final double BLUEST_BV = -0.4;
    private static final double REDDEST_BV = 2;

    private final double wavelengthM;
    private final double daylight;

    Band(double wavelengthM) {
        this.wavelengthM = wavelengthM;
        this.daylight = overVisual(wavelengthM, DAYLIGHT_K);
    }

    /**
     * The layer's light over that of white light equally bright to the eye, for a colour index, NaN if
     * unknown.
     */
    public double share(double colourBv) {
        if (this == ALL || Double.isNaN(colourBv)) {
            return 1;
        }
        double temperatureK = SkyColour.temperatureK(Math.max(BLUEST_BV, Math.min(REDDEST_BV, colourBv)));
        return overVisual(wavelengthM, temperatureK) / daylight;
    }

    /** The bands of a film's layers, in its order. */
    public static List<Band> of(FilmStock film) {
        return film.colour() ? List.of(RED, GREEN, BLUE) : List.of(ALL);
    }

    /** Planck's law at the wavelength over that at 550 nm. */
    private static double overVisual(double wavelengthM, double temperatureK) {
        return Math.pow(VISUAL_M / wavelengthM, 5) * Math.expm1(C2_M_K / (VISUAL_M * temperatureK))
                / Math.expm1(C2_M_K / (wavelengthM * temperatureK));
    }
}
