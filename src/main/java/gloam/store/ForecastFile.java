package gloam.store;

import gloam.field.Dew;
import gloam.field.Forecast;
import gloam.field.Taf;
import gloam.units.Range;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Reads a forecast: a table whose name ends in .csv, or any other file with an aerodrome forecast (TAF).
 *
 * <p>The table's columns are {@code time} (ISO 8601 with offset) and {@code cloud_fraction} (0 to 1), then
 * any of {@code temperature_c}, {@code dew_point_c} or {@code humidity_percent}, {@code wind_kmh}; a cell may
 * be empty.
 */
public final class ForecastFile {

    private static final List<String> NEEDED = List.of("time", "cloud_fraction");
    private static final List<String> KNOWN = List.of("time", "cloud_fraction", "temperature_c",
            "dew_point_c", "humidity_percent", "wind_kmh");
    private static final Range HUMIDITY = new Range("humidity", 1, 100, "%");

    private ForecastFile() {
    }

    /** The forecast in a file named at an item; the date gives the month of a TAF's days. */
    static Forecast named(Item item, LocalDate near) {
        Source source = Source.named(item);
        if (source.path().toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            List<String> columns = columns(source);
            return new Forecast(Csv.read(source, columns, cells -> row(cells, columns)));
        }
        String text = source.text();
        return Taf.read(text, near, (at, problem) -> source.findings()
                .add(new Problem(place(source, text, at), problem)))
                .orElseThrow(Fault::alreadyNoted);
    }

    private static Where place(Source source, String text, int at) {
        List<String> before = (text.substring(0, at) + "|").lines().toList();
        return new Where(source.name(), before.size(), before.get(before.size() - 1).length(), "");
    }

    private static List<String> columns(Source source) {
        return source.text().lines()
                .filter(line -> !line.isBlank() && !line.stripLeading().startsWith("#")).findFirst()
                .map(line -> Arrays.stream(line.split(",")).map(String::strip).toList())
                .filter(ForecastFile::good).orElse(NEEDED);
    }

    private static boolean good(List<String> columns) {
        return KNOWN.containsAll(columns) && columns.containsAll(NEEDED)
                && columns.stream().distinct().count() == columns.size();
    }

    private static Forecast.Row row(List<Item> cells, List<String> columns) {
        Value<Instant> at = cells.get(columns.indexOf("time")).value(ForecastFile::instant);
        Value<Double> cloud = cells.get(columns.indexOf("cloud_fraction"))
                .value(cell -> cell.number(Forecast.CLOUD));
        Value<OptionalDouble> temperatureC = cell(cells, columns, "temperature_c", Forecast.TEMPERATURE);
        Value<OptionalDouble> humidity = cell(cells, columns, "humidity_percent", HUMIDITY);
        Value<OptionalDouble> dewPointC = cell(cells, columns, "dew_point_c", Forecast.TEMPERATURE);
        Value<OptionalDouble> wind = cell(cells, columns, "wind_kmh", Forecast.WIND);
        boolean reckoned = temperatureC.get().isPresent() && humidity.get().isPresent();
        return new Forecast.Row(at.get(), cloud.get(), temperatureC.get(), reckoned ? OptionalDouble.of(
                Dew.pointC(temperatureC.get().getAsDouble(), humidity.get().getAsDouble())) : dewPointC.get(),
                wind.get());
    }

    private static Value<OptionalDouble> cell(List<Item> cells, List<String> columns, String name,
            Range range) {
        int column = columns.indexOf(name);
        Item cell = cells.get(Math.max(0, column));
        return cell.value(item -> column < 0 || item.empty() ? OptionalDouble.empty()
                : OptionalDouble.of(item.number(range)));
    }

    private static Instant instant(Item item) {
        try {
            return OffsetDateTime.parse(item.text()).toInstant();
        } catch (DateTimeParseException bad) {
            throw item.fault("expected a time with offset such as 2027-02-08T21:00+01:00, found "
                    + Shown.quoted(item.text()));
        }
    }
}
