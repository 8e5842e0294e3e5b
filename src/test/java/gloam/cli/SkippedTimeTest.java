package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Nights where the clocks skip or repeat times, or a whole day. */
class SkippedTimeTest {

    /** What a night without a forecast counts, as the guide says. */
    private static final double CLEAR_PRIOR = 0.5;

    private static final List<String> APIA = List.of("--place", "-13.8,-171.8,10", "--zone", "Pacific/Apia");

    /**
     * Samoa went over the date line on 2011-12-30, a date that its clocks never showed: IANA time zone data.
     */
    @Test
    void aDayThatTheClocksSkipHasNoNight() throws IOException {
        List<String> dates = nights(run(APIA, "nights", "--from", "2011-12-28", "--to", "2012-01-01"))
                .stream()
                .map(night -> night.get("night").asString()).sorted().toList();
        assertEquals(List.of("2011-12-28", "2011-12-29", "2011-12-31", "2012-01-01"), dates);
        for (List<String> asked : List.of(List.of("nights", "--from", "2011-12-30"),
                List.of("sky", "--night", "2011-12-30"), List.of("sky", "--at", "2011-12-30T21:00"))) {
            Run refused = run(APIA, asked.toArray(String[]::new));
            assertEquals(2, refused.exit(), refused.out());
            assertTrue(refused.err().contains("does not exist in Pacific/Apia: the clocks skip that day"),
                    refused.err());
        }
    }

    @ParameterizedTest
    @CsvSource({"Pacific/Apia, '-13.8,-171.8,10', 2011-12-27, 2012-01-02",
        "America/Havana, '23,-82,10', 2027-03-12, 2027-03-16",
        "America/Havana, '23,-82,10', 2027-11-05, 2027-11-09",
        "Australia/Lord_Howe, '-31.5,159,10', 2027-10-01, 2027-10-05",
        "America/Sao_Paulo, '-23,-46,700', 2017-10-13, 2017-10-17",
        "Europe/Madrid, '41,-2,700', 2027-10-29, 2027-11-02"})
    void everySunsetBelongsToOneNight(String zone, String place, String from, String to) throws IOException {
        List<Instant> sunsets = new ArrayList<>();
        List<String> where = List.of("--place", place, "--zone", zone);
        for (JsonNode night : nights(run(where, "nights", "--from", from, "--to", to))) {
            List<Instant> its = StreamSupport.stream(night.get("events").spliterator(), false)
                    .filter(event -> event.get("what").asString().equals("sunset"))
                    .map(event -> OffsetDateTime.parse(event.get("at").asString()).toInstant()).toList();
            assertEquals(1, its.size(), night.get("night").asString());
            sunsets.addAll(its);
        }
        sunsets.sort(null);
        for (int i = 1; i < sunsets.size(); i++) {
            // sunset moves by under 5 minutes a day at these latitudes
            assertEquals(86_400, sunsets.get(i).getEpochSecond() - sunsets.get(i - 1).getEpochSecond(), 300);
        }
    }

    @Test
    void aTripOverTheSkippedDayIsPlannedAndItsHoursAreByTheClock(@TempDir Path folder) throws IOException {
        Path trip = trip(folder,
                "latitude-deg: -13.8, longitude-deg: -171.8, height-m: 10, zone: Pacific/Apia",
                "from: 2011-12-29, to: 2011-12-31", "time-of-night: {from: \"20:30\", to: \"02:30\"}");
        List<String> dates = nights(run(List.of("--trip", trip.toString()), "plan")).stream()
                .map(night -> night.get("night").asString()).toList();
        assertEquals(List.of("2011-12-29", "2011-12-31"), dates);
        for (JsonNode night : nights(run(List.of("--trip", trip.toString()), "nights"))) {
            assertEquals(CLEAR_PRIOR, night.get("score").asDouble(), night.toString());
        }
        Path skipped = trip(folder,
                "latitude-deg: -13.8, longitude-deg: -171.8, height-m: 10, zone: Pacific/Apia",
                "from: 2011-12-30, to: 2011-12-30", "arc-deg: {least: 1}");
        Run refused = Run.of("plan", "--trip", skipped.toString());
        assertEquals(2, refused.exit(), refused.out());
        assertTrue(refused.err().contains("2011-12-30 does not exist"), refused.err());
    }

    /** Madrid's clocks go from 02:00 on to 03:00 on 2027-03-28: what lies between has no time in it. */
    @Test
    void hoursThatTheClocksSkipHoldNoTime(@TempDir Path folder) throws IOException {
        Path trip = trip(folder, "latitude-deg: 41, longitude-deg: -2, height-m: 700, zone: Europe/Madrid",
                "from: 2027-03-27, to: 2027-03-28", "time-of-night: {from: \"02:20\", to: \"03:00\"}");
        for (JsonNode night : nights(run(List.of("--trip", trip.toString()), "nights"))) {
            boolean change = LocalDate.parse(night.get("night").asString()).equals(LocalDate.of(2027, 3, 27));
            assertEquals(change ? 0 : CLEAR_PRIOR, night.get("score").asDouble(), night.toString());
        }
    }

    /** The data cover 2000-01-01 to 2059-12-31, whole nights in UTC from the first noon to the last. */
    @ParameterizedTest
    @CsvSource({"1999-12-31, 3", "2000-01-01, 0", "2059-12-30, 0", "2059-12-31, 3"})
    void firstAndLastCoveredNight(String date, int exit) {
        for (String command : List.of("nights --from ", "sky --night ")) {
            Run run = Run.real(List.of((command + date + " --place 41,-2,700 --zone UTC").split(" ")));
            assertEquals(exit, run.exit(), run.err());
            assertEquals(exit != 0, run.err().contains("the data cover 2000-01-01 … 2059-12-31"), run.err());
        }
    }

    private static Path trip(Path folder, String site, String nights, String limit) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Clocks
                sites: [{name: Shore, %s}]
                nights: {%s}
                camera: {name: Box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11],
                         changeover-min: 5}
                film: instant-mono-640
                sheets: 4
                wishes: [{name: East, point: {azimuth-deg: 90, altitude-deg: 40}, sky: any,
                          tone-at-most-stops: -1, exposure-min: {shortest: 10, longest: 20}, %s}]
                """.formatted(site, nights, limit));
    }

    private static Run run(List<String> where, String... command) {
        List<String> args = new ArrayList<>(List.of(command));
        args.addAll(where);
        args.addAll(List.of("--format", "json"));
        return Run.of(args);
    }

    private static List<JsonNode> nights(Run run) throws IOException {
        assertEquals(0, run.exit(), run.err());
        JsonNode nights = new ObjectMapper().readTree(run.out()).get("nights");
        return StreamSupport.stream(nights.spliterator(), false).toList();
    }
}
