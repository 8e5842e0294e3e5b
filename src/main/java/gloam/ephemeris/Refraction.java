package gloam.ephemeris;

import gloam.units.Angle;

/**
 * How far the air lifts what is seen through it.
 *
 * <p><b>Model.</b> Bennett 1982, Journal of Navigation 35, 255, the improved formula for apparent altitudes,
 * scaled by pressure over temperature. <b>Valid.</b> Apparent altitudes from −2° up. <b>Error.</b> Against
 * SOFA's refco below 1″ above 45°, 3″ at 15°; near the horizon real air differs by minutes of arc.
 * <b>Departures.</b> Shifted by 0.9″ so that the zenith stays where it is; from −2° it fades to nothing at
 * −6°, smoothly, so that apparent altitude grows with airless altitude everywhere.
 *
 * @param pressureHPa  pressure of the air at the site, 0 for none
 * @param temperatureC its temperature
 */
public record Refraction(double pressureHPa, double temperatureC) {

    private static final double LOWEST_DEG = -2;
    private static final double NOTHING_DEG = -6;
    /** Pressure and temperature for which the formula holds as it stands. */
    private static final double REFERENCE_HPA = 1010;
    private static final double REFERENCE_K = 283.15;
    private static final double FREEZING_K = 273.15;
    private static final double SEA_LEVEL_HPA = 1013.25;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double LAPSE_K_M = 0.0065;
    private static final double PRESSURE_EXPONENT = 5.25588;
    private static final double ENOUGH_DEG = 1e-9;
    private static final int MOST_STEPS = 12;

    /** The air of the ICAO standard atmosphere (ISO 2533:1975) at a height over the sea. */
    public static Refraction ofHeight(double heightM) {
        double temperatureK = SEA_LEVEL_K - LAPSE_K_M * heightM;
        return new Refraction(SEA_LEVEL_HPA * Math.pow(temperatureK / SEA_LEVEL_K, PRESSURE_EXPONENT),
                temperatureK - FREEZING_K);
    }

    /** The altitude without air of what is seen at an apparent altitude. */
    public Angle airless(Angle apparentAltitude) {
        double apparentDeg = apparentAltitude.degrees();
        return Angle.ofDegrees(apparentDeg - airFactor() * Lift.at(apparentDeg).deg);
    }

    /**
     * The altitude at which that is seen which stands at an altitude without air: the inverse of {@link
     * #airless}.
     */
    public Angle apparent(Angle airlessAltitude) {
        double airlessDeg = airlessAltitude.degrees();
        double factor = airFactor();
        double apparentDeg = airlessDeg;
        double missDeg = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS && Math.abs(missDeg) > ENOUGH_DEG; step++) {
            Lift lift = Lift.at(apparentDeg);
            missDeg = apparentDeg - factor * lift.deg - airlessDeg;
            apparentDeg -= missDeg / (1 - factor * lift.slope);
        }
        return Angle.ofDegrees(apparentDeg);
    }

    private double airFactor() {
        return pressureHPa / REFERENCE_HPA * REFERENCE_K / (FREEZING_K + temperatureC);
    }

    /** Refraction in minutes of arc at 1010 hPa and 10 °C, the short formula. */
    static double shortArcmin(double apparentDeg) {
        return 1 / Math.tan(Math.toRadians(apparentDeg + 7.31 / (apparentDeg + 4.4)));
    }

    /**
     * Refraction in the reference air.
     *
     * @param deg   how far it lifts
     * @param slope how that changes per degree of apparent altitude
     */
    private record Lift(double deg, double slope) {

        private static final double WAVE_ARCMIN = 0.06;
        private static final double WAVE_RAD_ARCMIN = Math.toRadians(14.7);
        private static final double WAVE_START_RAD = Math.toRadians(13);
        private static final double ZENITH_DEG = bennett(90, 0).deg;
        private static final Lift LOWEST = bennett(LOWEST_DEG, ZENITH_DEG);

        static Lift at(double apparentDeg) {
            if (apparentDeg >= LOWEST_DEG) {
                return bennett(apparentDeg, ZENITH_DEG);
            }
            return apparentDeg <= NOTHING_DEG ? new Lift(0, 0) : fading(apparentDeg);
        }

        private static Lift bennett(double apparentDeg, double zenithDeg) {
            double arcmin = shortArcmin(apparentDeg);
            double inner = 1 - 7.31 / ((apparentDeg + 4.4) * (apparentDeg + 4.4));
            double slope = -(1 + arcmin * arcmin) * Math.toRadians(inner);
            double waveRad = WAVE_RAD_ARCMIN * arcmin + WAVE_START_RAD;
            return new Lift((arcmin - WAVE_ARCMIN * Math.sin(waveRad)) / 60 - zenithDeg,
                    slope * (1 - WAVE_ARCMIN * WAVE_RAD_ARCMIN * Math.cos(waveRad)) / 60);
        }

        /** The cubic that leaves the lowest lift with its slope and arrives at nothing with none. */
        private static Lift fading(double apparentDeg) {
            double spanDeg = LOWEST_DEG - NOTHING_DEG;
            double u = (apparentDeg - NOTHING_DEG) / spanDeg;
            return new Lift(u * u * ((3 - 2 * u) * LOWEST.deg + (u - 1) * spanDeg * LOWEST.slope),
                    6 * u * (1 - u) / spanDeg * LOWEST.deg + u * (3 * u - 2) * LOWEST.slope);
        }
    }
}
