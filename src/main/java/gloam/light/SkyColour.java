package gloam.light;

/**
 * Colour of the night sky, which film sees and the eye does not.
 *
 * <p><b>Model.</b> Colour indices B−V of the sources, added as light; temperature by Ballesteros 2012,
 * EPL 97, 34008. <b>Valid.</b> Skies with little artificial light. <b>Error.</b> 0.2 in B−V.
 * <b>Departures.</b> One colour for each source.
 */
public final class SkyColour {

    private SkyColour() {
    }

    /** Temperature in K of the black body of a colour index, about -0.3 to 1.8. */
    public static double temperatureK(double bv) {
        return 4600 * (1 / (0.92 * bv + 1.7) + 1 / (0.92 * bv + 0.62));
    }

    /** Colour index of the black body of a temperature in K: the inverse of {@link #temperatureK}. */
    static double bvOfTemperature(double kelvin) {
        double k = kelvin / 4600;
        double half = 1 - (1.7 + 0.62) / 2 * k;
        return (half + Math.sqrt(half * half - k * (1.7 * 0.62 * k - 1.7 - 0.62))) / (0.92 * k);
    }

    /** Colour index of lights of those luminances and shares of blue. */
    static double bv(double[] cdM2, double[] blueShares) {
        double blue = 0;
        double all = 0;
        for (int source = 0; source < cdM2.length; source++) {
            blue += cdM2[source] * blueShares[source];
            all += cdM2[source];
        }
        return -2.5 * Math.log10(blue / all);
    }

    /** How much of blue a light of a colour index has for each of visual. */
    static double blueShare(double bv) {
        return Math.pow(10, -0.4 * bv);
    }
}
