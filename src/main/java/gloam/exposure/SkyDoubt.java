package gloam.exposure;

import gloam.light.SkyLight;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/** How well the light of openings is known: its standard deviation in stops. */
@FunctionalInterface
public interface SkyDoubt {

    /** Of a sky of which nothing more is known, such as a frame of it; common practice, no source. */
    SkyDoubt USUAL = openings -> 0.3;
    /** Of a sky that was measured; common practice, no source. */
    SkyDoubt MEASURED = openings -> 0.1;

    /** Of a sky of which all that is uncertain is told otherwise. */
    SkyDoubt NONE = openings -> 0;

    /** Standard deviation of the light of some openings, in stops. */
    double stops(List<Interval> openings);

    /**
     * That of a computed sky: by its sources at all times, what is wrong staying so through an exposure.
     *
     * @param step time from one look to the next at most
     */
    static SkyDoubt of(Function<Instant, SkyLight.Sample> sky, Duration step) {
        return openings -> {
            double[] sums = new double[2];
            for (Interval opening : openings) {
                long looks = Math.max(1, opening.lasts().dividedBy(step));
                for (long look = 0; look < looks; look++) {
                    Instant at = opening.start()
                            .plus(opening.lasts().multipliedBy(2 * look + 1).dividedBy(2 * looks));
                    SkyLight.Sample seen = sky.apply(at);
                    double weight = seen.total().cdM2() * opening.seconds() / looks;
                    sums[0] += weight;
                    sums[1] += weight * seen.spreadStops();
                }
            }
            return sums[1] / sums[0];
        };
    }
}
