package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Keys of a trip that say where and when people go out. */
class PlaceAndTimeKeysTest {

    private static final String TRIP = """
            title: Two places
            sites:
              - {name: Garden, latitude-deg: 47.5, longitude-deg: 9, height-m: 450, zone: Europe/Zurich}
              - {name: Heath, latitude-deg: 47.9, longitude-deg: 9.4, height-m: 700, zone: Europe/Zurich}
            nights: {from: 2027-03-03, to: 2027-03-07}
            camera: {focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11, 16, 22]}
            film: instant-mono-640
            sheets: 9
            wishes:
              - name: Wheel
                pole: {}
                sky: dark
                tone-at-most-stops: -1
                exposure-min: {shortest: 60, longest: 90}
              - name: South
                point: {azimuth-deg: 180, altitude-deg: 40}
                sky: dark
                tone-at-most-stops: -1
                exposure-min: {shortest: 30, longest: 60}
                repeat: 4
            """;

    @TempDir
    Path folder;

    /** The timetable of the trip with some of its text replaced. */
    private List<JsonNode> nights(String... replaced) throws IOException {
        Run run = run("plan", replaced);
        List<JsonNode> nights = new ArrayList<>();
        new ObjectMapper().readTree(run.out()).get("nights").forEach(nights::add);
        return nights;
    }

    private Run run(String command, String... replaced) throws IOException {
        String text = TRIP;
        for (int i = 0; i < replaced.length; i += 2) {
            assertTrue(text.contains(replaced[i]), replaced[i]);
            text = text.replace(replaced[i], replaced[i + 1]);
        }
        Path trip = Files.writeString(folder.resolve("trip.yaml"), text);
        return command.equals("check") ? Run.of("check", "--trip", trip.toString())
                : Run.of(command, "--trip", trip.toString(), "--format", "json");
    }

    private static List<JsonNode> windows(List<JsonNode> nights) {
        List<JsonNode> windows = new ArrayList<>();
        nights.forEach(night -> night.get("windows").forEach(windows::add));
        return windows;
    }

    private static Set<String> sitesOf(String wish, List<JsonNode> nights) {
        Set<String> sites = new TreeSet<>();
        for (JsonNode night : nights) {
            night.get("windows").forEach(window -> {
                if (window.get("wish").stringValue().equals(wish)) {
                    sites.add(night.get("site").stringValue());
                }
            });
        }
        return sites;
    }

    @Test
    void aWishIsTakenAtItsSiteAlone() throws IOException {
        for (String site : List.of("Garden", "Heath")) {
            assertEquals(Set.of(site), sitesOf("Wheel", nights("pole: {}", "pole: {}\n    site: " + site)));
        }
        assertEquals(1, sitesOf("Wheel", nights("pole: {}", "pole: {}\n    site: [Heath, Garden]")).size());
    }

    @Test
    void aWishThatWaitsForAnotherSiteSaysSo() throws IOException {
        String south = "azimuth-deg: 180, altitude-deg: 40}";
        String open = run("plan", "pole: {}", "pole: {}\n    site: Heath", south,
                south + "\n    site: Garden", "to: 2027-03-07", "to: 2027-03-03").out();
        assertTrue(Pattern.compile("\"reason\" : \"wanted at (Heath|Garden) alone; possible at \\1 from")
                .matcher(open)
                .find(), open);
        String closed = run("plan", "pole: {}",
                "pole: {}\n    site: Heath\n    moon: {altitude-deg: {least: 80}}")
                .out();
        assertTrue(closed.contains("\"reason\" : \"at Heath: never the Moon at least 80° high"), closed);
    }

    @Test
    void aSiteThatIsNoneOfTheTripsIsRefusedAtItsPlace() throws IOException {
        assertTrue(run("check", "pole: {}", "pole: {}\n    site: Heat").err()
                .contains(":12:11 wishes[0].site: no site is named \"Heat\". Did you mean Heath?"));
        assertTrue(run("check", "pole: {}", "pole: {}\n    site: [Garden, Moor]").err()
                .contains(":12:20 wishes[0].site[1]: no site is named \"Moor\". Known here: Garden, Heath."));
        assertTrue(run("check", "pole: {}", "pole: {}\n    site: Heath").out().contains("; at Heath;"));
    }

    private static List<LocalDate> datesOf(List<JsonNode> windows) {
        return windows.stream().map(window -> LocalDate.parse(window.get("openAt").stringValue()
                .substring(0, 10))).distinct().toList();
    }

    @Test
    void onlyFreeEveningsArePlanned() throws IOException {
        String at = "to: 2027-03-07}";
        assertEquals(List.of(LocalDate.of(2027, 3, 5), LocalDate.of(2027, 3, 6)),
                nights(at, at + "\nevenings: weekends").stream()
                .map(night -> LocalDate.parse(night.get("night").stringValue())).toList());
        assertEquals(List.of(LocalDate.of(2027, 3, 4), LocalDate.of(2027, 3, 7)),
                nights(at, at + "\nevenings: [sun, 2027-03-04]").stream()
                .map(night -> LocalDate.parse(night.get("night").stringValue())).toList());
        assertTrue(run("check", at, at + "\nevenings: [sun, 2027-03-04]").out()
                .contains("Sun 2027-03-07, evenings sun, 2027-03-04"));
    }

    @Test
    void nightsRanksFreeEveningsAndStaysWithoutGaps() throws IOException {
        String at = "to: 2027-03-07}";
        JsonNode ranks = new ObjectMapper().readTree(run("nights", at,
                "to: 2027-03-07, stay: 2}\nevenings: [wed, fri, sat]").out());
        Set<String> dates = new TreeSet<>();
        ranks.get("nights").forEach(night -> dates.add(night.get("night").stringValue()));
        assertEquals(Set.of("2027-03-03", "2027-03-05", "2027-03-06"), dates);
        Set<String> stays = new TreeSet<>();
        ranks.get("stays").forEach(stay -> stays.add(stay.get("from").stringValue()));
        assertEquals(Set.of("2027-03-05"), stays);
    }

    @Test
    void eveningsThatAreNoneOfTheNightsAreRefusedAtTheirPlace() throws IOException {
        String at = "to: 2027-03-07}";
        assertTrue(run("check", at, at + "\nevenings: [mon, tue]").err()
                .contains(":6:11 evenings: none of the "
                + "nights from 2027-03-03 to 2027-03-07 is among them. Name others."));
        assertTrue(run("check", at, at + "\nevenings: [fri, 2027-03-09]").err().contains(":6:17 evenings[1]: "
                + "2027-03-09 is none of the nights from 2027-03-03 to 2027-03-07"));
        assertTrue(run("check", at, at + "\nevenings: weekend").err()
                .contains(":6:11 evenings: expected weekends, "
                + "a day such as fri, or a date such as 2027-02-12, found \"weekend\". Did you mean "
                + "weekends?"));
    }

    @Test
    void aNightTakesNoMoreSheetsThanAllowed() throws IOException {
        String at = "sheets: 9";
        List<JsonNode> windows = windows(nights(at, at + "\nsheets-per-night: 1"));
        assertEquals(5, windows.size());
        assertEquals(5, datesOf(windows).size());
        String one = run("plan", at, at + "\nsheets-per-night: 1", "to: 2027-03-07", "to: 2027-03-03").out();
        assertTrue(one.contains("\"reason\" : \"the sheets of this night go to wishes worth more\""), one);
        assertTrue(run("check", at, at + "\nsheets-per-night: 1").out().contains("9, at most 1 a night"));
        assertTrue(run("check", at, at + "\nsheets-per-night: 0").err()
                .contains(":9:19 sheets-per-night: sheets a night 0 is out of range; give 1 … 500"));
    }

    @Test
    void nothingIsSetUpOpenedOrClosedOutOfHours() throws IOException {
        String at = "to: 2027-03-07}";
        List<JsonNode> windows = windows(nights(at, at + "\nawake: {from: \"22:00\", until: \"23:45\"}"));
        assertTrue(windows.size() > 2, windows::toString);
        for (JsonNode window : windows) {
            String opens = window.get("openAt").stringValue().substring(11, 16);
            String closes = window.get("closeAt").stringValue().substring(11, 16);
            assertTrue(opens.compareTo("22:20") >= 0 && closes.compareTo("23:45") <= 0
                    && opens.compareTo(closes) < 0, window::toString);
        }
        assertTrue(windows.stream().anyMatch(window -> window.get("wish").stringValue().equals("Wheel")));
        String day = run("plan", at, at + "\nawake: {from: \"09:00\", until: \"17:30\"}").out();
        assertTrue(day.contains("\"reason\" : \"you are up from 09:00 to 17:30, not while the Sun is down"),
                day);
        assertTrue(run("check", at, at + "\nawake: {from: \"22:00\"}").err()
                .contains(":6:8 awake.until: is missing. Add the key until."));
        assertTrue(run("check", at, at + "\nawake: {from: \"22:00\", until: \"01:00\"}").out()
                .contains("awake     22:00 … 01:00"));
    }

    /** Sunrise in Zurich on 4 March is near 07:00, sunset near 18:10: eleven hours by day. */
    @Test
    void aNightGoesByForAWayThatADayIsTooShortFor() throws IOException {
        String at = "to: 2027-03-07}";
        String[] apart = {"pole: {}", "pole: {}\n    site: Heath", "altitude-deg: 40}",
                "altitude-deg: 40}\n    site: Garden",
            "repeat: 4", "repeat: 1", at, "to: 2027-03-04}"};
        String[] near = with(apart, "to: 2027-03-04}\ntravel-min: 600");
        String[] far = with(apart, "to: 2027-03-04}\ntravel-min: 720");
        assertEquals(2, windows(nights(apart)).size());
        assertEquals(2, windows(nights(near)).size());
        assertEquals(1, windows(nights(far)).size());
        assertEquals(2, windows(nights(with(apart, "to: 2027-03-05}\ntravel-min: 720"))).size());
        assertEquals(2, windows(nights(with(apart, "to: 2027-03-04}\ntravel-min: 720\n"
                + "travel: [{from: Heath, to: Garden, minutes: 45}]"))).size());
        assertEquals(1, windows(nights(with(apart, "to: 2027-03-04}\n"
                + "travel: [{from: Heath, to: Garden, minutes: 12h}]"))).size());
        String refused = run("plan", far).out();
        assertTrue(refused.contains("no time to travel here and on to where the other sheets are"), refused);
    }

    private static String[] with(String[] replaced, String last) {
        String[] with = replaced.clone();
        with[with.length - 1] = last;
        return with;
    }

    @Test
    void timetablesWithTravelPreferFewerMoves() throws IOException {
        for (String travel : List.of("\ntravel-min: 30", "\ntravel-min: 90")) {
            List<JsonNode> nights = nights("to: 2027-03-07}", "to: 2027-03-07}" + travel,
                    "latitude-deg: 47.9, longitude-deg: 9.4, height-m: 700",
                    "latitude-deg: 47.5, longitude-deg: 9, height-m: 450");
            List<String> sites = nights.stream().filter(night -> night.get("windows").size() > 0)
                    .map(night -> night.get("site").stringValue()).distinct().toList();
            assertEquals(1, sites.size(), sites::toString);
        }
    }

    @Test
    void waysAreReadAndRefusedAtTheirPlace() throws IOException {
        String at = "to: 2027-03-07}";
        assertTrue(run("check", at, at + "\ntravel-min: 90\ntravel: [{from: Heath, to: Garden, minutes: 45}]")
                .out()
                .contains("travel    Heath – Garden 45 min; 90 min between others"));
        assertTrue(run("check", at, at + "\ntravel: [{from: Heath, to: Moor, minutes: 45}]").err()
                .contains(":6:28 travel[0].to: no site is named \"Moor\". Known here: Garden, Heath."));
        assertTrue(run("check", at, at + "\ntravel-min: -1").err()
                .contains(":6:13 travel-min: travel -1 min is out of range; give 0 … 10080 min"));
        assertTrue(run("check", at, at + "\ntravel: [{from: Heath, to: Garden}]").err()
                .contains("travel[0].minutes: is missing. Add the key minutes."));
    }
}
