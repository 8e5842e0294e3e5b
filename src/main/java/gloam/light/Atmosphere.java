package gloam.light;

import gloam.units.Angle;

/**
 * What clear air takes away.
 *
 * <p><b>Model.</b> Extinction: Green 1992, International Comet Quarterly 14, 55, after Hayes and Latham
 * 1975: ozone, molecules and an average of dust. Airmass: Kasten and Young 1989, Applied Optics 28, 4735.
 * <b>Valid.</b> Clear air; apparent altitudes from the horizon up. <b>Error.</b> Extinction 0.05 to 0.1 mag
 * by dust and damp; airmass 1 % at most. <b>Departures.</b> Airmass never below 1, and below the horizon
 * that of the horizon.
 */
public final class Atmosphere {

    static final double OZONE_MAG = 0.016;
    private static final double MOLECULES_MAG = 0.1451;
    private static final double MOLECULES_SCALE_M = 7996;
    private static final double DUST_MAG = 0.120;
    private static final double DUST_SCALE_M = 1500;

    /** Where nothing is said of an aim it counts as half-way up. */
    public static final Angle USUAL_ALTITUDE = Angle.ofDegrees(45);

    private Atmosphere() {
    }

    /** Clear-air extinction at the zenith, V mag per airmass, of a site at that height over the sea. */
    public static double clearExtinctionMag(double heightM) {
        return OZONE_MAG + moleculesMag(heightM) + DUST_MAG * Math.exp(-heightM / DUST_SCALE_M);
    }

    /** What molecules have of it. */
    static double moleculesMag(double heightM) {
        return MOLECULES_MAG * Math.exp(-heightM / MOLECULES_SCALE_M);
    }

    /** The same to a thousandth, so that the value shown for a site is the value used. */
    public static double statedClearExtinctionMag(double heightM) {
        return Math.round(clearExtinctionMag(heightM) * 1000) / 1000.0;
    }

    /** Airmass along an apparent altitude, 1 at the zenith to 37.9 at the horizon and below. */
    public static double airmass(Angle apparentAltitude) {
        return airmass(90 - apparentAltitude.degrees());
    }

    /** Light lost along an apparent altitude in mag, by the extinction at the zenith. */
    public static double lossMag(double extinctionMag, Angle apparentAltitude) {
        return extinctionMag * airmass(apparentAltitude);
    }

    /** Light lost in mag where neither site nor aim is known: half-way up, in clear air at sea level. */
    public static double usualLossMag() {
        return lossMag(clearExtinctionMag(0), USUAL_ALTITUDE);
    }

    static double airmass(double zenithDeg) {
        double cutDeg = Math.min(90, zenithDeg);
        double horizonTerm = 0.50572 * Math.pow(96.07995 - cutDeg, -1.6364);
        return Math.max(1, 1 / (Math.cos(Math.toRadians(cutDeg)) + horizonTerm));
    }

    /** Airmass of light scattered in the whole air: X = (1 − 0.96 sin²Z)^(−1/2), 5 at the horizon. */
    static double scatteringAirmass(double zenithDeg) {
        double sine = Math.sin(Math.toRadians(Math.min(90, zenithDeg)));
        return 1 / Math.sqrt(1 - 0.96 * sine * sine);
    }

    /** Share of light that passes that many airmasses. */
    static double transmission(double extinctionMag, double airmass) {
        return Math.pow(10, -0.4 * extinctionMag * airmass);
    }
}
