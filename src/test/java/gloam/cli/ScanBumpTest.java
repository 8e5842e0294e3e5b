package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.frame.SheetMaker;
import gloam.support.Places;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Scans of sheets whose camera was moved while the shutter was open, made by formulas of the test's own. */
class ScanBumpTest {

    @TempDir
    Path folder;

    private static SheetMaker maker() {
        SheetMaker maker = new SheetMaker(Places.at(44.2, 9.7, 620));
        maker.azimuthDeg = 286;
        maker.altitudeDeg = 46;
        maker.rollDeg = -0.6;
        maker.doublesMag = 5.8;
        return maker;
    }

    private Run read(SheetMaker maker, String... options) throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), JournalOfOneScan.TRIP);
        String journal = folder.resolve("journal.jsonl").toString();
        if (!Files.exists(Path.of(journal))) {
            Run added = Run.of(List.of("journal", "add", "--journal", journal, "--trip", trip.toString(),
                    "--azimuth", "286.4", "--altitude", "45.5", "--open", "2027-02-08T20:00:00Z/5400s"));
            assertEquals(0, added.exit(), added.err());
        }
        Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
        List<String> args = new ArrayList<>(List.of("journal", "read", scan.toString(), "--journal", journal,
                "--trip", trip.toString(), "--entry", "1"));
        args.addAll(List.of(options));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run;
    }

    private static void assertAim(double azimuthDeg, double altitudeDeg, JsonNode aim) {
        assertEquals(0, Direction.ofDegrees(azimuthDeg, altitudeDeg).to(Direction.ofDegrees(
                aim.get("azimuthDeg").doubleValue(), aim.get("altitudeDeg").doubleValue())).degrees(), 0.1,
                aim.toString());
    }

    private static void assertMoved(int minute, SheetMaker maker, JsonNode drawn) {
        JsonNode bump = drawn.get("bump");
        assertTrue(bump.isObject(), drawn.get("found").toString());
        assertAim(maker.azimuthDeg, maker.altitudeDeg, drawn.get("found"));
        assertAim(maker.azimuthDeg + maker.bumpAzimuthDeg, maker.altitudeDeg + maker.bumpAltitudeDeg, bump);
        assertEquals(minute * 60, Duration.between(Instant.parse("2027-02-08T20:00:00Z"),
                OffsetDateTime.parse(bump.get("at").stringValue()).toInstant()).toSeconds(), 120);
    }

    private static JsonNode drawn(Run run) {
        return JsonMapper.shared().readTree(run.out()).get("drawn");
    }

    @Tag("search")
    @Test
    void theMomentAndBothAimsAreFound() throws IOException {
        SheetMaker maker = maker();
        maker.bumpMin = 62;
        maker.bumpAzimuthDeg = 0.6;
        maker.bumpAltitudeDeg = 0.4;
        maker.bumpRollDeg = -0.7;
        JsonNode drawn = drawn(read(maker, "--format", "json"));
        assertMoved(62, maker, drawn);
        assertTrue(drawn.get("trailsSeen").intValue() > 60, drawn.get("trailsSeen").toString());
        assertTrue(drawn.at("/openings/0/opensLaterS").isNull());
        assertTrue(drawn.get("clouds").isEmpty(), drawn.get("clouds").toString());
        Path svg = folder.resolve("scan.svg");
        read(maker, "--out", svg.toString());
        String picture = Files.readString(svg);
        assertTrue(picture.contains("; moved at 21:0"));
        assertTrue(picture.contains(">γ Per</text>"));
    }

    /** A fifth of a degree across the trails is half a millimetre on the sheet. */
    @Test
    void aSmallMoveIsKeptWithTheEntry() throws IOException {
        SheetMaker maker = maker();
        maker.bumpMin = 25;
        maker.bumpAzimuthDeg = 0.2;
        maker.bumpAltitudeDeg = 0.14;
        String text = read(maker, "--write").out().replaceAll("\\s+", " ");
        assertTrue(text.contains("(to 2 min) the camera was moved by 0.2°; from then on it pointed to "
                + "azimuth 286"), text.substring(0, 900));
        Run listed = Run.of(List.of("journal", "list", "--journal", folder.resolve("journal.jsonl")
                .toString(), "--format", "json"));
        JsonNode trails = JsonMapper.shared().readTree(listed.out()).at("/sheets/0/reading/trails");
        assertAim(286.2, 46.14, trails.get("bump"));
        assertEquals(0.2, trails.at("/bump/movedDeg").doubleValue(), 0.06);
        assertTrue(Run.of(List.of("journal", "list", "--journal", folder.resolve("journal.jsonl").toString()))
                .out().replaceAll("\\s+", " ").contains(", bumped at "));
    }

    @Tag("search")
    @Test
    void aCloudIsNoMove() throws IOException {
        SheetMaker maker = maker();
        maker.cloudFromMin = 50;
        maker.cloudToMin = 70;
        JsonNode drawn = drawn(read(maker, "--format", "json"));
        assertTrue(drawn.get("bump").isNull(), drawn.get("bump").toString());
        assertEquals(1, drawn.get("clouds").size());
        assertAim(maker.azimuthDeg, maker.altitudeDeg, drawn.get("found"));
    }
}
