package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.units.Crossings;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class FunctionOfTimeReferenceTest {

    private static final Instant MIDNIGHT = Instant.parse("1988-03-20T00:00:00Z");
    private static final double DELTA_T_S = 56;
    private static final double LONGITUDE_WEST_DEG = 71.0833;
    private static final double LATITUDE_RAD = Math.toRadians(42.3333);
    private static final double SIDEREAL_MIDNIGHT_DEG = 177.74208;
    private static final double[] RIGHT_ASCENSIONS_DEG = {40.68021, 41.73129, 42.78204};
    private static final double[] DECLINATIONS_DEG = {18.04761, 18.44092, 18.82742};
    private static final double RISE_ALTITUDE_DEG = -0.5667;

    /**
     * Meeus 1998, Astronomical Algorithms, example 15.a, Venus at Boston on 1988-03-20: rises at 0.51766 d,
     * transits at 0.81980 d, sets at 0.12130 d; from memory, as are his inputs.
     */
    @Test
    void riseTransitAndSetOfMeeus() {
        Interval day = Interval.lasting(MIDNIGHT, Duration.ofDays(1));
        FunctionOfTime altitude = FunctionOfTime.of(day, Duration.ofMinutes(30),
                FunctionOfTimeReferenceTest::altitudeRad);
        List<Crossings.Crossing> crossings = altitude.crossings(Math.toRadians(RISE_ALTITUDE_DEG)).all();
        assertEquals(2, crossings.size());
        assertEquals(0.12130, days(crossings.get(0).at()), 1e-5, "printed to 1e-5 d");
        assertEquals(0.51766, days(crossings.get(1).at()), 1e-5);
        Instant highest = altitude.extrema().stream().filter(FunctionOfTime.Extremum::highest).findFirst()
                .orElseThrow().at();
        assertEquals(0.81980, days(highest), 2e-4, "highest a little after the meridian, as it goes north");
    }

    private static double altitudeRad(Instant at) {
        double days = days(at);
        double n = days + DELTA_T_S / 86400;
        double hourAngleRad = Math.toRadians(SIDEREAL_MIDNIGHT_DEG + 360.985647 * days - LONGITUDE_WEST_DEG
                - interpolated(RIGHT_ASCENSIONS_DEG, n));
        double declinationRad = Math.toRadians(interpolated(DECLINATIONS_DEG, n));
        return Math.asin(Math.sin(LATITUDE_RAD) * Math.sin(declinationRad)
                + Math.cos(LATITUDE_RAD) * Math.cos(declinationRad) * Math.cos(hourAngleRad));
    }

    /** Meeus's formula 3.3 for three values a day apart, n days from the middle one. */
    private static double interpolated(double[] values, double n) {
        double a = values[1] - values[0];
        double b = values[2] - values[1];
        return values[1] + n / 2 * (a + b + n * (b - a));
    }

    private static double days(Instant at) {
        return Duration.between(MIDNIGHT, at).toNanos() * 1e-9 / 86400;
    }
}
