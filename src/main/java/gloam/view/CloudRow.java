package gloam.view;

import gloam.planner.Plan;
import java.time.OffsetDateTime;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The cloud that a forecast has for a moment of a night.
 *
 * @param cloudFraction share of the sky that is cloudy, 0 to 1
 */
public record CloudRow(OffsetDateTime at, double cloudFraction) {

    /** The forecast over a night, as far as it reaches. */
    static List<CloudRow> of(List<Plan.SkySample> course, SiteClock clock) {
        return course.stream().flatMap(sky -> sky.cloudFraction().stream()
                .mapToObj(cloud -> new CloudRow(clock.at(sky.at()), cloud))).toList();
    }

    /** Such as "cloud 20 … 80 % by the forecast". */
    static String words(List<CloudRow> forecast) {
        DoubleSummaryStatistics cloud = forecast.stream().mapToDouble(CloudRow::cloudFraction)
                .summaryStatistics();
        List<String> ends = DoubleStream.of(cloud.getMin(), cloud.getMax())
                .mapToObj(end -> Wording.number(100 * end, 0)).distinct().toList();
        return "cloud " + String.join(" … ", ends) + " % by the forecast";
    }
}
