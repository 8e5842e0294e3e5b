package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Timetables of nights on which the clocks change (IANA time zone database), and of times after midnight. */
class ClockChangeNightsTest {

    private static final ZoneId ZURICH = ZoneId.of("Europe/Zurich");
    private static final Pattern HOUR =
            Pattern.compile("<text x=\"([0-9.]+)\"[^>]*class=\"middle\">(\\d\\d)</text>");
    private static final Pattern BAR =
            Pattern.compile("<rect x=\"([0-9.]+)\" y=\"176\\.00\" width=\"([0-9.]+)\"");

    @TempDir
    private Path folder;

    private String plan(String night, String from, String to, String format) throws IOException {
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, """
                title: Clock change
                sites:
                  - {name: Home field, latitude-deg: 47.2, longitude-deg: 9.4, height-m: 700, zone: Europe/Zurich}
                nights: {from: %1$s, to: %1$s}
                camera: {name: Box, focal-length-mm: 114, frame-mm: 4x5in, f-numbers: [8, 11, 16], spot-um: 40}
                film: instant-mono-640
                sheets: 3
                wishes:
                  - {name: Dawn, point: {azimuth-deg: 110, altitude-deg: 12}, sky: dawn, tone-stops: 0,
                     exposure-min: {shortest: 10, longest: 60}}
                  - {name: Narrow, point: {azimuth-deg: 180, altitude-deg: 40}, sky: any, tone-at-most-stops: -1,
                     time-of-night: {from: "%2$s", to: "%3$s"}, exposure-min: {shortest: 20, longest: 40}}
                """.formatted(night, from, to));
        Run run = Run.of("plan", "--trip", trip.toString(), "--format", format);
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    /**
     * Each hour of the strip stands where that instant lies between two windows whose instants the JSON
     * gives.
     */
    @ParameterizedTest
    @CsvSource({"2027-10-30, 00 01 02 02 03 04", "2027-03-27, 00 01 03 04"})
    void hoursOfTheStripAreThoseOfTheClocks(String night, String aroundTheChange) throws IOException {
        String svg = plan(night, "19:00", "23:00", "svg");
        List<Double> bars = new ArrayList<>();
        for (Matcher bar = BAR.matcher(svg); bar.find();) {
            bars.add(Double.parseDouble(bar.group(1)));
            bars.add(Double.parseDouble(bar.group(1)) + Double.parseDouble(bar.group(2)));
        }
        List<Instant> moments = new ArrayList<>();
        Timetables.windows(plan(night, "19:00", "23:00", "json")).forEach(window -> {
            moments.add(Timetables.at(window, "openAt"));
            moments.add(Timetables.at(window, "closeAt"));
        });
        assertEquals(4, bars.size());
        assertEquals(4, moments.size());
        double secondsAPoint = (moments.get(3).getEpochSecond() - moments.get(0).getEpochSecond())
                / (bars.get(3) - bars.get(0));
        List<String> hours = new ArrayList<>();
        for (Matcher hour = HOUR.matcher(svg); hour.find();) {
            hours.add(hour.group(2));
            Instant at = moments.get(0).plusSeconds(
                    Math.round((Double.parseDouble(hour.group(1)) - bars.get(0)) * secondsAPoint));
            Instant nearest = Instant.ofEpochSecond(Math.round(at.getEpochSecond() / 3600.0) * 3600);
            assertEquals(hour.group(2), "%02d".formatted(nearest.atZone(ZURICH).getHour()), "hour at " + at);
            assertTrue(Math.abs(at.getEpochSecond() - nearest.getEpochSecond()) < 60, "hour at " + at);
        }
        assertTrue(String.join(" ", hours).contains(aroundTheChange), hours.toString());
        assertTrue(svg.contains(">UTC+02:00<") && svg.contains(">UTC+01:00<"));
    }

    @Test
    void aTimeThatClocksSkipIsSaidToBeSkipped() throws IOException {
        String text = plan("2027-03-27", "02:10", "02:55", "text").replaceAll("\\s+", " ");
        assertTrue(text.contains("- Narrow: Sat 2027-03-27: the clocks skip all of 02:10 to 02:55: on Sun "
                + "2027-03-28 the clocks go forward from 02:00 to 03:00"), text);
        assertFalse(text.contains("Sun is up all through"), text);
    }

    /** Of a time that is skipped in part the rest is named, and served. */
    @ParameterizedTest
    @CsvSource({"02:10, 03:40, 03:00, 03:40", "01:00, 02:30, 01:00, 01:59"})
    void onlyTimesThatComeAreNamed(String from, String to, String first, String last) throws IOException {
        String json = plan("2027-03-27", from, to, "json");
        Matcher narrow = Pattern.compile(
                "\"wish\" : \"Narrow\".*?\"openAt\" : \"2027-03-28T(\\d\\d:\\d\\d)[^\"]*\",\\s*"
                + "\"closeAt\" : \"2027-03-28T(\\d\\d:\\d\\d)", Pattern.DOTALL).matcher(json);
        assertTrue(narrow.find(), json);
        assertTrue(narrow.group(1).compareTo(first) >= 0 && narrow.group(2).compareTo(last) <= 0,
                narrow.group());
    }

    /** Such a time is named without what is skipped where it is why a wish is refused, too. */
    @ParameterizedTest
    @CsvSource({"2027-03-27, 22:00, 02:30, 'the clock between 22:00 and 01:59 only 22:00 – Sun 2027-03-28 "
            + "01:59'",
        "2027-03-27, 02:10, 03:40, 'the clock between 03:00 and 03:40 only Sun 2027-03-28 03:00–03:40'",
        "2027-07-03, 13:00, 15:00, the Sun is up all through the clock between 13:00 and 15:00"})
    void aRefusalNamesOnlyTimesThatCome(String night, String from, String to, String words)
    throws IOException {
        plan(night, from, to, "text");
        Path trip = folder.resolve("dawn.yaml");
        Files.writeString(trip, Files.readString(folder.resolve("trip.yaml")).replace("sky: any", "sky: dawn")
                .replace("azimuth-deg: 180", "azimuth-deg: 330"));
        String text = Run.of("plan", "--trip", trip.toString()).out().replaceAll("\\s+", " ");
        assertTrue(text.contains(words), text);
    }

    @Test
    void aTimeThatComesTwiceSaysWhich() throws IOException {
        String text = plan("2027-10-30", "02:10", "02:55", "text").replaceAll("\\s+", " ");
        assertTrue(text.contains("Sun 02:10+02:00"), text);
        assertTrue(text.contains("on Sun 2027-10-31 the clocks go back from 03:00 to 02:00"), text);
    }

    /**
     * Times after midnight, wherever they are told: heading and table, darkness, card, strip and calendar.
     */
    @Test
    void timesAfterMidnightHaveTheirDate() throws IOException {
        Matcher open = Pattern.compile(
                "\"wish\" : \"Narrow\".*?\"openAt\" : \"2027-02-09T(\\d\\d:\\d\\d)[^\"]*\",\\s*"
                + "\"closeAt\" : \"2027-02-09T(\\d\\d:\\d\\d)", Pattern.DOTALL)
                .matcher(plan("2027-02-08", "01:00", "03:00", "json"));
        assertTrue(open.find());
        String text = plan("2027-02-08", "01:00", "03:00", "text");
        assertTrue(text.contains("Mon 2027-02-08 to Tue 2027-02-09, Home field"), text);
        assertTrue(text.contains("Tue " + open.group(1) + "  Tue " + open.group(2)), text);
        assertTrue(Pattern.compile("dark 19:\\d\\d – Tue 2027-02-09 05:\\d\\d").matcher(text).find(), text);
        String whole = "Tue 2027-02-09 " + open.group(1) + " – " + open.group(2);
        assertTrue(plan("2027-02-08", "01:00", "03:00", "html")
                .contains("<p class=\"time\"><span class=\"short\">Tue <time>2027-02-09</time></span> "
                        + "<span class=\"short\">" + open.group(1) + " – " + open.group(2) + "</span></p>"));
        assertTrue(plan("2027-02-08", "01:00", "03:00", "svg")
                .contains("<title>Narrow, " + whole + "</title>"));
        assertTrue(plan("2027-02-08", "01:00", "03:00", "ics").replace("\r\n ", "").replace("\n ", "")
                .contains("DESCRIPTION:Open " + whole + " (Europe/Zurich)"));
    }

    /** What another night would serve is named by the date on which it opens, not by that of its evening. */
    @Test
    void anotherNightIsNamedByTheDateOfTheOpening() throws IOException {
        Path trip = folder.resolve("two.yaml");
        plan("2027-02-21", "01:00", "03:00", "text");
        Files.writeString(trip, Files.readString(folder.resolve("trip.yaml"))
                .replace("to: 2027-02-21", "to: 2027-03-02")
                .replace("sheets: 3", "sheets: 1").replace("sky: any", "sky: dark")
                .replace("sky: dawn", "sky: dawn, worth: 100"));
        Run run = Run.of("plan", "--trip", trip.toString(), "--format", "json");
        Matcher opens = Pattern.compile("possible from (\\w{3}) (\\S+) 0[12]:\\d\\d")
                .matcher(run.out().replaceAll("\\s+", " "));
        assertTrue(opens.find(), run.out());
        assertTrue(opens.group(2).compareTo("2027-02-22") > 0, opens.group());
    }
}
