package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Copies of a journal that were added to in two places, and journals that other programs spoiled. */
class JournalCopiesTest extends JournalOfOneSheet {

    @Test
    void copiesAddedToInTwoPlacesJoinWithoutLossAndWithoutDoubles() throws IOException {
        Path other = Files.copy(file(), folder.resolve("other.jsonl"));
        ok(add(SECOND));
        ok(addTo(other, THIRD));
        ok(addTo(other, SECOND));
        Path joined = folder.resolve("joined.jsonl");
        String said = join(joined, file(), other);
        assertTrue(said.startsWith("Joined into " + joined + ": sheets 3."), said);
        List<String> opened = List.of("2027-01-10T20:00", "2027-01-11T20:00", "2027-01-12T20:00");
        assertEquals(opened, opened(joined));
        Path behind = folder.resolve("behind.jsonl");
        Files.writeString(behind, Files.readString(file()) + Files.readString(other));
        assertEquals(opened, opened(behind));
        Path again = folder.resolve("again.jsonl");
        join(again, joined, other, file());
        assertEquals(Files.readString(joined), Files.readString(again));
    }

    /** Entries had numbers once, which clash: each file's own are meant. */
    @Test
    void copiesWithNumbersJoinToo() throws IOException {
        List<String> demo = Files.readAllLines(Path.of("demo-data/journal.jsonl"));
        Path one = journal("one.jsonl", demo.get(0), demo.get(1), corrected(demo.get(0), 3, 1,
                "\"tone\":\"white\"", "\"tone\":\"dark\""));
        Path other = journal("other.jsonl", demo.get(0), number(demo.get(4), 2), corrected(demo.get(0), 3, 1,
                "\"kept\":true", "\"kept\":false"), corrected(demo.get(4), 4, 2,
                "\"tone\":\"light\"", "\"tone\":\"very-dark\""));
        Path joined = folder.resolve("joined.jsonl");
        join(joined, one, other);
        Path behind = folder.resolve("behind.jsonl");
        Files.writeString(behind, Files.readString(one) + Files.readString(other));
        Path again = folder.resolve("again.jsonl");
        join(again, behind, joined);
        for (Path file : List.of(joined, behind, again)) {
            JsonNode sheets = sheets(file);
            assertEquals(3, sheets.size(), sheets.toString());
            assertEquals("1", sheets.get(0).get("id").asString());
            assertEquals("2", sheets.get(1).get("id").asString());
            assertEquals("white", sheets.get(0).get("tone").asString(), file.toString());
            assertTrue(sheets.get(0).get("kept").asBoolean(), file.toString());
            assertEquals("light", sheets.get(2).get("tone").asString(), file.toString());
        }
    }

    /** A copy put behind itself holds every line twice; joined with another it grows no more. */
    @Test
    void aLineThatStandsTwiceIsJoinedOnce() throws IOException {
        Path once = folder.resolve("once.jsonl");
        ok(addTo(once, SECOND));
        ok(addTo(once, "--corrects", "1", "--tone", "dark"));
        Path twice = Files.writeString(folder.resolve("twice.jsonl"), Files.readString(once).repeat(2));
        Path joined = folder.resolve("joined.jsonl");
        join(joined, twice, once);
        assertEquals(Files.readString(once), Files.readString(joined));
    }

    @Test
    void fifteenRoundsOfCopiesLoseAndDoubleNothing() throws IOException {
        assertCopiesLoseAndDoubleNothing(15);
    }

    @Tag("search")
    @Test
    void twoHundredRoundsOfCopiesLoseAndDoubleNothing() throws IOException {
        assertCopiesLoseAndDoubleNothing(200);
    }

    /**
     * Two copies are added to and corrected, joined or put one behind the other in either order, and both
     * replaced by what comes of it: every sheet is there once, and each field as it was last said.
     */
    private void assertCopiesLoseAndDoubleNothing(int rounds) throws IOException {
        SplittableRandom random = new SplittableRandom(20270206);
        Map<String, Map<String, String>> said = new TreeMap<>();
        said.put("2027-01-10T20:00", new TreeMap<>());
        Path[] copies = {file(), Files.copy(file(), folder.resolve("other.jsonl"))};
        for (int round = 1; round <= rounds; round++) {
            String target = List.copyOf(said.keySet()).get(random.nextInt(said.size()));
            List<String> fields = random.nextBoolean() ? List.of("batch", "note") : List.of("note", "batch");
            for (int copy = 0; copy < 2; copy++) {
                String at = "%d-%02d-%02dT2%d:00".formatted(2021 + round / 336, 1 + round / 28 % 12,
                        1 + round % 28, copy + 1);
                ok(addTo(copies[copy], "--film", "instant-mono-640", "--sky-mag-arcsec2", "21", "--f-number",
                        "8", "--open", at + "Z/1h"));
                said.put(at, new TreeMap<>());
                String word = "word " + round + "." + copy;
                ok(addTo(copies[copy], "--corrects", identity(copies[copy], target), "--" + fields.get(copy),
                        word));
                said.get(target).put(fields.get(copy), word);
            }
            Path joined = folder.resolve("joined" + round + ".jsonl");
            int first = random.nextInt(2);
            if (random.nextBoolean()) {
                Files.writeString(joined, Files.readString(copies[first])
                        + Files.readString(copies[1 - first]));
            } else {
                join(joined, copies[first], copies[1 - first]);
            }
            Path swapped = folder.resolve("swapped" + round + ".jsonl");
            join(swapped, joined, copies[first]);
            copies[0] = joined;
            copies[1] = swapped;
        }
        assertEquals(said, found(copies[0]));
        assertEquals(said, found(copies[1]));
        assertEquals(1 + 2 * rounds, sheets(copies[0]).size());
    }

    private static Map<String, Map<String, String>> found(Path file) throws IOException {
        Map<String, Map<String, String>> found = new TreeMap<>();
        for (JsonNode sheet : sheets(file)) {
            Map<String, String> fields = new TreeMap<>();
            for (String field : List.of("batch", "note")) {
                if (sheet.get(field).asString().startsWith("word ")) {
                    fields.put(field, sheet.get(field).asString());
                }
            }
            found.put(opened(sheet), fields);
        }
        return found;
    }

    private static String identity(Path file, String openAt) throws IOException {
        for (JsonNode sheet : sheets(file)) {
            if (opened(sheet).equals(openAt)) {
                return sheet.get("identity").asString();
            }
        }
        throw new AssertionError(openAt + " is lost");
    }

    private static String number(String line, int number) {
        return line.replaceFirst("\"id\":\"\\d+\"", "\"id\":\"" + number + "\"");
    }

    private static String corrected(String line, int number, int corrects, String now, String was) {
        assertTrue(line.contains(was), line);
        return number(line, number).replaceFirst("(\"written\":\"[^\"]*\")", "$1,\"corrects\":\"" + corrects
                + "\"").replace(was, now);
    }
}
