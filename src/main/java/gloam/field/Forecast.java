package gloam.field;

import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A forecast of the weather over some hours.
 *
 * <p>Cloud runs straight from row to row.
 *
 * @param rows at least two, no two at one time; put in order
 */
public record Forecast(List<Row> rows) {

    /** Allowed cloud fractions. */
    public static final Range CLOUD = new Range("cloud fraction", 0, 1, "");
    /** Allowed temperatures and dew points. */
    public static final Range TEMPERATURE = new Range("temperature", -80, 60, "°C");
    /** Allowed winds. */
    public static final Range WIND = new Range("wind", 0, 300, "km/h");

    private static final Comparator<Row> BY_TIME = Comparator.comparing(Row::at);

    /** Copies the rows and puts them in order; refuses too few with {@link BadInput}. */
    public Forecast {
        rows = rows.stream().sorted(BY_TIME).toList();
        if (rows.stream().map(Row::at).distinct().count() < Math.max(2, rows.size())) {
            throw new BadInput("a forecast needs at least two rows, and no two at one time; add or take out "
                    + "rows");
        }
    }

    /**
     * The weather at an instant.
     *
     * @param at            when
     * @param cloudFraction share of the sky that is cloudy, 0 to 1
     * @param temperatureC  temperature of the air
     * @param dewPointC     dew point
     * @param windKmH       mean wind ten metres up
     */
    public record Row(Instant at, double cloudFraction, OptionalDouble temperatureC, OptionalDouble dewPointC,
                      OptionalDouble windKmH) {

        /** Refuses a cloud fraction outside its range with {@link gloam.units.BadInput}. */
        public Row {
            CLOUD.check(cloudFraction);
        }
    }

    /** The span it covers. */
    public Interval covers() {
        return new Interval(rows.get(0).at, rows.get(rows.size() - 1).at);
    }

    /** The cloud fraction at an instant; empty where the forecast does not reach. */
    public OptionalDouble cloudAt(Instant at) {
        OptionalDouble none = OptionalDouble.empty();
        int found = Collections.binarySearch(rows, new Row(at, 0, none, none, none), BY_TIME);
        if (found >= 0) {
            return OptionalDouble.of(rows.get(found).cloudFraction);
        }
        int next = -found - 1;
        if (next == 0 || next == rows.size()) {
            return none;
        }
        Row from = rows.get(next - 1);
        Row to = rows.get(next);
        double share = Duration.between(from.at, at).toMillis() / (double) Duration.between(from.at, to.at)
                .toMillis();
        return OptionalDouble.of(from.cloudFraction + share * (to.cloudFraction - from.cloudFraction));
    }

    /** The rows inside a span. */
    public List<Row> during(Interval span) {
        List<Row> during = new ArrayList<>();
        for (Row row : rows) {
            if (span.contains(row.at)) {
                during.add(row);
            }
        }
        return during;
    }

    /** The coldest wind chill inside a span, where temperature and wind are known. */
    public Optional<WindChill> coldest(Interval span) {
        return during(span).stream().filter(row -> row.temperatureC.isPresent() && row.windKmH.isPresent())
                .map(row -> new WindChill(row.at, row.temperatureC.getAsDouble(), row.windKmH.getAsDouble()))
                .min(Comparator.comparingDouble(WindChill::feltC));
    }

    /**
     * The first moment inside a span at which dew threatens a lens, where temperature and dew point are
     * known.
     */
    public Optional<Dew> firstDew(Interval span) {
        return during(span).stream().filter(row -> row.temperatureC.isPresent() && row.dewPointC.isPresent())
                .map(row -> new Dew(row.at, row.temperatureC.getAsDouble(), row.dewPointC.getAsDouble()))
                .filter(Dew::threatens).findFirst();
    }
}
