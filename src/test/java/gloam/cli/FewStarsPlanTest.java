package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A sheet of the dark sky on which hardly a star records is pointed out where its wish asks for none. */
class FewStarsPlanTest {

    private static final String TRIP = """
            title: High rim
            sites:
              - name: High rim
                latitude-deg: 28.3
                longitude-deg: -16.6
                height-m: 2100
                zone: Atlantic/Canary
            nights: {from: 2027-10-02, to: 2027-10-02}
            camera:
              name: Box
              focal-length-mm: 106
              frame-mm: {width: 79, height: 79}
              f-numbers: [12]
              focus-m: 3
              spot-um: 40
            film: instant-mono-640
            sheets: 1
            wishes:
              - name: Trails to the south
                point: {azimuth-deg: 180, altitude-deg: 62}
                sky: dark
                tone-at-most-stops: -1
                exposure-min: {shortest: 30, longest: 40}
                time-of-night: {from: "21:15", to: "22:30"}
            """;

    @TempDir
    private Path folder;

    @Test
    void fewStarsAreSaidWhereTheWishAsksForNone() throws IOException {
        JsonNode plan = plan(TRIP);
        int recorded = plan.at("/nights/0/windows/0/recordedStars").intValue();
        assertTrue(recorded < 5, recorded + " stars");
        assertEquals(Optional.of("Trails to the south: only " + recorded
                + " stars leave a trail; the wish does not say how many must: add `records-at-least: 5`"),
                caution(plan));
    }

    @Test
    void aWishThatSaysHowManyOrWantsAToneIsTakenAtItsWord() throws IOException {
        assertEquals(Optional.empty(), caution(plan(TRIP.replace("    sky: dark",
                "    sky: dark\n    records-at-least: 1"))));
        assertEquals(Optional.empty(), caution(plan(TRIP.replace("tone-at-most-stops: -1",
                "tone-stops: -4"))));
    }

    /** In a narrow field few stars are of the catalogue, while many fainter ones record. */
    @Test
    void starsFainterThanTheCatalogueCount() throws IOException {
        JsonNode plan = plan(TRIP.replace("focal-length-mm: 106", "focal-length-mm: 600")
                .replace("width: 79, height: 79", "width: 20, height: 20").replace("[12]", "[5.6]")
                .replace("  focus-m: 3\n", ""));
        JsonNode window = plan.at("/nights/0/windows/0");
        assertTrue(window.get("recordedStars").intValue() < 5, window::toString);
        assertTrue(window.get("fainterStars").intValue() > 5, window::toString);
        assertEquals(Optional.empty(), caution(plan));
    }

    private static Optional<String> caution(JsonNode plan) {
        return plan.get("cautions").valueStream().map(JsonNode::stringValue)
                .filter(caution -> caution.contains("records-at-least")).findFirst();
    }

    private JsonNode plan(String trip) throws IOException {
        Path file = Files.writeString(folder.resolve("trip.yaml"), trip);
        Run run = Run.of(List.of("plan", "--trip", file.toString(), "--format", "json"));
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out());
    }
}
