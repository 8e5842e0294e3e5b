package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Whatever was said before, the last word on a sheet holds, and anything can be unsaid. */
class JournalLastWordTest extends JournalOfOneSheet {

    @Test
    void theLastWordHolds() throws IOException {
        for (String tone : List.of("middle", "dark", "middle")) {
            ok(correct("--tone", tone));
            assertEquals(tone, sheet().get("tone").asString());
        }
        assertEquals(4, lines().size());
        assertTrue(ok(correct("--tone", "middle")).startsWith("Nothing added: "), "the same call again");
        assertEquals(4, lines().size());
    }

    /** By its number, by its name in the file, and by the beginning of that. */
    @Test
    void theLastWordHoldsByWhicheverNameItIsSaid() throws IOException {
        String name = sheet().get("identity").asString();
        for (String[] word : new String[][] {{"1", "middle"}, {name, "dark"},
                {name.substring(0, 5), "middle"}, {"1", "dark"}}) {
            assertTrue(ok(corrects(word[0], "--tone", word[1])).startsWith("Corrected entry 1 of "),
                    String.join(" ", word));
            assertEquals(word[1], sheet().get("tone").asString());
        }
        assertEquals(5, lines().size());
    }

    @Test
    void aWithdrawnSheetComesBack() throws IOException {
        ok(correct("--withdraw"));
        assertTrue(ok(correct("--withdraw")).startsWith("Nothing added: "));
        assertEquals(0, sheets().size());
        assertRefused("bring it back with --clear withdraw", correct("--tone", "dark"));
        ok(correct("--clear", "withdraw"));
        assertEquals("A", sheet().get("batch").asString());
        assertTrue(ok(correct("--clear", "withdraw")).startsWith("Nothing added: "));
        ok(correct("--withdraw"));
        assertTrue(ok(add(SHEET)).startsWith("Added as entry 1 of "), "the same sheet said anew");
        assertTrue(ok(add(SHEET)).startsWith("Nothing added: entry 1 of "));
        assertEquals(1, sheets().size());
    }

    @Test
    void whateverWasSaidCanBeTakenBack() throws IOException {
        JsonNode before = sheet();
        ok(correct("--tone", "dark", "--faintest", "4", "--kept", "--spoiled-by", "dew,dew", "--note", "hm"));
        assertEquals("[\"dew\"]", sheet().get("spoiledBy").toString());
        ok(correct("--clear", "tone,faintest,kept", "--clear", "spoiled-by,note"));
        assertEquals(before, sheet());
        ok(correct("--tone-stops", "-1", "--tone-spread", "0.3"));
        ok(correct("--clear", "tone"));
        assertEquals(before, sheet());
        ok(correct("--place", "41,-2,1000", "--zone", "UTC"));
        ok(correct("--clear", "site,aim,batch,temperature"));
        for (String field : List.of("site", "azimuthDeg", "altitudeDeg", "temperatureC")) {
            assertTrue(sheet().get(field).isNull(), field);
        }
        assertEquals("", sheet().get("batch").asString());
        ok(correct("--clear", "sky", "--place", "41,-2,1000", "--zone", "UTC", "--azimuth", "180",
                "--altitude", "45"));
        assertEquals("computed", sheet().get("light").asString());
        assertRefused("say which with --corrects ENTRY", add("--clear", "tone"));
    }

    @Test
    void theSpreadOfAToneStaysWithIt() throws IOException {
        ok(correct("--tone-stops", "-1", "--tone-spread", "0.3"));
        ok(correct("--tone-stops", "-2"));
        assertTrue(lines().get(2).contains("\"tone-stops\":-2,\"tone-spread-stops\":0.3"), lines().get(2));
        ok(correct("--tone-spread", "0.5"));
        assertTrue(lines().get(3).contains("\"tone-stops\":-2,\"tone-spread-stops\":0.5"), lines().get(3));
    }
}
