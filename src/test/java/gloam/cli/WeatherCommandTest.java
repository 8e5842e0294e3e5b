package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What a forecast of cloud does to a timetable. */
class WeatherCommandTest {

    @TempDir
    Path folder;

    /** Two dark nights; a picture that takes an hour or two. */
    private String trip(String more) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Two nights on the moor
                sites:
                  - {name: Moor gate, latitude-deg: 54.5, longitude-deg: -2.3, height-m: 420, zone: Europe/London}
                nights: {from: 2027-01-06, to: 2027-01-07}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 1
                %s
                wishes:
                  - name: Wheel
                    pole: {}
                    sky: dark
                    tone-at-most-stops: -1
                    exposure-min: {shortest: 60, longest: 120}
                """.formatted(more)).toString();
    }

    /** A forecast of cloud for the hours of both nights, each cloud fraction until the next hour named. */
    private String forecast(String... rows) throws IOException {
        StringBuilder text = new StringBuilder("time,cloud_fraction\n");
        for (String row : rows) {
            text.append(row.replace(" ", ",")).append('\n');
        }
        Files.writeString(folder.resolve("clouds.csv"), text);
        return "forecast: clouds.csv";
    }

    private String even(double cloud) throws IOException {
        return forecast("2027-01-06T12:00Z " + cloud, "2027-01-08T12:00Z " + cloud);
    }

    private static JsonNode plan(String trip) throws IOException {
        return new ObjectMapper().readTree(Timetables.json(trip));
    }

    private static double score(String trip) throws IOException {
        return Timetables.windows(Timetables.json(trip)).stream()
                .mapToDouble(window -> window.get("score").asDouble()).sum();
    }

    /** Hanging from the sky's upper edge, by a third of its height where it is overcast. */
    @Test
    void theForecastIsDrawnOverTheNightAsFarAsItReaches() throws IOException {
        String trip = trip(forecast("2027-01-06T18:00Z 0.5", "2027-01-06T20:00Z 0.5", "2027-01-06T22:00Z 1",
                "2027-01-07T00:00Z 0"));
        Run drawn = Run.of("plan", "--trip", trip, "--format", "svg");
        List<double[]> cloud = Pattern.compile("<polygon points=\"([^\"]*)\" class=\"cloud\"")
                .matcher(drawn.out())
                .results().flatMap(found -> Arrays.stream(found.group(1).split(" ")))
                .map(point -> Arrays.stream(point.split(",")).mapToDouble(Double::parseDouble).toArray())
                .toList();
        assertEquals(2 + 6 * 4 + 1, cloud.size(),
                "both ends of the edge, and a point every quarter of an hour");
        double topY = cloud.get(0)[1];
        assertEquals(10, cloud.get(1)[1] - topY, 0.01, "half covered");
        assertEquals(20, cloud.get(1 + 16)[1] - topY, 0.01, "overcast at 22:00");
        assertEquals(0, cloud.get(1 + 24)[1] - topY, 0.01, "clear at midnight");
        double hour = (cloud.get(1 + 24)[0] - cloud.get(1)[0]) / 6;
        assertEquals(hour, cloud.get(1 + 16)[0] - cloud.get(1 + 12)[0], 0.05);
        assertTrue(drawn.out().contains("<title>cloud 0 … 100 % by the forecast</title>"), drawn.out());
        assertTrue(drawn.out().contains("Pale, down from the upper edge: cloud by the forecast"));
        JsonNode forecast = plan(trip).get("nights").get(0).get("forecast");
        assertEquals(25, forecast.size());
        assertEquals(0.75, forecast.get(12).get("cloudFraction").asDouble(), 1e-9);
        assertEquals(Instant.parse("2027-01-06T21:00:00Z"), Timetables.at(forecast.get(12), "at"));
        assertTrue(Run.of("plan", "--trip", trip).out().replaceAll("\\s+", " ")
                .contains("; cloud 0 … 100 % by the forecast"));
    }

    @Test
    void whereThereIsNoForecastNoneIsDrawn() throws IOException {
        assertFalse(Run.of("plan", "--trip", trip(""), "--format", "svg").out().contains("class=\"cloud\""));
        assertEquals(0, plan(trip("")).get("nights").get(0).get("forecast").size());
    }

    /** On a page that is red for the night nothing of it is of another colour. */
    @Test
    void thePageDrawsItInRedToo() throws IOException {
        String page = Run.of("plan", "--trip", trip(even(0.4)), "--format", "html").out();
        assertTrue(page.contains("class=\"cloud\""));
        assertTrue(page.contains("#red:checked ~ * .strip .cloud { fill: var(--line); fill-opacity: .6; "
                + "stroke: var(--ink); }"));
    }

    @Test
    void totalOvercastKeepsEverySheetAtHomeAndSaysSo() throws IOException {
        Run run = Run.of("plan", "--trip", trip(even(1)));
        assertTrue(run.out().contains("0 of 1 sheets planned"), run.out());
        assertTrue(run.out().contains("Wheel: Wed 2027-01-06: overcast by the forecast"), run.out());
    }

    /** A sky of even cloud is clear by what the cloud leaves, however long the exposure is. */
    @Test
    void theForecastStandsBesideTheWindow() throws IOException {
        String trip = trip(even(0.4));
        JsonNode cloud = Timetables.windows(Timetables.json(trip)).get(0).get("cloud");
        assertEquals(0.4, cloud.get("meanFraction").asDouble(), 1e-9);
        assertEquals(0.4, cloud.get("mostFraction").asDouble(), 1e-9);
        assertEquals(0, cloud.get("coveredMin").asInt());
        assertEquals(0.6, cloud.get("clearChance").asDouble(), 1e-9);
        assertTrue(Run.of("plan", "--trip", trip).out().contains("clear 60 % (cloud 40 %)"));
        String page = Run.of("plan", "--trip", trip, "--format", "html").out();
        assertTrue(page.contains("<dd>clear 60\u00a0% (cloud 40\u00a0%)</dd>"), page);
    }

    /** An hour of seven oktas and more leaves a gap in every trail: the exposure keeps clear of it. */
    @Test
    void anExposureKeepsClearOfACoveredStretch() throws IOException {
        String trip = trip(forecast("2027-01-06T12:00Z 0.1", "2027-01-06T22:59Z 0.1", "2027-01-06T23:00Z 0.9",
                "2027-01-07T12:00Z 0.9", "2027-01-08T12:00Z 0.9"));
        JsonNode window = Timetables.windows(Timetables.json(trip)).get(0);
        assertTrue(window.get("closeAt").asString().compareTo("2027-01-06T23:00") < 0, window.toString());
        assertEquals(0, window.get("cloud").get("coveredMin").asInt());
        String within = trip(forecast("2027-01-06T17:00Z 0", "2027-01-06T18:20Z 0", "2027-01-06T18:40Z 0.875",
                "2027-01-06T18:41Z 0", "2027-01-06T19:30Z 0", "2027-01-06T19:31Z 1", "2027-01-08T12:00Z 1"));
        Files.writeString(Path.of(within), Files.readString(Path.of(within))
                .replace("sky: dark", "sky: dark\n    time-of-night: {from: \"18:20\", to: \"19:20\"}"));
        JsonNode gap = Timetables.windows(Timetables.json(within)).get(0).get("cloud");
        double meanFraction = (20 + 1) * 0.875 / 2 / 60;
        assertEquals(meanFraction, gap.get("meanFraction").asDouble(), 1e-4);
        assertEquals((1 - meanFraction) * (1 - gap.get("coveredMin").asInt() / 60.0),
                gap.get("clearChance").asDouble(), 1e-4);
    }

    @Test
    void aBadForecastIsWorseThanNoneAndAGoodOneBetter() throws IOException {
        double none = score(trip(""));
        double bad = score(trip(even(0.6)));
        double good = score(trip(even(0.2)));
        assertTrue(bad < none && none < good, List.of(bad, none, good)::toString);
        double step = 1 / 0.9 - 1; // a chance stands for what lies between it and nine tenths of it
        assertEquals(1, bad / none / (0.4 / 0.5), step);
        assertEquals(1, good / none / (0.8 / 0.5), step);
        assertEquals(none / 2, score(trip("clear-prior-percent: 25")), 1e-3, "scores have three decimals");
        assertTrue(Run.of("plan", "--trip", trip("clear-prior-percent: 25")).out().replaceAll("\\s+", " ")
                .contains("every window counts as clear with a chance of 25 %"));
    }

    /** The night that a forecast leaves out is taken before a worse one, and after a better one. */
    @Test
    void anUnforecastNightStandsBetweenABadAndAGoodOne() throws IOException {
        for (double cloud : new double[] {0.6, 0.4}) {
            JsonNode plan = plan(trip(forecast("2027-01-06T12:00Z " + cloud, "2027-01-07T12:00Z " + cloud)));
            int night = cloud > 0.5 ? 1 : 0;
            assertEquals(1, plan.get("nights").get(night).get("windows").size(), plan.toString());
        }
    }

    @Test
    void sheetsStayAtHomeBelowTheLeastChanceAndTheRemedyIsTrue() throws IOException {
        String text = Run.of("plan", "--trip", trip(even(0.8))).out().replaceAll("\\s+", " ");
        assertTrue(text.contains("clear 20 % (cloud 80 %) at best, sheets stay at home below 30 %; "
                + "possible with least-clear-percent 20 from 18:"), text);
        assertEquals(0, score(trip(even(0.8) + "\nleast-clear-percent: 21")));
        assertTrue(score(trip(even(0.8) + "\nleast-clear-percent: 20")) > 0);
    }

    @Test
    void percentsHaveTheirRange() throws IOException {
        Run run = Run.of("plan", "--trip", trip("least-clear-percent: 101\nclear-prior-percent: 0"));
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("8:22 least-clear-percent: least chance of a clear sky 101 % is out"),
                run.err());
        assertTrue(run.err().contains("9:22 clear-prior-percent: chance of a clear sky without a forecast 0 "
                + "% " + "is out"), run.err());
    }
}
