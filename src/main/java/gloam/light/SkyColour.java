package gloam.light;

/**
 * Colour of the night sky, which film sees and the eye does not.
 *
 * <p><b>Model.</b> Colour indices B−V of the parts, added as light: dark sky and moonlight by the sky model
 * of Cerro Paranal (Noll et al. 2012, A&amp;A 543, A92; Jones et al. 2013, A&amp;A 560, A91), twilight by
 * Patat et al. 2006, A&amp;A 455, 385, between 5° and 12° of depression; temperature by Ballesteros 2012,
 * EPL 97, 34008. <b>Valid.</b> Skies with little artificial light. <b>Error.</b> 0.2 in B−V.
 * <b>Departures.</b> One colour for each part.
 */
public final class SkyColour {

    private static final double DARK_BV = 0.95;
    private static final double MOONLIGHT_BV = 0.17;
    private static final double TWILIGHT_BV = -0.12;
    private static final double DARK_BLUE = blueShare(DARK_BV);
    private static final double MOONLIGHT_BLUE = blueShare(MOONLIGHT_BV);
    private static final double TWILIGHT_BLUE = blueShare(TWILIGHT_BV);

    private SkyColour() {
    }

    /** Temperature in K of the black body of a colour index, about -0.3 to 1.8. */
    public static double temperatureK(double bv) {
        return 4600 * (1 / (0.92 * bv + 1.7) + 1 / (0.92 * bv + 0.62));
    }

    static double bv(double darkCdM2, double moonCdM2, double twilightCdM2) {
        double blue = darkCdM2 * DARK_BLUE + moonCdM2 * MOONLIGHT_BLUE + twilightCdM2 * TWILIGHT_BLUE;
        return -2.5 * Math.log10(blue / (darkCdM2 + moonCdM2 + twilightCdM2));
    }

    private static double blueShare(double bv) {
        return Math.pow(10, -0.4 * bv);
    }
}
