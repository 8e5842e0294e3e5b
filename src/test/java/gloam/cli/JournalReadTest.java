package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Scans made by formulas of the test's own, read through the command line. */
class JournalReadTest extends JournalOfOneScan {

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
