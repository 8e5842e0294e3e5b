package gloam.ephemeris;

/**
 * Apparent brightness of the Moon.
 *
 * <p><b>Model.</b> Krisciunas and Schaefer 1991, PASP 103, 1033, eq. 9, V magnitude outside the atmosphere.
 * <b>Valid.</b> Phase angles to 150°. <b>Error.</b> 0.11 mag to 150°, 0.7 too bright at 160° (Allen's phase
 * table). <b>Departures.</b> Scaled by the distance from the site; waxing and waning Moon alike; no surge at
 * full Moon.
 */
public final class MoonMagnitude {

    /** Mean distance, for which the formula holds. */
    private static final double MEAN_KM = 384_400;

    private MoonMagnitude() {
    }

    /**
     * V magnitude of the Moon.
     *
     * @param phaseDeg   angle Sun–Moon–observer, 0 (full) to 180
     * @param distanceKm from the observer
     */
    public static double of(double phaseDeg, double distanceKm) {
        return -12.73 + 0.026 * phaseDeg + 4e-9 * Math.pow(phaseDeg, 4)
                + 5 * Math.log10(distanceKm / MEAN_KM);
    }
}
