package gloam.planner;

import gloam.field.Forecast;
import gloam.gear.Site;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is known of the weather of a trip.
 *
 * @param everywhere        the forecast for sites that have none of their own
 * @param bySite            forecasts of sites by their names
 * @param leastClearPercent where the forecast leaves less chance of a clear sky, sheets stay at home; 0 to
 *                          100
 * @param clearPriorPercent the chance of a clear sky where there is no forecast, 1 to 100
 */
public record Weather(Optional<Forecast> everywhere, Map<String, Forecast> bySite, double leastClearPercent,
                      double clearPriorPercent) {

    /** Allowed least chances of a clear sky. */
    public static final Range LEAST_CLEAR = new Range("least chance of a clear sky", 0, 100, "%");
    /** Allowed chances of a clear sky without a forecast. */
    public static final Range CLEAR_PRIOR = new Range("chance of a clear sky without a forecast", 1, 100,
            "%");
    /** Common practice, no source. */
    public static final double USUAL_LEAST_CLEAR_PERCENT = 30;
    /** A coin tossed: common practice, no source. */
    public static final double USUAL_CLEAR_PRIOR_PERCENT = 50;
    private static final Duration STEP = Duration.ofMinutes(5);

    /** No forecast at all. */
    public static final Weather UNKNOWN = of(Optional.empty());

    /** Copies the map; refuses a chance outside its range with {@link gloam.units.BadInput}. */
    public Weather {
        bySite = Map.copyOf(bySite);
        LEAST_CLEAR.check(leastClearPercent);
        CLEAR_PRIOR.check(clearPriorPercent);
    }

    /** One forecast for all sites, if there is one, with the usual chances. */
    public static Weather of(Optional<Forecast> everywhere) {
        return new Weather(everywhere, Map.of(), USUAL_LEAST_CLEAR_PERCENT, USUAL_CLEAR_PRIOR_PERCENT);
    }

    /** The forecast for a site. */
    Optional<Forecast> at(Site site) {
        return Optional.ofNullable(bySite.get(site.name())).or(() -> everywhere);
    }

    /**
     * The share of the sky at a site that is cloudy at an instant, 0 to 1; empty without a forecast of it.
     */
    OptionalDouble cloudAt(Site site, Instant at) {
        return at(site).map(forecast -> forecast.cloudAt(at)).orElse(OptionalDouble.empty());
    }

    /** The span that the forecast for a site covers, if there is one. */
    public Optional<Interval> covers(Site site) {
        return at(site).map(Forecast::covers);
    }

    /** The mean share of the sky that is clear over some spans at a site; empty where no forecast reaches. */
    public OptionalDouble clearShare(Site site, List<Interval> spans) {
        return at(site).map(forecast -> spans.stream()
                .flatMap(span -> Stream.iterate(span.start(), span::contains, at -> at.plus(STEP)))
                .flatMapToDouble(at -> forecast.cloudAt(at).stream()).map(cloud -> 1 - cloud).average())
                .orElse(OptionalDouble.empty());
    }

    /** Whether there is any forecast. */
    boolean forecast() {
        return everywhere.isPresent() || !bySite.isEmpty();
    }

    /** The chance of a clear sky without a forecast, 0 to 1. */
    double prior() {
        return clearPriorPercent / 100;
    }

    /** The same with another least chance. */
    Weather leastClear(double percent) {
        return new Weather(everywhere, bySite, percent, clearPriorPercent);
    }
}
