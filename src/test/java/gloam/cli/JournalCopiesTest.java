package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Copies of a journal that were added to in two places, and journals that other programs spoiled. */
class JournalCopiesTest extends JournalOfOneSheet {

    private static final String[] SECOND = {"--film", "instant-mono-640", "--sky-mag-arcsec2", "21",
        "--f-number", "8", "--open", "2027-01-11T20:00Z/1h"};
    private static final String[] THIRD = {"--film", "instant-mono-640", "--sky-mag-arcsec2", "20",
        "--f-number", "8", "--open", "2027-01-12T20:00Z/1h"};

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

    @Test
    void aNewJournalIsWrittenOverNothing() throws IOException {
        byte[] before = Files.readAllBytes(file());
        assertRefused("name two or more", Run.of("journal", "join", file().toString(), "--out",
                folder.resolve("alone.jsonl").toString()));
        assertRefused("already exists", Run.of("journal", "join", file().toString(), file().toString(),
                "--out", file().toString()));
        assertRefused("already exists", Run.of("journal", "repair", file().toString(), "--out",
                file().toString()));
        assertRefused("ends in .jsonl", Run.of("journal", "repair", file().toString(), "--out",
                folder.resolve("trip.yaml").toString()));
        assertArrayEquals(before, Files.readAllBytes(file()));
    }

    /** An editor on Windows, a torn line with another behind it, a line twice, one in another encoding. */
    @Test
    void whatIsSpoiledIsRepairedInANewFile() throws IOException {
        ok(add(SECOND));
        ok(add(with(THIRD, "--note", "mañana")));
        List<String> lines = lines();
        Path file = folder.resolve("spoiled.jsonl");
        Files.writeString(file, "\uFEFF" + lines.get(0) + "\r\n" + lines.get(0).substring(0, 90)
                + lines.get(1) + "\r\n" + lines.get(1) + "\n{\"gloam-jour\n");
        Files.write(file, lines.get(2).getBytes(StandardCharsets.ISO_8859_1), StandardOpenOption.APPEND);
        assertEquals(2, sheets(file).size(), "the first sheet behind the mark, and the one that came twice");
        Path repaired = folder.resolve("repaired.jsonl");
        String said = ok(Run.of("journal", "repair", file.toString(), "--out", repaired.toString()));
        for (String part : List.of("line 1: byte order mark taken out", "line 2: left out",
                "line 2: an entry parted", "line 3: the same as a line before", "line 4: left out",
                "line 5: was not UTF-8", "line ends of Windows made plain: 2", "line 5: line end put")) {
            assertTrue(said.contains(part), part + ": " + said);
        }
        assertEquals(String.join("\n", lines) + "\n", Files.readString(repaired));
        assertTrue(said.startsWith("Wrote " + repaired + ": sheets 3."), said);
        Path nothing = folder.resolve("nothing.jsonl");
        assertTrue(ok(Run.of("journal", "repair", repaired.toString(), "--out", nothing.toString()))
                .startsWith("Nothing to repair"));
        assertFalse(Files.exists(nothing));
    }

    @Test
    void whatANewerGloamWroteIsKeptAndPassedOver() throws IOException {
        String newer = lines().get(0).replace("\"gloam-journal\":2", "\"gloam-journal\":3")
                .replace("\"film\":", "\"developer\":\"paste\",\"film\":");
        String other = "{\"gloam-journal\":3,\"id\":\"0123456789abcdef\",\"pack\":{\"sheets\":10}}";
        Path file = journal("newer.jsonl", newer, other);
        ok(addTo(file, "--corrects", "1", "--tone", "dark"));
        assertEquals("dark", sheets(file).get(0).get("tone").asString());
        assertEquals(List.of(newer, other), Files.readAllLines(file).subList(0, 2));
        Run listed = Run.of("journal", "list", "--journal", file.toString());
        assertTrue(listed.err().contains("newer.jsonl:2: written by a newer Gloam"), listed.err());
        Path joined = folder.resolve("joined.jsonl");
        join(joined, file, file());
        assertTrue(Files.readAllLines(joined).containsAll(List.of(newer, other)));
        Path repaired = folder.resolve("repaired.jsonl");
        assertTrue(ok(Run.of("journal", "repair", file.toString(), "--out", repaired.toString()))
                .startsWith("Nothing to repair"));
    }

    @Test
    void linksAndOtherFilesAreLeftAlone() throws IOException {
        byte[] before = Files.readAllBytes(file());
        Path link = Files.createSymbolicLink(folder.resolve("link.jsonl"), file());
        assertRefused("is a link", addTo(link, SECOND));
        assertRefused("is a link", addTo(link, "--corrects", "1", "--tone", "dark"));
        assertArrayEquals(before, Files.readAllBytes(file()));
        Path other = journal("log.jsonl", "{\"event\":\"start\"}", "{\"event\":\"stop\"}");
        assertRefused("is no journal", addTo(other, SECOND));
        assertRefused("is no journal", Run.of("journal", "list", "--journal", other.toString()));
        assertEquals(2, Files.readAllLines(other).size());
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

    private static String[] with(String[] options, String... more) {
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private Path journal(String name, String... lines) throws IOException {
        return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
    }

    private static List<String> opened(Path file) throws IOException {
        List<String> opened = new ArrayList<>();
        sheets(file).forEach(sheet -> opened.add(opened(sheet)));
        return opened;
    }

    private static String opened(JsonNode sheet) {
        return sheet.get("openAt").asString().substring(0, 16);
    }

    private static JsonNode sheets(Path file) throws IOException {
        return new ObjectMapper().readTree(ok(Run.of("journal", "list", "--journal", file.toString(),
                "--format", "json"))).get("sheets");
    }

    private static String join(Path joined, Path... files) {
        List<String> args = new ArrayList<>(List.of("journal", "join", "--out", joined.toString()));
        List.of(files).forEach(file -> args.add(file.toString()));
        return ok(Run.of(args));
    }

    private static Run addTo(Path file, String... options) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", file.toString()));
        args.addAll(List.of(options));
        return Run.of(args);
    }
}
