package gloam.ephemeris;

/**
 * Apparent brightness of the planets.
 *
 * <p><b>Model.</b> Mallama and Hilton 2018, Astronomy and Computing 25, 10 (arXiv 1808.01973), V magnitudes
 * outside the atmosphere. <b>Valid.</b> All phases seen from the Earth. <b>Error.</b> Some 0.05 mag, Mars up
 * to 0.1 (dust storms), Mercury and Venus near the Sun more. <b>Departures.</b> Mars's tables are
 * interpolated linearly, not to the fourth order (0.003 mag); branches for views that no one on the Earth has
 * are left out where they need other inputs.
 */
public final class PlanetMagnitude {

    private static final double[] MARS_BY_LONGITUDE = {
        0.036,  0.045,  0.038,  0.023,  0.015,  0.011,  0.000, -0.012, -0.018, -0.036, -0.044, -0.059,
       -0.060, -0.055, -0.043, -0.041, -0.041, -0.036, -0.036, -0.018, -0.038, -0.011,  0.002,  0.004,
        0.018,  0.019,  0.035,  0.050,  0.035,  0.027,  0.037,  0.048,  0.025,  0.022,  0.024,  0.034};
    private static final double[] MARS_BY_SEASON = {
       -0.029, -0.017, -0.014, -0.006, -0.018, -0.020, -0.014, -0.030, -0.008, -0.040, -0.024, -0.037,
       -0.036, -0.032,  0.010,  0.010, -0.001,  0.044,  0.025, -0.004, -0.016, -0.008,  0.029, -0.054,
       -0.033,  0.055,  0.017,  0.052,  0.006,  0.087,  0.006,  0.064,  0.030,  0.019, -0.030, -0.017};
    /** Spacing of both tables. */
    private static final double MARS_STEP_DEG = 10;
    /** Ecliptic longitude of Mars at its northern vernal equinox. */
    private static final double MARS_EQUINOX_DEG = 85;

    private PlanetMagnitude() {
    }

    /**
     * How a planet is lit and seen.
     *
     * @param fromSunAu      its distance from the Sun
     * @param fromObserverAu its distance from the observer
     * @param phaseDeg       angle Sun–planet–observer, 0 to 180
     */
    public record View(double fromSunAu, double fromObserverAu, double phaseDeg) {

        private double distanceMag() {
            return 5 * Math.log10(fromSunAu * fromObserverAu);
        }
    }

    /** Magnitude of Mercury. */
    public static double mercury(View view) {
        return view.distanceMag()
                + polynomial(view.phaseDeg, -0.613, 6.3280e-2, -1.6336e-3, 3.3644e-5, -3.4265e-7,
                1.6893e-9, -3.0334e-12);
    }

    /** Magnitude of Venus. */
    public static double venus(View view) {
        return view.distanceMag() + (view.phaseDeg < 163.7
                ? polynomial(view.phaseDeg, -4.384, -1.044e-3, 3.687e-4, -2.814e-6, 8.938e-9)
                : polynomial(view.phaseDeg, 236.05828, -2.81914, 8.39034e-3));
    }

    /**
     * Magnitude of Mars.
     *
     * @param seenWestDeg     planetographic west longitude of the point below the observer
     * @param sunlitWestDeg   that of the point below the Sun
     * @param eclipticDeg     heliocentric ecliptic longitude of Mars
     */
    public static double mars(View view, double seenWestDeg, double sunlitWestDeg, double eclipticDeg) {
        double middleDeg = (seenWestDeg + sunlitWestDeg) / 2
                + (Math.abs(seenWestDeg - sunlitWestDeg) > 180 ? 180 : 0);
        double phaseMag = view.phaseDeg <= 50
                ? polynomial(view.phaseDeg, -1.601, 2.267e-2, -1.302e-4)
                : polynomial(view.phaseDeg, -0.367, -0.02573, 3.445e-4);
        return view.distanceMag() + phaseMag + around(MARS_BY_LONGITUDE, middleDeg)
                + around(MARS_BY_SEASON, eclipticDeg - MARS_EQUINOX_DEG);
    }

    /** Magnitude of Jupiter. */
    public static double jupiter(View view) {
        if (view.phaseDeg <= 12) {
            return view.distanceMag() + polynomial(view.phaseDeg, -9.395, -3.7e-4, 6.16e-4);
        }
        double lit = polynomial(view.phaseDeg / 180, 1, -1.507, -0.363, -0.062, 2.809, -1.876);
        return view.distanceMag() - 9.428 - 2.5 * Math.log10(lit);
    }

    /**
     * Magnitude of Saturn with its rings.
     *
     * @param seenLatitudeDeg   planetocentric latitude of the point below the observer
     * @param sunlitLatitudeDeg that of the point below the Sun
     */
    public static double saturn(View view, double seenLatitudeDeg, double sunlitLatitudeDeg) {
        double tiltDeg = Math.sqrt(Math.max(0, seenLatitudeDeg * sunlitLatitudeDeg));
        double sinTilt = Math.sin(Math.toRadians(tiltDeg));
        return view.distanceMag() - 8.914 - 1.825 * sinTilt + 0.026 * view.phaseDeg
                - 0.378 * sinTilt * Math.exp(-2.25 * view.phaseDeg);
    }

    /**
     * Magnitude of Uranus.
     *
     * @param seenLatitudeDeg   planetographic latitude of the point below the observer
     * @param sunlitLatitudeDeg that of the point below the Sun
     */
    public static double uranus(View view, double seenLatitudeDeg, double sunlitLatitudeDeg) {
        double latitudeDeg = (Math.abs(seenLatitudeDeg) + Math.abs(sunlitLatitudeDeg)) / 2;
        double phaseMag = view.phaseDeg > 3.1 ? polynomial(view.phaseDeg, 0, 6.587e-3, 1.045e-4) : 0;
        return view.distanceMag() - 7.110 - 8.4e-4 * latitudeDeg + phaseMag;
    }

    /** Magnitude of Neptune, which grew brighter between 1980 and 2000. */
    public static double neptune(View view, double year) {
        double steadyMag = year > 2000 ? -7.00 : -6.89 - 0.0054 * Math.max(0, year - 1980);
        double phaseMag = view.phaseDeg > 1.9 && year > 2000
                ? polynomial(view.phaseDeg, 0, 7.944e-3, 9.617e-5) : 0;
        return view.distanceMag() + steadyMag + phaseMag;
    }

    private static double polynomial(double x, double... coefficients) {
        double sum = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * x + coefficients[k];
        }
        return sum;
    }

    private static double around(double[] table, double deg) {
        double at = deg / MARS_STEP_DEG;
        int before = (int) Math.floor(at);
        double share = at - before;
        return (1 - share) * table[Math.floorMod(before, table.length)]
                + share * table[Math.floorMod(before + 1, table.length)];
    }
}
