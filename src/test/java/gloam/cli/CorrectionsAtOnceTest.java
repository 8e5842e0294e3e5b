package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.journal.Exposed;
import gloam.store.JournalFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Corrections of one sheet in two copies of a journal, which are then joined. */
class CorrectionsAtOnceTest extends JournalOfOneSheet {

    /** Each names its own thing; of one thing the later word holds, whichever file comes first. */
    @Test
    void twoCorrectionsAtOnceBothHold() throws IOException {
        Path other = Files.copy(file(), folder.resolve("other.jsonl"));
        double lx = sheet().get("filmLx").asDouble();
        ok(correct("--f-number", "8", "--note", "one", "--tone", "dark"));
        ok(addTo(other, "--corrects", "1", "--open", "2027-01-10T21:00Z/4h", "--tone-stops", "-2"));
        ok(addTo(other, "--corrects", "1", "--kept"));
        List<JsonNode> both = new ArrayList<>();
        for (List<Path> order : List.of(List.of(file(), other), List.of(other, file()))) {
            Path joined = folder.resolve("joined" + both.size() + ".jsonl");
            join(joined, order.get(0), order.get(1));
            both.add(sheets(joined));
        }
        assertEquals(both.get(0), both.get(1));
        JsonNode sheet = both.get(0).get(0);
        assertEquals(8, sheet.get("fNumber").asDouble());
        assertEquals("one", sheet.get("note").asString());
        assertEquals(4 * 3600, sheet.get("openS").asDouble());
        assertTrue(sheet.get("kept").asBoolean());
        // the times of one and the glass of the other: f/8 is a stop faster than f/11, to the digits shown
        assertEquals(2 * lx, sheet.get("filmLx").asDouble(), 1e-3 * lx);
        assertTrue(sheet.get("tone").isNull() != sheet.get("toneStops").isNull());
    }

    /** An aim and times under a computed sky: whichever is later, both hold; the light fits neither. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void anAimAndTimesAtOnceBothHoldAndTheirLightIsAskedFor(boolean aimLater) throws IOException {
        Path one = folder.resolve("one.jsonl");
        ok(addTo(one, COMPUTED));
        Path other = Files.copy(one, folder.resolve("other.jsonl"));
        Path aimed = aimLater ? one : other;
        Path timed = aimLater ? other : one;
        String[] site = {"--corrects", "1", "--place", "41,-2,1000", "--zone", "UTC"};
        for (String word : List.of("a", "b", "c")) {
            ok(addTo(one, "--corrects", "1", "--note", word + ", which makes the next word a later one"));
        }
        ok(addTo(timed, with(site, "--open", "2027-01-11T00:00Z/4h")));
        ok(addTo(timed, "--corrects", "1", "--focal-length", "240"));
        ok(addTo(aimed, with(site, "--azimuth", "180", "--altitude", "20")));
        Path joined = folder.resolve("joined.jsonl");
        join(joined, one, other);
        JsonNode sheet = sheets(joined).get(0);
        assertEquals("2027-01-11T00:00", opened(sheet));
        assertEquals(4 * 3600, sheet.get("openS").asDouble());
        assertEquals(180, sheet.get("azimuthDeg").asDouble());
        assertEquals(20, sheet.get("altitudeDeg").asDouble());
        Run listed = Run.of("journal", "list", "--journal", joined.toString());
        assertTrue(listed.err().contains(": the light of entry 1 was computed here for another site, aim or "
                + "time than was corrected elsewhere. Correct the entry once more"), listed.err());
        ok(addTo(joined, site));
        Path right = folder.resolve("right.jsonl");
        ok(addTo(right, COMPUTED));
        ok(addTo(right, with(site, "--azimuth", "180", "--altitude", "20", "--focal-length", "240", "--open",
                "2027-01-11T00:00Z/4h")));
        assertEquals("", Run.of("journal", "list", "--journal", joined.toString()).err());
        assertEquals(sheets(right).get(0).get("filmLx"), sheets(joined).get(0).get("filmLx"));
        Exposed.Stars stars = JournalFile.read(right).sheets().get(0).exposed().stars();
        Exposed.Stars found = JournalFile.read(joined).sheets().get(0).exposed().stars();
        assertEquals(stars.imageSpeedMmS(), found.imageSpeedMmS(), 1e-6); // as the file has it
        assertEquals(stars.lossMag(), found.lossMag(), 1e-3);
    }

    /** A measured sky and times: neither is of the other. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aMeasuredSkyAndTimesAtOnceBothHold(boolean skyLater) throws IOException {
        Path other = Files.copy(file(), folder.resolve("other.jsonl"));
        double lx = sheet().get("filmLx").asDouble();
        ok(addTo(file(), "--corrects", "1", "--note", "a word, which makes the next one later"));
        ok(addTo(skyLater ? other : file(), "--corrects", "1", "--open", "2027-01-11T00:00Z/4h"));
        ok(addTo(skyLater ? file() : other, "--corrects", "1", "--sky-mag-arcsec2", "20.4"));
        Path joined = folder.resolve("joined.jsonl");
        join(joined, other, file());
        JsonNode sheet = sheets(joined).get(0);
        assertEquals(4 * 3600, sheet.get("openS").asDouble());
        // from 21.4 to 20.4 mag, to the digits shown
        assertEquals(Math.pow(10, 0.4) * lx, sheet.get("filmLx").asDouble(), 1e-3 * lx);
        assertEquals("", Run.of("journal", "list", "--journal", joined.toString()).err());
    }

    @Test
    void whatIsWithdrawnInOnePlaceAndCorrectedInAnotherIsBoth() throws IOException {
        Path other = Files.copy(file(), folder.resolve("other.jsonl"));
        ok(correct("--withdraw"));
        ok(addTo(other, "--corrects", "1", "--tone", "dark"));
        Path joined = folder.resolve("joined.jsonl");
        join(joined, file(), other);
        assertEquals(0, sheets(joined).size());
        ok(addTo(joined, "--corrects", "1", "--clear", "withdraw"));
        assertEquals("dark", sheets(joined).get(0).get("tone").asString());
    }
}
