package gloam.cli;

import static gloam.cli.Finite.assertSays;
import static gloam.cli.Finite.json;
import static gloam.cli.Finite.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** At the edges of what a night and a camera may be, plans are plans or refused in words. */
class FinitePlansTest {

    @TempDir
    private Path folder;

    /**
     * One sheet about the pole, asked three ways; the commands sample the sky's light each in its own way.
     */
    @Test
    void everyCommandTellsOneTrailLimit() throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), trip("""
                  focal-length-mm: 120
                  frame-mm: {width: 80, height: 80}
                """, "point: {azimuth-deg: 0, altitude-deg: 41}\n    sky: dark", 180, 300)
                .replace("tone-at-most-stops: 5", "tone-at-most-stops: -1"));
        JsonNode window = json(List.of("plan", "--trip", trip.toString())).orElseThrow()
                .at("/nights/0/windows/0");
        List<String> sheet = List.of("--trip", trip.toString(), "--azimuth", "0", "--altitude", "41",
                "--f-number",
                window.at("/fNumber").asString(), "--from", window.at("/openAt").asString(), "--lasts",
                (int) window.at("/correctedS").doubleValue() + "s");
        double plannedMag = window.at("/trailLimitMag").doubleValue();
        assertTrue(plannedMag > 0, () -> "a limit there is: " + plannedMag);
        assertEquals(plannedMag, json(with(sheet, "trail", "--star", "10.7,88.9")).orElseThrow()
                .at("/sheet/trailLimitMag").doubleValue(), 0.02);
        assertEquals(plannedMag, json(with(sheet, "expose")).orElseThrow()
                .at("/exposures/0/trailLimitMag").doubleValue(), 0.02);
        assertSays(with(sheet, "expose"), "next to the pole, draws little more than a point");
        assertSays(with(sheet, "trail", "--star", "10.7,88.9"),
                "next to the pole, draw little more than points");
    }

    @Test
    void aFullCircleInPolarNightIsPlannedOrRefusedInWords() throws IOException {
        String site = trip("""
                  focal-length-mm: 120
                  frame-mm: {width: 80, height: 80}
                """, "pole: {}", 1440, 1440).replace("latitude-deg: 41", "latitude-deg: 78.2")
                .replace("2027-02-08", "2027-12-19").replace("2027-02-09", "2027-12-19");
        Path trip = Files.writeString(folder.resolve("polar.yaml"), site);
        JsonNode plan = json(List.of("plan", "--trip", trip.toString())).orElseThrow();
        assertEquals(86_400, plan.at("/nights/0/windows/0/correctedS").doubleValue());
        Path arc = Files.writeString(folder.resolve("arc.yaml"),
                site.replace("tone-at-most-stops: 5", "arc-deg: {most: 360}"));
        assertSays(List.of("plan", "--trip", arc.toString()), "the sky turns by 360° in 23 h 56 min");
    }

    @ParameterizedTest
    @ValueSource(strings = {"equidistant", "equisolid"})
    void aCircularFisheyePlans(String projection) throws IOException {
        Path trip = Files.writeString(folder.resolve("fisheye.yaml"), trip("""
                  focal-length-mm: 15
                  projection: %s
                  frame-mm: {width: 203, height: 254}
                """.formatted(projection), "follow: {star: Arcturus}\n    records-at-least: 5", 60, 120));
        JsonNode window = json(List.of("plan", "--trip", trip.toString())).orElseThrow()
                .at("/nights/0/windows/0");
        assertTrue(window.at("/framedStars").intValue() > 500, "half the sky is in its circle");
    }

    private static String trip(String camera, String aim, int shortestMin, int longestMin) {
        return """
                title: Edges
                sites:
                  - {name: Hill, latitude-deg: 41, longitude-deg: 0, height-m: 100, zone: UTC}
                nights: {from: 2027-02-08, to: 2027-02-09}
                camera:
                %s  f-numbers: [11, 45]
                film: instant-mono-640
                sheets: 1
                wishes:
                  - name: Wish
                    %s
                    tone-at-most-stops: 5
                    exposure-min: {shortest: %d, longest: %d}
                """.formatted(camera, aim, shortestMin, longestMin);
    }
}
