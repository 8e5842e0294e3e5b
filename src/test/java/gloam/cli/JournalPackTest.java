package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Sizes and prices of packs, noted once. */
class JournalPackTest extends JournalOfOneSheet {

    private static final String FILM = "instant-mono-640";

    /** Two of eight sheets of pack A are gone, one is kept: two eighths of 32 for one keeper. */
    @Test
    void statsKnowsWhatWasNotedOnce() throws IOException {
        ok(correct("--kept"));
        ok(add("--film", FILM, "--sky-mag-arcsec2", "21", "--f-number", "8", "--open", "2027-01-11T20:00Z/1h",
                "--batch", "A", "--no-kept", "--wish", "Wheel"));
        assertEquals("Noted in " + file() + ": 8 sheets for 32.00.\n  " + FILM
                + ", A: 6 sheets left, a keeper cost 8.00\n",
                ok(pack("--film", FILM, "--batch", "A", "--sheets", "8", "--price", "32")));
        ok(pack("--film", FILM, "--batch", "B", "--sheets", "10"));
        JsonNode stock = stock();
        assertEquals(FILM + ", A", stock.get(0).get("pack").asString());
        assertEquals(6, stock.get(0).get("sheetsLeft").asInt());
        assertEquals(8, stock.get(0).get("keeperPrice").asDouble());
        assertEquals(10, stock.get(1).get("sheetsLeft").asInt(), "not opened yet");
        assertTrue(stock.get(1).get("keeperPrice").isNull());
        assertEquals(stock.get(0), stock("--wish", "Wheel").get(0), "what is left hangs on no wish");
        assertEquals(1, stock("--batch", "B").size());
        assertEquals(2, stock("--pack-sheets", "4").get(0).get("sheetsLeft").asInt(), "what is said now");
    }

    /** The sheet that stands in the journal, and whatever else it says, is left as it is. */
    @Test
    void theLastWordOnAPackHolds() throws IOException {
        String sheet = Files.readString(file());
        ok(pack("--batch", "A", "--sheets", "8", "--price", "32"));
        assertTrue(ok(pack("--batch", "A", "--sheets", "8", "--price", "32"))
                .startsWith("Nothing added: " + file() + " says so already."));
        assertEquals(2, Files.readAllLines(file()).size());
        ok(pack("--batch", "a", "--sheets", "10"));
        assertEquals(1, stock().size());
        assertEquals(9, stock().get(0).get("sheetsLeft").asInt());
        assertTrue(stock().get(0).get("keeperPrice").isNull());
        assertTrue(Files.readString(file()).startsWith(sheet));
        assertFalse(Run.of("journal", "list", "--journal", file().toString()).err().contains("note"));
    }

    /** Copies noted differently: the later word holds, wherever it stands, and none is there twice. */
    @Test
    void packsJoinAsSheetsDo() throws IOException {
        ok(pack("--batch", "A", "--sheets", "8", "--price", "32"));
        Path laptop = Files.copy(file(), folder.resolve("laptop.jsonl"));
        Path both = Files.copy(file(), folder.resolve("both.jsonl"));
        ok(Run.of("journal", "pack", "--journal", laptop.toString(), "--batch", "A",
                "--sheets", "10"));
        for (List<Path> order : List.of(List.of(laptop, both), List.of(both, laptop))) {
            Path joined = folder.resolve("joined" + order.indexOf(both) + ".jsonl");
            ok(Run.of("journal", "join", order.get(0).toString(), order.get(1).toString(), both.toString(),
                    "--out", joined.toString()));
            assertEquals(3, Files.readAllLines(joined).size());
            JsonNode stock = new ObjectMapper().readTree(ok(Run.of("journal", "stats", "--journal",
                    joined.toString(), "--format", "json"))).get("stock");
            assertEquals(1, stock.size());
            assertEquals(9, stock.get(0).get("sheetsLeft").asInt(), order.toString());
            assertTrue(ok(Run.of("journal", "repair", joined.toString(), "--out", joined + ".jsonl"))
                    .startsWith("Nothing to repair"));
        }
    }

    @Test
    void aJournalMayBeginWithAPack() throws IOException {
        Path begun = folder.resolve("begun.jsonl");
        String trip = new MoorTrip(folder).file("batch: A");
        ok(Run.of("journal", "pack", "--journal", begun.toString(), "--trip", trip, "--sheets", "8"));
        Run list = Run.of("journal", "list", "--journal", begun.toString());
        assertEquals("", list.err());
        assertTrue(Files.readString(begun).contains(
                "\"pack\":{\"film\":\"" + FILM + "\",\"batch\":\"A\",\"sheets\":8}"));
    }

    @Test
    void whatNoPackCanBeIsRefused() throws IOException {
        String before = Files.readString(file());
        assertRefused("number of sheets in a pack 0 ", pack("--batch", "A", "--sheets", "0"));
        assertRefused("(--price)", pack("--batch", "A", "--sheets", "8", "--price", "-1"));
        assertRefused("a pack needs a film and a name", pack("--batch", " ", "--sheets", "8"));
        assertRefused("no pack given; use --batch NAME", pack("--sheets", "8"));
        assertRefused("could not be read again",
                pack("--batch", "A", "--sheets", "8", "--film", "x".repeat(600)));
        assertRefused("no film given; use --film NAME", Run.of("journal", "pack", "--journal",
                Files.writeString(folder.resolve("empty.jsonl"), "").toString(), "--batch", "A", "--sheets",
                "8"));
        assertEquals(before, Files.readString(file()));
    }

    /** A damaged line of a pack is named and spoils no sheet. */
    @Test
    void aDamagedPackIsReported() throws IOException {
        Files.writeString(file(), Files.readString(file())
                + "{\"gloam-journal\":2,\"id\":\"0123456789abcdef\","
                + "\"written\":\"2027-01-11T20:00:00Z\",\"pack\":{\"film\":\"f\",\"batch\":\"A\",\"sheets\":0}}\n");
        Run list = Run.of("journal", "list", "--journal", file().toString());
        assertEquals(0, list.exit());
        assertTrue(list.err().contains(file() + ":2:") && list.err().contains("number of sheets in a pack 0"),
                list.err());
    }

    private Run pack(String... more) throws IOException {
        String[] args = new String[4 + more.length];
        System.arraycopy(new String[] {"journal", "pack", "--journal", file().toString()}, 0, args, 0, 4);
        System.arraycopy(more, 0, args, 4, more.length);
        return Run.of(args);
    }

    private JsonNode stock(String... more) throws IOException {
        String[] args = new String[6 + more.length];
        System.arraycopy(new String[] {"journal", "stats", "--journal", file().toString(), "--format",
                "json"}, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        return new ObjectMapper().readTree(ok(Run.of(args))).get("stock");
    }
}
