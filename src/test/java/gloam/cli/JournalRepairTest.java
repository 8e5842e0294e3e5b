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
import java.util.List;
import org.junit.jupiter.api.Test;

/** Journals that other programs spoiled or newer ones wrote, and files that are none. */
class JournalRepairTest extends JournalOfOneSheet {

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
}
