package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The light of a direction by its sources, and of the whole sky. */
class SkyMapTest {

    private static final String PLACE = " --place 41.05,-2.15,1080 --zone Europe/Madrid";

    @TempDir
    Path folder;

    /** Shares make the whole; the direction is as bright as expose has it. */
    @Test
    void sourcesOfADirectionAreItsWholeLight() {
        JsonNode towards = Run.json("sky --at 2027-02-08T20:10 --azimuth 255 --altitude 14" + PLACE)
                .get("towards");
        assertEquals(1, sum(towards, "lightShare"), 0.001);
        JsonNode exposed = Run.json("expose --at 2027-02-08T20:10 --azimuth 255 --altitude 14 --film"
                + " instant-mono-640 --f-number 8" + PLACE);
        assertEquals(exposed.at("/situation/skyMagArcsec2"), towards.get("magArcsec2"));
        assertEquals(exposed.at("/situation/skyCdM2").doubleValue(), sum(towards, "cdM2"), 1e-6);
        String text = Run.printed("sky --at 2027-02-08T20:10 --azimuth 255 --altitude 14" + PLACE)
                .replaceAll("\\s+", " ");
        assertTrue(text.matches(".*WSW 255°, altitude 14°: [0-9.]+ mag/arcsec² ± 0\\.[0-9]+ stops: zodiacal"
                + " light \\d+ %, faint stars \\d+ %, .*"), text);
    }

    private static double sum(JsonNode towards, String name) {
        return StreamSupport.stream(towards.get("sources").spliterator(), false)
                .mapToDouble(source -> source.get(name).doubleValue()).sum();
    }

    @Test
    void aNightListsThemByTheHour() {
        JsonNode hours = Run.json("sky --night 2027-02-08 --azimuth 255 --altitude 14" + PLACE).get("hours");
        hours.forEach(hour -> assertEquals(1, sum(hour.get("towards"), "lightShare"), 0.001));
        JsonNode first = hours.get(0).get("towards").get("sources");
        assertEquals("twilight", first.get(first.size() - 1).get("source").asString());
        assertTrue(first.get(first.size() - 1).get("lightShare").doubleValue() > 0.99);
        assertTrue(Run.json("sky --night 2027-02-08" + PLACE).at("/hours/0/towards").isNull());
    }

    /** Every cell is the sky of its middle. */
    @Test
    void mapHasTheWholeSky() throws IOException {
        String at = "sky --map --at 2027-02-08T19:20";
        JsonNode cells = Run.json(at + PLACE).get("cells");
        assertEquals(36 * 18, cells.size());
        JsonNode one = cells.get(25 * 18 + 2);
        assertEquals(255, one.get("azimuthDeg").doubleValue());
        assertEquals(12.5, one.get("altitudeDeg").doubleValue());
        assertEquals(Run.json("sky --at 2027-02-08T19:20 --azimuth 255 --altitude 12.5" + PLACE)
                .at("/towards/magArcsec2"), one.get("magArcsec2"));
        // in dusk the west is brighter than the east
        assertTrue(one.get("magArcsec2").doubleValue()
                < cells.get(7 * 18 + 2).get("magArcsec2").doubleValue() - 1);
        cells.forEach(cell -> assertTrue(cell.get("magArcsec2").isNumber(), "a level horizon hides nothing"));
        for (String ending : new String[] {"svg", "html"}) {
            Path file = folder.resolve("map." + ending);
            Run.printed(at + PLACE + " --out " + file);
            String drawn = Files.readString(file);
            assertTrue(drawn.split("<polygon").length > 640, "cells of " + ending);
            assertTrue(drawn.contains("mag/arcsec²") && drawn.contains("north at the top, east to the left"));
        }
    }

    /** The skyline of the demo's Loma Callada hides what is low behind it. */
    @Test
    void landIsDrawnOverTheSky() {
        Run run = Run.of("sky", "--map", "--at", "2027-02-08T23:00", "--trip", "demo-data/trip.yaml",
                "--site", "Loma Callada", "--format", "svg");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("class=\"dark edge\""), "no skyline");
    }

    @ParameterizedTest
    @CsvSource({"--map --night 2027-02-08, --map goes with --at alone",
        "--at 2027-02-08T20:10 --azimuth 255, give both", "--azimuth 255 --altitude 14 --approaches 2,"
        + " --azimuth goes with --at or --night",
        "--at 2027-02-08T20:10 --azimuth 361 --altitude 14, azimuth 361"})
    void whatDoesNotGoTogetherIsRefused(String options, String problem) {
        Run run = Run.of(("sky " + options + PLACE).split(" "));
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(problem), run.err());
    }
}
