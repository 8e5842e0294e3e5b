package gloam.proof;

import gloam.light.SkyColour;

/**
 * What part of the light's colours a layer of film takes.
 *
 * <p><b>Model.</b> Light of a colour index B−V as the black body of its temperature (Ballesteros 2012),
 * Planck's law at one wavelength for each layer, over that at 550 nm; white is daylight of 5500 K, for which
 * daylight film is balanced (ISO 7589). <b>Valid.</b> B−V from −0.4 to 2. <b>Error.</b> A third of a stop by
 * films' sensitivities alone. <b>Departures.</b> No lines of airglow or lamps; light of unknown colour is
 * taken as white.
 */
enum Band {
    RED(650e-9), GREEN(550e-9), BLUE(450e-9), ALL(Double.NaN);

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
    double share(double colourBv) {
        if (this == ALL || Double.isNaN(colourBv)) {
            return 1;
        }
        double temperatureK = SkyColour.temperatureK(Math.max(BLUEST_BV, Math.min(REDDEST_BV, colourBv)));
        return overVisual(wavelengthM, temperatureK) / daylight;
    }

    /** Planck's law at the wavelength over that at 550 nm. */
    private static double overVisual(double wavelengthM, double temperatureK) {
        return Math.pow(VISUAL_M / wavelengthM, 5) * Math.expm1(C2_M_K / (VISUAL_M * temperatureK))
                / Math.expm1(C2_M_K / (wavelengthM * temperatureK));
    }
}
