package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import gloam.support.Places;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A journal with an entry whose sheet is scanned, the scan made by formulas of the test's own. */
abstract class JournalOfOneScan {

    static final String TRIP = """
            sites:
              - {name: Pasture, place: "44.2,9.7,620", zone: UTC}
            nights: {from: 2027-02-08, to: 2027-02-08}
            camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8]}
            film: instant-mono-640
            sheets: 1
            wishes:
              - {name: Pond, point: {azimuth-deg: 170, altitude-deg: 40}, sky: dark,
                 exposure-min: {shortest: 30, longest: 30}}
            """;

    @TempDir
    Path folder;

    Path trip;

    @BeforeEach
    void aTrip() throws IOException {
        // oblong: such a sheet lies in four ways, a square one in eight
        trip = Files.writeString(folder.resolve("trip.yaml"), TRIP.replace("80x80", "80x60"));
    }

    /** The command that reads a scan of an entry, both made in this folder. */
    static String question(Path folder) throws IOException {
        SheetMaker maker = elsewhere();
        Path trip = Files.writeString(folder.resolve("read.yaml"), TRIP.replace("80x80", "80x60"));
        String files = " --journal " + folder.resolve("read.jsonl") + " --trip " + trip;
        Run.printed("journal add --azimuth 170 --altitude 40 --open " + maker.openings.get(0).from() + "/90m"
                + files);
        return "journal read " + Files.write(folder.resolve("read.jpg"), maker.jpeg()) + " --entry 1" + files;
    }

    static SheetMaker maker() {
        SheetMaker maker = new SheetMaker(Places.at(44.2, 9.7, 620));
        maker.heightMm = 60;
        maker.width = 750;
        maker.height = 600;
        return maker;
    }

    /** Adds an entry that notes an aim and openings. */
    void add(double azimuthDeg, double altitudeDeg, List<SheetMaker.Open> openings) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", journal(), "--trip",
                trip.toString(), "--azimuth", String.valueOf(azimuthDeg), "--altitude",
                String.valueOf(altitudeDeg)));
        openings.forEach(open -> args.addAll(List.of("--open", open.from() + "/"
                + Duration.between(open.from(), open.to()).toSeconds() + "s")));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
    }

    String journal() {
        return folder.resolve("journal.jsonl").toString();
    }

    Run read(SheetMaker maker, String options) throws IOException {
        return read(Files.write(folder.resolve("scan.jpg"), maker.jpeg()), options);
    }

    Run read(Path scan, String options) {
        List<String> args = new ArrayList<>(List.of("journal", "read", scan.toString(), "--journal",
                journal(), "--trip", trip.toString()));
        args.addAll(List.of(options.strip().split("\\s+")));
        return Run.of(args);
    }

    JsonNode json(SheetMaker maker, String options) throws IOException {
        Run run = read(maker, "--entry 1 --format json " + options);
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out());
    }

    static double number(JsonNode json, String path) {
        assertTrue(json.at(path).isNumber(), path + " in " + json);
        return json.at(path).doubleValue();
    }

    static SheetMaker elsewhere() {
        SheetMaker maker = maker();
        maker.azimuthDeg = 171.3;
        maker.altitudeDeg = 38.9;
        maker.rollDeg = 1.2;
        maker.doublesMag = 6.5;
        return maker;
    }

    static void assertFound(SheetMaker maker, JsonNode found) {
        assertEquals(maker.azimuthDeg, number(found, "/drawn/found/azimuthDeg"), 0.1);
        assertEquals(maker.altitudeDeg, number(found, "/drawn/found/altitudeDeg"), 0.1);
        assertEquals(maker.rollDeg, number(found, "/drawn/found/rollDeg"), 0.2);
        assertEquals(maker.focalMm, number(found, "/drawn/found/focalLengthMm"), 0.006 * maker.focalMm);
        assertTrue(number(found, "/drawn/residualMm") < 0.15);
    }
}
