package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import gloam.support.Places;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Scans made by formulas of the test's own, read through the command line. */
class JournalReadTest {

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

    private Path trip;

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

    private static SheetMaker maker() {
        SheetMaker maker = new SheetMaker(Places.at(44.2, 9.7, 620));
        maker.heightMm = 60;
        maker.width = 750;
        maker.height = 600;
        return maker;
    }

    /** Adds an entry that notes an aim and openings. */
    private void add(double azimuthDeg, double altitudeDeg, List<SheetMaker.Open> openings) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", journal(), "--trip",
                trip.toString(), "--azimuth", String.valueOf(azimuthDeg), "--altitude",
                String.valueOf(altitudeDeg)));
        openings.forEach(open -> args.addAll(List.of("--open", open.from() + "/"
                + Duration.between(open.from(), open.to()).toSeconds() + "s")));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
    }

    private String journal() {
        return folder.resolve("journal.jsonl").toString();
    }

    private Run read(SheetMaker maker, String options) throws IOException {
        return read(Files.write(folder.resolve("scan.jpg"), maker.jpeg()), options);
    }

    private Run read(Path scan, String options) {
        List<String> args = new ArrayList<>(List.of("journal", "read", scan.toString(), "--journal",
                journal(), "--trip", trip.toString()));
        args.addAll(List.of(options.strip().split("\\s+")));
        return Run.of(args);
    }

    private JsonNode json(SheetMaker maker, String options) throws IOException {
        Run run = read(maker, "--entry 1 --format json " + options);
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out());
    }

    private static double number(JsonNode json, String path) {
        assertTrue(json.at(path).isNumber(), path + " in " + json);
        return json.at(path).doubleValue();
    }

    private static SheetMaker elsewhere() {
        SheetMaker maker = maker();
        maker.azimuthDeg = 171.3;
        maker.altitudeDeg = 38.9;
        maker.rollDeg = 1.2;
        maker.doublesMag = 6.5;
        return maker;
    }

    private static void assertFound(SheetMaker maker, JsonNode found) {
        assertEquals(maker.azimuthDeg, number(found, "/drawn/found/azimuthDeg"), 0.1);
        assertEquals(maker.altitudeDeg, number(found, "/drawn/found/altitudeDeg"), 0.1);
        assertEquals(maker.rollDeg, number(found, "/drawn/found/rollDeg"), 0.2);
        assertEquals(maker.focalMm, number(found, "/drawn/found/focalLengthMm"), 0.006 * maker.focalMm);
        assertTrue(number(found, "/drawn/residualMm") < 0.15);
    }

    @Test
    void theRealAimIsFoundByTheTrails() throws IOException {
        SheetMaker maker = elsewhere();
        maker.turnDeg = 2;
        maker.perspective = 0.04;
        add(170, 40, maker.openings);
        JsonNode found = json(maker, "");
        assertFound(maker, found);
        assertEquals(1.4938, number(found, "/drawn/offAimDeg"), 0.1);
        assertFalse(found.at("/drawn/mirrored").booleanValue());
        assertEquals("Sirius", found.at("/drawn/trails/0/name").stringValue());
        assertTrue(found.at("/drawn/trails/0/seen").booleanValue());
        assertTrue(number(found, "/drawn/trailsSeen") > 25);
        assertTrue(number(found, "/drawn/trailsSeen") < number(found, "/drawn/trailsPredicted"));
    }

    /** Turned to the right, and mirrored and turned as a negative. */
    @Tag("search")
    @Test
    void theSheetMayLieOnTheScanInAnyWay() throws IOException {
        SheetMaker maker = elsewhere();
        maker.width = 800;
        maker.height = 1000;
        add(170, 40, maker.openings);
        for (int way : new int[] {3, 6}) {
            maker.way = way;
            maker.negative = way == 6;
            JsonNode found = json(maker, maker.negative ? "--negative" : "");
            assertFound(maker, found);
            assertEquals(way >= 4, found.at("/drawn/mirrored").booleanValue());
        }
    }

    /** The shutter opened 40 s late the second time and closed 90 s early: the gaps show it. */
    @Test
    void theTimesAreReadFromTheEndsOfTrails() throws IOException {
        Instant start = Instant.parse("2027-02-08T20:00:00Z");
        SheetMaker maker = elsewhere();
        maker.width = 1000;
        maker.height = 800;
        add(170, 40, List.of(new SheetMaker.Open(start, start.plusSeconds(2400)),
                new SheetMaker.Open(start.plusSeconds(3600), start.plusSeconds(6000))));
        maker.openings = List.of(new SheetMaker.Open(start, start.plusSeconds(2400)),
                new SheetMaker.Open(start.plusSeconds(3640), start.plusSeconds(5910)));
        JsonNode openings = json(maker, "").at("/drawn/openings");
        // a clock that is ahead turns the camera about the pole, so that times count from the first opening
        double from = number(openings, "/0/opensLaterS");
        assertEquals(0, number(openings, "/0/closesLaterS") - from, 20);
        assertEquals(40, number(openings, "/1/opensLaterS") - from, 20);
        assertEquals(-90, number(openings, "/1/closesLaterS") - from, 20);
        assertTrue(number(openings, "/1/closesErrorS") < 20);
    }

    @Test
    void theTrailsOfAnotherEntryAreRefusedInOneLine() throws IOException {
        SheetMaker maker = maker();
        add(170, 40, maker.openings);
        Instant other = Instant.parse("2027-02-09T22:10:00Z");
        add(170, 40, List.of(new SheetMaker.Open(other, other.plusSeconds(5400))));
        Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
        Run run = read(scan, "--entry 2");
        assertEquals(2, run.exit(), run.out());
        assertEquals("these trails are not of this entry; name its own entry, or check site, --roll, --frame "
                + "and --negative (" + scan + ")\nSee gloam journal read --help.\n", run.err());
    }

    @Tag("search")
    @Test
    void aPictureWithoutEdgesNeedsItsPlace() throws IOException {
        SheetMaker maker = elsewhere();
        maker.framed = false;
        maker.height = maker.width * 3 / 4;
        add(170, 40, maker.openings);
        Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
        assertFound(maker, JsonMapper.shared().readTree(read(scan,
                "--entry 1 --crop 0,0,100,100 --format json").out()));
        assertEquals("\"0,0,100\" is no part of a scan; give left edge, upper edge, width and height in "
                + "percent, such as 10,8,80,76 (--crop)", read(scan, "--entry 1 --crop 0,0,100").err().lines()
                .findFirst()
                .orElseThrow());
        BufferedImage grey = new BufferedImage(600, 600, BufferedImage.TYPE_BYTE_GRAY);
        Path even = folder.resolve("even.png");
        ImageIO.write(grey, "png", even.toFile());
        Run run = read(even, "--entry 1");
        assertEquals(2, run.exit());
        assertEquals("no picture with four straight edges is found on it; give its place with --crop "
                + "X,Y,W,H (" + even + ")", run.err().lines().findFirst().orElseThrow());
    }

    @Test
    void theDrawingLaysTheTrailsOverTheScan() throws IOException {
        SheetMaker maker = elsewhere();
        add(170, 40, maker.openings);
        Path svg = folder.resolve("scan.svg");
        Run run = read(maker, "--entry 1 --out " + svg);
        assertEquals(0, run.exit(), run.err());
        String drawn = Files.readString(svg);
        assertTrue(drawn.contains("data:image/png;base64,"));
        assertTrue(drawn.contains(">Sirius</text>"));
        assertTrue(drawn.split("class=\"trail\"").length > 25);
        assertTrue(drawn.contains("Entry 1 as scanned"));
    }

    /** The maker's print has the film's ends and mid-tone; its border is as light as it gets. */
    @Test
    void toneLimitAndCloudsAreRead() throws IOException {
        SheetMaker maker = elsewhere();
        maker.cloudFromMin = 20;
        maker.cloudToMin = 32;
        maker.border = Math.pow(10, -0.12);
        maker.skyStops = -1.5;
        maker.doublesMag = 4.8;
        add(170, 40, maker.openings);
        JsonNode found = json(maker, "");
        assertEquals("none", found.at("/tone/bound").stringValue());
        assertEquals(-1.5, number(found, "/tone/toneStops"), 2 * number(found, "/tone/errorStops"));
        assertTrue(number(found, "/tone/errorStops") < 0.6, found.get("tone").toString());
        // at the aim's altitude the air takes 0.23 mag over the sine
        double limitMag = maker.limitMag() - 0.23 / Math.sin(Math.toRadians(38.9));
        assertEquals(limitMag, number(found, "/drawn/trailLimitMag"), 2
                * number(found, "/drawn/limitErrorMag"));
        assertTrue(number(found, "/drawn/limitErrorMag") < 0.6);
        JsonNode drawn = found.get("drawn");
        assertEquals(1, drawn.get("clouds").size(), drawn.get("clouds").toString());
        assertNear("2027-02-08T20:20:00Z", drawn.at("/clouds/0/openAt"), 150);
        assertNear("2027-02-08T20:32:00Z", drawn.at("/clouds/0/closeAt"), 150);
    }

    /** The tone of a word was noted before; the scan's counts, and correcting other things keeps it. */
    @Test
    void aReadingIsKeptWithItsEntry() throws Exception {
        SheetMaker maker = elsewhere();
        add(170, 40, maker.openings);
        byte[] jpeg = maker.jpeg();
        Path scan = Files.write(folder.resolve("scan.jpg"), jpeg);
        String before = Files.readString(Path.of(journal()));
        assertTrue(read(scan, "--entry 1 --write").out().contains("Written to entry 1 of "));
        String written = Files.readString(Path.of(journal()));
        assertTrue(written.startsWith(before));
        // FIPS 180-4 by the platform
        String sha256 = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(jpeg));
        JsonNode reading = listed();
        assertEquals("scan.jpg", reading.at("/file").stringValue());
        assertEquals(sha256, reading.at("/sha256").stringValue());
        assertEquals(maker.azimuthDeg, number(reading, "/trails/azimuthDeg"), 0.1);
        assertEquals("none", reading.at("/tone/bound").stringValue());
        assertTrue(read(scan, "--entry 1 --write").out().contains("Nothing added: entry 1"));
        assertEquals(written, Files.readString(Path.of(journal())));
        assertEquals(0, Run.of(List.of("journal", "add", "--journal", journal(), "--corrects", "1", "--tone",
                "dark", "--kept")).exit());
        assertEquals(reading, listed());
        Path joined = folder.resolve("joined.jsonl");
        assertEquals(0, Run.of(List.of("journal", "join", journal(), journal(), "--out", joined.toString()))
                .exit());
        assertTrue(Run.of(List.of("journal", "list", "--journal", joined.toString())).out()
                .contains("read from scan.jpg: "));
        assertEquals(0, Run.of(List.of("journal", "add", "--journal", journal(), "--corrects", "1", "--clear",
                "reading")).exit());
        assertTrue(listed().isNull());
    }

    private JsonNode listed() {
        Run run = Run.of(List.of("journal", "list", "--journal", journal(), "--format", "json"));
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out()).at("/sheets/0/reading");
    }

    private static void assertNear(String instant, JsonNode found, double withinS) {
        assertEquals(0, Duration.between(Instant.parse(instant),
                OffsetDateTime.parse(found.stringValue()).toInstant()).toSeconds(), withinS,
                found.toString());
    }

    /** A sheet that stayed black bounds the tone and shows no aim. */
    @Test
    void aBlankSheetIsABound() throws IOException {
        SheetMaker maker = elsewhere();
        maker.skyStops = -8;
        maker.doublesMag = -20;
        maker.dust = 20;
        add(170, 40, maker.openings);
        Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
        JsonNode found = JsonMapper.shared().readTree(read(scan, "--entry 1 --format json").out());
        assertEquals("at-most", found.at("/tone/bound").stringValue());
        assertTrue(number(found, "/tone/toneStops") < -2, found.get("tone").toString());
        assertTrue(found.get("drawn").isNull());
        String before = Files.readString(Path.of(journal()));
        String text = read(scan, "--entry 1").out();
        assertTrue(text.contains("The sheet is blank"), text);
        assertTrue(text.contains("Nothing is written; add --write"), text);
        assertEquals(before, Files.readString(Path.of(journal())));
    }

    @Test
    void whatTheJournalDoesNotKeepIsAskedFor() throws IOException {
        SheetMaker maker = maker();
        add(170, 40, maker.openings);
        Path scan = Files.write(folder.resolve("scan.jpg"), new byte[] {1, 2, 3});
        for (List<String> told : List.of(List.of("--entry 9 --trip " + trip,
                "the journal has no entry \"9\" (--entry)"), List.of("--entry 1",
                "the journal keeps too little of the site; add --trip FILE, or --place PLACE and --zone "
                + "ZONE"), List.of("--entry 1 --place 44.2,9.7,620 --zone UTC",
                "the journal does not keep the frame; add --frame WxH or --trip FILE"))) {
            Run run = Run.of(("journal read " + scan + " --journal " + journal() + " " + told.get(0))
                    .split(" "));
            assertEquals(2, run.exit());
            assertEquals(told.get(1), run.err().lines().findFirst().orElseThrow());
        }
        Run run = read(scan, "--entry 1");
        assertEquals(2, run.exit());
        assertTrue(run.err().startsWith("cannot read " + scan + ": "), run.err());
    }
}
