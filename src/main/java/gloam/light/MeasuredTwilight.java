package gloam.light;

import gloam.gear.Site;
import gloam.gear.SkyReading;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * What measurements make of the twilights that they were taken in, and of no others: all of it for two
 * hours before and after a measurement, then less and less, nothing from four on.
 *
 * @param readings measurements in twilight
 */
record MeasuredTwilight(List<SkyReading> readings) {

    /** A twilight differs no more from one that was measured; common practice, no source. */
    static final double LEAST_SPREAD_STOPS = 0.3;

    private static final Duration HOLDS = Duration.ofHours(2);

    static MeasuredTwilight of(Site site) {
        return new MeasuredTwilight(site.skyReadings().stream()
                .filter(reading -> reading.twilight().isPresent()).toList());
    }

    /** Whether what two measurements say meets: then they are of one twilight. */
    static boolean same(Instant one, Instant other) {
        return Duration.between(one, other).abs().compareTo(HOLDS.multipliedBy(4)) <= 0;
    }

    /** By how many stops twilight is brighter than usual at an instant; minus is darker. */
    double brighterStops(Instant at) {
        return readings.isEmpty() ? 0 : share(at) * nearest(at).twilight().orElseThrow().brighterStops();
    }

    /** Standard deviation of its light at an instant, in stops. */
    double spreadStops(Instant at) {
        return readings.isEmpty() ? TwilightGlow.SPREAD_STOPS : TwilightGlow.SPREAD_STOPS + share(at)
                * (nearest(at).twilight().orElseThrow().spreadStops() - TwilightGlow.SPREAD_STOPS);
    }

    private double share(Instant at) {
        double apart = (double) apart(nearest(at), at).toMillis() / HOLDS.toMillis();
        return Math.max(0, Math.min(1, 2 - apart));
    }

    private SkyReading nearest(Instant at) {
        SkyReading nearest = readings.get(0);
        for (SkyReading reading : readings) {
            nearest = apart(reading, at).compareTo(apart(nearest, at)) < 0 ? reading : nearest;
        }
        return nearest;
    }

    private static Duration apart(SkyReading reading, Instant at) {
        return Duration.between(reading.at(), at).abs();
    }
}
