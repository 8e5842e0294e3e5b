package gloam.field;

import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A forecast of the weather over some hours.
 *
 * <p><b>Model.</b> The chance that a span stays clear is exp(∫ ln(1 − c) dt / 2 h) for a cloud fraction c,
 * straight from row to row and cut to 0.02 … 0.98: fields of cloud that follow each other in about two hours.
 * <b>Valid.</b> Spans of minutes to hours inside the forecast. <b>Error.</b> Common sense, no source; good
 * for weighing one window against another. <b>Departures.</b> None.
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

    private static final double LEAST_CLOUD = 0.02;
    private static final double MOST_CLOUD = 0.98;
    /** How long a field of cloud takes to be followed by another that knows nothing of it. */
    private static final double MEMORY_S = 7200;
    private static final double NEARLY_EVEN = 1e-9;

    /** Copies the rows and puts them in order; refuses too few with {@link BadInput}. */
    public Forecast {
        rows = rows.stream().sorted(Comparator.comparing(Row::at)).toList();
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

    /**
     * The chance that the sky stays clear over a span, 0 to 1; empty unless the forecast covers all of it.
     */
    public OptionalDouble clearChance(Interval span) {
        if (span.start().isBefore(covers().start()) || span.endExclusive().isAfter(covers().endExclusive())) {
            return OptionalDouble.empty();
        }
        double sumS = 0;
        for (int i = 1; i < rows.size(); i++) {
            Row from = rows.get(i - 1);
            Row to = rows.get(i);
            sumS += span.intersect(new Interval(from.at, to.at)).map(part -> part.seconds() * meanLogarithm(
                    clear(from, to, part.start()), clear(from, to, part.endExclusive()))).orElse(0.0);
        }
        return OptionalDouble.of(Math.exp(sumS / MEMORY_S));
    }

    private static double clear(Row from, Row to, Instant at) {
        double share = Duration.between(from.at, at).toMillis() / (double) Duration.between(from.at, to.at)
                .toMillis();
        double cloud = from.cloudFraction + share * (to.cloudFraction - from.cloudFraction);
        return 1 - Math.max(LEAST_CLOUD, Math.min(MOST_CLOUD, cloud));
    }

    /** Mean of the natural logarithm of what runs straight from one number to another, both more than 0. */
    static double meanLogarithm(double from, double to) {
        return Math.abs(to - from) < NEARLY_EVEN ? Math.log(from)
                : (to * Math.log(to) - from * Math.log(from)) / (to - from) - 1;
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
