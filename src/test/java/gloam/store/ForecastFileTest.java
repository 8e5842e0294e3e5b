package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.field.Forecast;
import gloam.units.Interval;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A forecast's rows as a trip reads them, and what is refused of them. */
class ForecastFileTest {

    private static final Instant EVENING = Instant.parse("2027-02-08T20:00:00Z");

    private static final String DEMO = demo();

    @TempDir
    private Path folder;

    private static String demo() {
        try {
            return Files.readString(Path.of("demo-data/trip-south.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Forecast read(String text) {
        return read("weather.csv", text);
    }

    private Forecast read(String name, String text) {
        Refusals.file(folder, name, text);
        Path trip = Refusals.file(folder, "trip.yaml", DEMO.replaceAll("(?m)^.*skyline.*$", "") + "forecast: "
                + name + "\n");
        return TripFile.read(trip).trip().forecast().everywhere().orElseThrow();
    }

    private List<String> problems(String text) {
        return Refusals.of(folder, () -> read(text));
    }

    @Test
    void everyColumnIsItsOwnInAnyOrder() {
        Forecast forecast = read("""
                # a comment
                wind_kmh, cloud_fraction, temperature_c, dew_point_c, time

                12,0.25,3.5,1.25,2027-02-08T21:00+01:00
                ,1,,,2027-02-08T22:00+01:00
                """);
        assertEquals(List.of(new Forecast.Row(EVENING, 0.25, OptionalDouble.of(3.5), OptionalDouble.of(1.25),
                OptionalDouble.of(12)), new Forecast.Row(EVENING.plusSeconds(3600), 1, OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty())), forecast.rows());
    }

    /**
     * Air of 20 °C and 50 % has its dew point at 9.3 °C, and that of all its water at its own temperature
     * (Magnus).
     */
    @Test
    void humidityGivesTheDewPoint() {
        Forecast forecast = read("""
                time,cloud_fraction,temperature_c,humidity_percent
                2027-02-08T20:00Z,0,20,50
                2027-02-08T21:00Z,0,20,100
                2027-02-08T22:00Z,0,,50
                2027-02-08T23:00Z,0,20,
                """);
        assertEquals(9.3, forecast.rows().get(0).dewPointC().orElseThrow(), 0.05);
        assertEquals(20, forecast.rows().get(1).dewPointC().orElseThrow(), 1e-9);
        assertTrue(forecast.rows().get(2).dewPointC().isEmpty());
        assertTrue(forecast.rows().get(3).dewPointC().isEmpty());
        assertTrue(forecast.coldest(Interval.lasting(EVENING, Duration.ofHours(4))).isEmpty(),
                "no wind is known");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"101 | 0.5 | 5", "1000 | 0.5 | 5", "0 | 0.5 | 5", "50 | 1.01 | 5",
            "50 | -0.1 | 5",
        "50 | 0.5 | 61", "50 | 0.5 | -81", "50 | 0.5 | x"})
    void whatCannotBeIsRefusedAtItsPlace(String humidity, String cloud, String temperature) {
        List<String> problems =
                problems("time,cloud_fraction,humidity_percent,temperature_c\n2027-02-08T20:00Z," + cloud
                + "," + humidity + "," + temperature + "\n");
        assertEquals(1, problems.size(), problems::toString);
        assertTrue(problems.get(0).startsWith("weather.csv:2:"), problems::toString);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"time,temperature_c", "time,cloud_fraction,time",
            "time,cloud_fraction,rain_mm"})
    void otherColumnsAreRefused(String header) {
        List<String> problems = problems(header + "\n2027-02-08T20:00Z,0,0\n");
        assertTrue(problems.get(0).startsWith("weather.csv:1:"), problems::toString);
    }

    @Test
    void aTimeHasItsOffset() {
        assertTrue(problems("time,cloud_fraction\n2027-02-08T20:00,0\n").get(0)
                .startsWith("weather.csv:2:1"));
    }

    /** The first fault of an aerodrome's forecast is told by line and column. */
    @Test
    void aFaultInATafHasItsPlace() {
        List<String> problems = Refusals.of(folder, () ->
                read("weather.taf", "TAF LIXX 081100Z 0812/0912 BKN020\nFM082575 BKN010\n"));
        assertTrue(problems.get(0).startsWith("weather.taf:2:1"), problems::toString);
    }
}
