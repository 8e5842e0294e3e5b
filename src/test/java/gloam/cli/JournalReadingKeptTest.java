package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a scan shows besides its aim, and how the journal keeps it. */
class JournalReadingKeptTest extends JournalOfOneScan {

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
        String text = read(scan, "--entry 1 --write").out();
        assertTrue(text.contains("Written to entry 1 of "), text);
        assertEquals(20, text.lines().filter(line -> line.matches(".* (not )?seen .*\\d")).count(), text);
        assertTrue(text.lines().anyMatch(line -> line.matches(" +… and \\d+ fainter; ask for json to see "
                + "all")), text);
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

    private static void assertNear(String instant, JsonNode found, double withinS) {
        assertEquals(0, Duration.between(Instant.parse(instant),
                OffsetDateTime.parse(found.stringValue()).toInstant()).toSeconds(), withinS,
                found.toString());
    }
}
