package gloam.planner;

import gloam.field.Forecast;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The chance that the sky of a night stays clear between two of its minutes, by the cloud forecast.
 *
 * <p>A minute without a forecast counts as the cloud that leaves the chance which the trip states for it.
 * Where the trip has no forecast at all, that chance is the same for every exposure; it then belongs to their
 * worth, and all count as clear here.
 */
final class ClearSky {

    private static final Duration HALF_A_MINUTE = Duration.ofSeconds(30);

    private final Weather weather;
    private final double[] cloudMin;
    private final double[] byMinute;
    private final int[] forecastMin;
    private final List<MinuteRun> covered;

    /** The sky of a night at a site under the weather of a trip. */
    ClearSky(Weather weather, NightSky sky) {
        this.weather = weather;
        Optional<Forecast> forecast = weather.at(sky.site());
        int minutes = forecast.isPresent() ? sky.clock().minutes() : 0;
        this.cloudMin = new double[minutes + 1];
        this.byMinute = new double[minutes];
        this.forecastMin = new int[minutes + 1];
        BitSet coveredMin = new BitSet(minutes);
        for (int minute = 0; minute < minutes; minute++) {
            Instant middle = sky.clock().at(minute).plus(HALF_A_MINUTE);
            OptionalDouble cloud = forecast.get().cloudAt(middle);
            byMinute[minute] = cloud.orElse(1 - weather.prior());
            cloudMin[minute + 1] = cloudMin[minute] + byMinute[minute];
            forecastMin[minute + 1] = forecastMin[minute] + (cloud.isPresent() ? 1 : 0);
            coveredMin.set(minute, cloud.isPresent() && byMinute[minute] >= CloudCover.COVERED_FRACTION);
        }
        this.covered = MinuteRun.of(coveredMin);
    }

    /** How much of its wish's worth every exposure has, 0 to 1: the chance that is the same for all. */
    double worthShare() {
        return weather.forecast() ? 1 : weather.prior();
    }

    /** The least chance that the trip puts up with, in percent. */
    double leastPercent() {
        return weather.leastClearPercent();
    }

    /** The same for a trip that puts up with any chance at all. */
    ClearSky atAnyChance(NightSky sky) {
        return new ClearSky(weather.leastClear(0), sky);
    }

    /** The chance that counts for an exposure, 0 to 1; none where it is less than the trip puts up with. */
    double chance(int openMin, int closeMin) {
        if (!reaches(openMin, closeMin)) {
            return weather.forecast() ? weather.prior() : 1;
        }
        double chance = forecast(openMin, closeMin);
        return Chance.percent(chance) < leastPercent() ? 0 : chance;
    }

    /** The cloud over an exposure; empty where no forecast reaches any of it. */
    Optional<CloudCover> over(int openMin, int closeMin) {
        if (!reaches(openMin, closeMin)) {
            return Optional.empty();
        }
        double most = 0;
        for (int minute = openMin; minute < closeMin; minute++) {
            most = Math.max(most, byMinute[minute]);
        }
        return Optional.of(new CloudCover(mean(openMin, closeMin), most, longestCoveredMin(openMin, closeMin),
                forecast(openMin, closeMin)));
    }

    private boolean reaches(int openMin, int closeMin) {
        return byMinute.length > 0 && forecastMin[closeMin] > forecastMin[openMin];
    }

    private double forecast(int openMin, int closeMin) {
        return CloudCover.clearChance(mean(openMin, closeMin),
                longestCoveredMin(openMin, closeMin) / (double) (closeMin - openMin));
    }

    private double mean(int openMin, int closeMin) {
        return (cloudMin[closeMin] - cloudMin[openMin]) / (closeMin - openMin);
    }

    private int longestCoveredMin(int openMin, int closeMin) {
        int longest = 0;
        for (int run = 0; run < covered.size(); run++) {
            MinuteRun minutes = covered.get(run);
            longest = Math.max(longest,
                    Math.min(closeMin, minutes.last() + 1) - Math.max(openMin, minutes.first()));
        }
        return longest;
    }
}
