package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Several sheets of one picture. */
class RepeatsTest {

    private static final String TRIP = """
            sites:
              - {name: Heath, latitude-deg: 47.9, longitude-deg: 9.4, height-m: 700, zone: Europe/Zurich}
            nights: {from: 2027-03-03, to: 2027-03-05}
            camera: {focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11, 16, 22, 32]}
            film: instant-mono-640
            sheets: 9
            wishes:
              - name: Bridge
                point: {azimuth-deg: 200, altitude-deg: 40}
                sky: dark
                tone-stops: -3
                exposure-min: {shortest: 10, longest: 120}
            """;

    @TempDir
    Path folder;
    private TripText trip;

    @BeforeEach
    void trip() {
        trip = new TripText(TRIP, folder);
    }

    @Test
    void repeatsGoToOtherNights() throws IOException {
        TripText repeated = trip.with("sky: dark", "sky: dark\n    repeat: 5");
        assertEquals(List.of(1, 1, 1),
                repeated.nights().stream().map(night -> night.get("windows").size()).toList());
        assertEquals(1, repeated.with("to: 2027-03-05", "to: 2027-03-03").windows().size());
    }

    @Test
    void aBracketSharesANightAndItsSheetsDiffer() throws IOException {
        TripText bracket = trip.with("sky: dark", "sky: dark\n    bracket-stops: 1").with("to: 2027-03-05",
                "to: 2027-03-03");
        Map<String, Double> tones = new TreeMap<>();
        for (JsonNode window : bracket.windows()) {
            tones.put(window.get("wish").stringValue(), window.get("skyToneStops").doubleValue());
        }
        assertEquals(List.of("Bridge", "Bridge +1", "Bridge -1"), new ArrayList<>(tones.keySet()));
        assertEquals(-3, tones.get("Bridge"), 0.28);
        assertEquals(-2, tones.get("Bridge +1"), 0.28);
        assertEquals(-4, tones.get("Bridge -1"), 0.28);
        assertTrue(bracket.checked().contains("Bridge +1 azimuth 200°, altitude 40°, roll 0°; sky dark; tone "
                + "\u22122.0 stops within 0.25;"), bracket::toString);
        assertTrue(trip.checked().contains("tone \u22123.0 stops within 1.5;"));
    }

    @Test
    void aWiderBracketOfFiveReachesFurther() throws IOException {
        List<String> names = trip.with("sky: dark", "sky: dark\n    bracket-stops: 1.5\n    repeat: 5")
                .windows().stream().map(window -> window.get("wish").stringValue()).sorted().toList();
        assertTrue(names.containsAll(List.of("Bridge", "Bridge +1.5", "Bridge -1.5", "Bridge -3")),
                names::toString);
    }

    @Test
    void aBracketWithoutAnAimIsRefusedAtItsPlace() throws IOException {
        TripText bracket = trip.with("sky: dark", "sky: dark\n    bracket-stops: 1");
        assertTrue(bracket.with("tone-stops: -3", "tone-at-most-stops: -3").fault().contains(
                ":11:20 wishes[0].bracket-stops: needs a tone to aim for. Add the key tone-stops."));
        assertTrue(bracket.with("tone-stops: -3", "tone-stops: -3\n    repeat: 1").fault().contains(
                ":11:20 wishes[0].bracket-stops: a bracket of one sheet is none. Make repeat 2 or more"));
        assertTrue(bracket.with("stops: 1", "stops: 0.5").fault().contains(
                ":11:20 wishes[0].bracket-stops: bracket 0.5 stops is out of range; give 1 … 6 stops"));
        assertTrue(bracket.with("wishes:", "wishes:\n  - {name: Bridge +1, pole: {}}").fault().contains(
                ":12:20 wishes[1].bracket-stops: the name \"Bridge +1\" is used twice. Give each its own."));
    }
}
