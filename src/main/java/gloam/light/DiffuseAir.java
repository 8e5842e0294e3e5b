package gloam.light;

import gloam.gear.Site;

/**
 * What air takes from light that fills the sky: less than from a star, since what is scattered out of one
 * direction comes from the others.
 *
 * <p><b>Model.</b> Noll et al. 2012, A&amp;A 543, A92, equations 2 (airmass after Rozenberg 1966), 19 and 20,
 * made for zodiacal light; molecules, ozone and dust as in {@link Atmosphere}, dust being what a site's
 * extinction has over the other two. <b>Valid.</b> Clear air. <b>Error.</b> A tenth of a magnitude at 30°,
 * more below. <b>Departures.</b> Where the paper's factors fall below 0, so that air adds light to faint
 * parts of the sky, they are 0.
 */
final class DiffuseAir {

    private static final double MAG = 0.4 * Math.log(10);
    /** Of one S10 at 500 nm in 1e-8 W/(m² µm sr): Leinert et al. 1998, A&amp;AS 127, 1, tables 16 and 17. */
    private static final double S10_INTENSITY = 1.28;

    private final double molecules;
    private final double dust;
    private final double ozone;

    DiffuseAir(Site site) {
        double moleculesMag = Atmosphere.moleculesMag(site.heightM());
        this.molecules = MAG * moleculesMag;
        this.ozone = MAG * Atmosphere.OZONE_MAG;
        this.dust = MAG * Math.max(0, site.extinctionMag() - moleculesMag - Atmosphere.OZONE_MAG);
    }

    /** Share that comes through of light of that many S10 outside the air. */
    double transmission(double s10, double airmass) {
        double logarithm = Math.log10(S10_INTENSITY * s10);
        return Math.exp(-airmass * (moleculesFactor(logarithm) * molecules + dustFactor(logarithm) * dust
                + ozone));
    }

    /** Equation 19 for the logarithm of an intensity in 1e-8 W/(m² µm sr). */
    static double moleculesFactor(double logarithm) {
        return Math.max(0, logarithm <= 2.244 ? 1.407 * logarithm - 2.692 : 0.527 * logarithm - 0.715);
    }

    /** Equation 20. */
    static double dustFactor(double logarithm) {
        return Math.max(0, logarithm <= 2.255 ? 1.309 * logarithm - 2.598 : 0.468 * logarithm - 0.702);
    }

    /** Equation 2: airmass by the cosine of the zenith distance, 40 on the horizon. */
    static double airmass(double up) {
        return 1 / (up + 0.025 * Math.exp(-11 * up));
    }
}
