package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
        String open = run("plan", "pole: {}", "pole: {}\n    site: Heath", "azimuth-deg: 180, altitude-deg: 40}",
                "azimuth-deg: 180, altitude-deg: 40}\n    site: Garden", "to: 2027-03-07", "to: 2027-03-03").out();
        assertTrue(open.contains("\"reason\" : \"wanted at Heath alone; possible at Heath from"), open);
        String closed = run("plan", "pole: {}", "pole: {}\n    site: Heath\n    moon: {altitude-deg: {least: 80}}")
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
}
