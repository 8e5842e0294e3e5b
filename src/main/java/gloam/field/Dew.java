package gloam.field;

import java.time.Instant;

/**
 * How near the air is to its dew point.
 *
 * <p><b>Model.</b> The Magnus formula over water with the constants of WMO (after Sonntag 1990): 17.62 and
 * 243.12 °C.
 * <b>Valid.</b> −45 °C to 60 °C. <b>Error.</b> Of the saturation pressure 0.6 %. <b>Departures.</b> None. A
 * lens under the open sky radiates and gets colder than the air, so it is warned of while the air is still up
 * to 3 °C above its dew point; common practice, no source.
 *
 * @param at           when
 * @param temperatureC temperature of the air
 * @param dewPointC    its dew point
 */
public record Dew(Instant at, double temperatureC, double dewPointC) {

    private static final double SLOPE = 17.62;
    private static final double OFFSET_C = 243.12;
    private static final double WARNING_C = 3;

    /** By how much the air is warmer than its dew point, in °C. */
    public double spareC() {
        return temperatureC - dewPointC;
    }

    /** Whether a lens under the open sky may dew. */
    public boolean threatens() {
        return spareC() < WARNING_C;
    }

    /** Dew point in °C of air of that temperature and relative humidity in percent, more than 0. */
    public static double pointC(double temperatureC, double humidityPercent) {
        double gamma = Math.log(humidityPercent / 100) + SLOPE * temperatureC / (OFFSET_C + temperatureC);
        return OFFSET_C * gamma / (SLOPE - gamma);
    }
}
