package gloam.field;

import java.time.Instant;

/**
 * How cold wind makes the air feel.
 *
 * <p><b>Model.</b> The wind chill index of 2001 of Environment Canada and the US National Weather Service.
 * <b>Valid.</b> Air up to 10 °C, wind above 4.8 km/h ten metres up; outside, the air's own temperature.
 * <b>Error.</b> That of the forecast. <b>Departures.</b> None.
 *
 * @param at           when
 * @param temperatureC temperature of the air
 * @param windKmH      mean wind ten metres up
 */
public record WindChill(Instant at, double temperatureC, double windKmH) {

    private static final double WARMEST_C = 10;
    private static final double LEAST_WIND_KMH = 4.8;
    /** From here on skin may freeze within half an hour (Environment Canada). */
    private static final double FROSTBITE_C = -28;

    /** What it feels like, in °C. */
    public double feltC() {
        return temperatureC > WARMEST_C || windKmH < LEAST_WIND_KMH ? temperatureC
                : indexC(temperatureC, windKmH);
    }

    /** Whether bare skin may freeze within half an hour. */
    public boolean freezesSkin() {
        return feltC() <= FROSTBITE_C;
    }

    /** 13.12 + 0.6215 T − 11.37 V^0.16 + 0.3965 T V^0.16. */
    static double indexC(double temperatureC, double windKmH) {
        double power = Math.pow(windKmH, 0.16);
        return 13.12 + 0.6215 * temperatureC - 11.37 * power + 0.3965 * temperatureC * power;
    }
}
