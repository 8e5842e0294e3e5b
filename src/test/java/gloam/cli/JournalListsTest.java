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

/** What people look up in a journal: how plans came out, what packs cost, and the pictures. */
class JournalListsTest extends JournalOfOneSheet {

    private static final String WINDOW = """
            {"sheet": %d, "wish": "%s", "film": "instant-mono-640", "openAt": "2027-01-09T%s:00:00+01:00",
             "closeAt": "2027-01-09T%s:40:00+01:00", "azimuthDeg": 180, "altitudeDeg": 41.5, "fNumber": 8,
             "skyToneStops": %s}""";

    /** Came out in the middle of a word: dark −1, middle 0, as the guide has them. */
    @Test
    void howFarOffPlanSheetsCameOut() throws IOException {
        planned(1, "Wheel", "18", "-2", "--tone", "dark", "--kept");
        planned(2, "Wheel", "20", "-1.5", "--tone-stops", "-1", "--no-kept");
        planned(3, "Pond", "22", "-1", "--tone", "middle", "--kept");
        planned(4, "Ridge", "23", "0");
        JsonNode stats = json("stats");
        assertEquals(List.of("Pond", "Ridge", "Wheel"), groups(stats.get("wishes")));
        JsonNode wheel = stats.get("wishes").get(2);
        assertEquals(2, wheel.get("compared").asInt());
        assertEquals((1 + 0.5) / 2, wheel.get("offPlanStops").asDouble());
        assertEquals(1, stats.get("wishes").get(0).get("offPlanStops").asDouble());
        assertTrue(stats.get("wishes").get(1).get("offPlanStops").isNull());
        assertEquals((1 + 0.5 + 1) / 3, stats.get("all").get("offPlanStops").asDouble(), 1e-3);
        assertEquals(3, stats.get("all").get("compared").asInt());
        String text = ok(Run.of("journal", "stats", "--journal", file().toString(), "--wish", "wheel"));
        assertTrue(text.contains("+0.8 of 2"), text);
        assertFalse(text.contains("Pond"), text);
        String list = ok(Run.of("journal", "list", "--journal", file().toString(), "--wish", "Pond"));
        assertTrue(list.contains("planned") && list.contains("−1.0"), list);
        assertEquals(2, list.lines().filter(line -> line.contains("2027-01-09") || line.contains("Pond"))
                .count(), list);
    }

    /** Two of eight sheets of pack A are gone, one is kept: two eighths of 32 for one keeper. */
    @Test
    void whatIsLeftOfAPackAndWhatAKeeperCost() throws IOException {
        ok(correct("--kept"));
        ok(add("--film", "instant-mono-640", "--sky-mag-arcsec2", "21", "--f-number", "8", "--open",
                "2027-01-11T20:00Z/1h", "--batch", "A", "--no-kept"));
        JsonNode pack = json("stats", "--pack-sheets", "8", "--pack-price", "32").get("stock").get(0);
        assertEquals("instant-mono-640, A", pack.get("pack").asString());
        assertEquals(6, pack.get("sheetsLeft").asInt());
        assertEquals(8, pack.get("keeperPrice").asDouble());
        String text = ok(Run.of("journal", "stats", "--journal", file().toString(), "--pack-sheets", "1"));
        assertTrue(text.contains("instant-mono-640, A: 1 sheet more than in a pack"), text);
        assertRefused("add --pack-sheets", Run.of("journal", "stats", "--journal", file().toString(),
                "--pack-price", "3"));
    }

    @Test
    void aPictureIsKeptByItsPathFromTheJournal() throws IOException {
        Path photo = Files.writeString(Files.createDirectories(folder.resolve("photos")).resolve("a #1.jpg"),
                "");
        ok(correct("--picture", photo.toString(), "--place", "41,-2,1000", "--zone", "UTC"));
        assertEquals("photos/a #1.jpg", sheet().get("picture").asString());
        assertTrue(ok(Run.of("journal", "list", "--journal", file().toString())).contains(
                "picture photos/a #1.jpg"));
        String page = ok(Run.of("journal", "list", "--journal", file().toString(), "--format", "html"));
        assertTrue(page.contains("href=\"./photos/a%20%231.jpg\""), page);
        String words = page.replaceAll("</?span[^>]*>", "");
        assertTrue(words.contains("gloam proof --trip TRIP.yaml --site"), page);
        assertTrue(words.contains("--f-number 11 --azimuth 180 --altitude 45 --from 2027-01-10T20:00 --lasts "
                + "7200s"), page);
        assertRefused("no file", correct("--picture", folder.resolve("none.jpg").toString()));
        ok(correct("--clear", "picture"));
        assertTrue(sheet().get("picture").isNull());
    }

    @Test
    void theOnlyFilmIsFitted() {
        String named = ok(Run.of("journal", "fit", "--journal", "demo-data/journal.jsonl", "--film",
                "instant-mono-640"));
        assertEquals(named, ok(Run.of("journal", "fit", "--journal", "demo-data/journal.jsonl")));
        ok(add("--film", "digital-640", "--sky-mag-arcsec2", "21", "--f-number", "8", "--open",
                "2027-01-11T20:00Z/1h"));
        assertRefused("sheets of 2 films, instant-mono-640, digital-640; use --film", Run.of("journal", "fit",
                "--journal", file().toString()));
    }

    private void planned(int sheet, String wish, String hour, String toneStops, String... outcome)
            throws IOException {
        Path plan = folder.resolve("plan" + sheet + ".json");
        Files.writeString(plan, "{\"nights\": [{\"site\": \"Charca Quieta\", \"windows\": ["
                + WINDOW.formatted(sheet, wish, hour, hour, toneStops) + "]}]}");
        String[] options = new String[6 + outcome.length];
        System.arraycopy(new String[] {"--trip", "demo-data/trip.yaml", "--plan", plan.toString(), "--sheet",
                String.valueOf(sheet)}, 0, options, 0, 6);
        System.arraycopy(outcome, 0, options, 6, outcome.length);
        ok(add(options));
    }

    private static List<String> groups(JsonNode tallies) {
        return tallies.valueStream().map(tally -> tally.get("name").asString()).toList();
    }

    private JsonNode json(String command, String... more) throws IOException {
        String[] args = new String[6 + more.length];
        System.arraycopy(new String[] {"journal", command, "--journal", file().toString(), "--format",
            "json"}, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        return new ObjectMapper().readTree(ok(Run.of(args)));
    }
}
