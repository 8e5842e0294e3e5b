package gloam.view;

import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.units.Interval;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is known of the weather.
 *
 * @param leastClearPercent where the forecast leaves less chance of a clear sky, sheets stay at home
 * @param clearPriorPercent the chance of a clear sky without a forecast
 * @param forecasts         the forecast that counts for each site that has one
 */
public record WeatherRow(double leastClearPercent, double clearPriorPercent,
                         List<ForecastRow> forecasts) {

    static WeatherRow of(Trip trip) {
        return new WeatherRow(trip.forecast().leastClearPercent(), trip.forecast().clearPriorPercent(),
                trip.sites().stream().flatMap(site -> trip.forecast().covers(site).stream()
                .map(span -> ForecastRow.of(site, span))).toList());
    }

    String words() {
        return (forecasts().isEmpty() ? "no forecast" : forecasts().stream()
                .map(forecast -> "forecast for " + forecast.site() + " " + moment(forecast.from()) + " … "
                + moment(forecast.to())).collect(Collectors.joining("; ")))
                + "; without one a sky is clear with a chance of "
                + Wording.plain(clearPriorPercent()) + " %; sheets stay at home below "
                + Wording.plain(leastClearPercent()) + " %";
    }

    private static String moment(OffsetDateTime at) {
        return Wording.date(at.toLocalDate()) + " " + Wording.minute(at);
    }

    /** From when to when the forecast for a site reaches. */
    public record ForecastRow(String site, OffsetDateTime from, OffsetDateTime to) {

        static ForecastRow of(Site site, Interval span) {
            SiteClock clock = new SiteClock(site.zone());
            return new ForecastRow(site.name(), clock.at(span.start()), clock.at(span.endExclusive()));
        }
    }
}
