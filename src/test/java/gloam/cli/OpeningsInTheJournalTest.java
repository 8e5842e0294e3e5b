package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Sheets of several openings as the journal keeps them. */
class OpeningsInTheJournalTest {

    @TempDir
    Path folder;

    private String trip() throws IOException {
        return TwoOpenings.trip(folder, TwoOpenings.TEXT, "tone-stops: 0");
    }

    private JsonNode added(String trip, String name, String... args) throws IOException {
        String journal = folder.resolve(name + ".jsonl").toString();
        Run run = Run.of(Stream.concat(Stream.of("journal", "add", "--journal", journal, "--trip", trip),
                Stream.of(args)).toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper()
                .readTree(Files.readString(Path.of(journal)).lines().reduce((one, last) -> last)
                .orElseThrow());
    }

    /** The middle of the sky's light in an opening. */
    private static double light(JsonNode line, int opening) {
        JsonNode openings = line.get("openings");
        JsonNode light = openings.get(opening).get("sky-cd-m2");
        return light.get(light.size() / 2).asDouble();
    }

    /** Each opening has the light of its own aim, through its own f-number. */
    @Test
    void suchASheetOfAPlanIsPutIntoTheJournalWithAllItsOpenings() throws IOException {
        String trip = trip();
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        JsonNode window = TwoOpenings.first(trip);
        String sheet = window.get("sheet").asString();
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet", sheet);
        JsonNode later = window.get("openings").get(1);
        JsonNode alone = added(trip, "alone", "--film", "instant-mono-640", "--f-number", "11", "--azimuth",
                later.get("azimuthDeg").asString(), "--altitude", later.get("altitudeDeg").asString(),
                "--open", later.get("openAt").asString() + "/" + later.get("closeAt").asString());
        assertEquals(2, whole.get("openings").size());
        assertEquals(light(alone, 0), light(whole, 1), 1e-3 * light(alone, 0));
        JsonNode second = whole.get("openings").get(1);
        assertEquals(11, second.get("f-number").asDouble());
        assertEquals(alone.get("azimuth-deg"), second.get("azimuth-deg"));
        assertEquals(alone.get("altitude-deg"), second.get("altitude-deg"));
        assertFalse(whole.get("openings").get(0).has("azimuth-deg"), "the sheet's own");
    }

    /** A correction computes the light of every opening at its own aim, unless it gives one aim for all. */
    @Test
    void aCorrectionComputesEachOpeningsLightAtItsOwnAim() throws IOException {
        String trip = trip();
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        String sheet = TwoOpenings.first(trip).get("sheet").asString();
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet", sheet);
        Path journal = folder.resolve("whole.jsonl");
        long before = Files.readAllLines(journal).size();
        Run again = Run.of("journal", "add", "--journal", journal.toString(), "--trip", trip, "--corrects",
                "1", "--tone", "dark");
        assertEquals(0, again.exit(), again.err());
        JsonNode judged = new ObjectMapper().readTree(Files.readAllLines(journal).get((int) before));
        assertFalse(judged.get("change").has("sky-cd-m2"), "nothing about the light changed: " + judged);
        JsonNode oneAim = added(trip, "whole", "--corrects", "1", "--azimuth", "230", "--altitude", "15");
        JsonNode times = oneAim.get("change").get("times");
        assertFalse(times.get(1).has("azimuth-deg"), "one aim for all: " + oneAim);
        assertEquals(11, times.get(1).get("f-number").asDouble(), "each at its own f-number still");
        JsonNode sky = oneAim.get("change").get("sky-cd-m2").get(1);
        assertTrue(Math.abs(sky.get(sky.size() / 2).asDouble() / light(whole, 1) - 1) > 0.01,
                "other light low in the south-west than at the pole");
    }

    /** A correction of the lens leaves the sky as it was, and each opening its f-number. */
    @Test
    void aCorrectionOfOneFNumberForAllLeavesEachAim() throws IOException {
        String trip = trip();
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        JsonNode whole = added(trip, "whole", "--plan", saved.toString(), "--sheet",
                TwoOpenings.first(trip).get("sheet").asString());
        JsonNode change = added(trip, "whole", "--corrects", "1", "--f-number", "8").get("change");
        assertEquals(8, change.get("lens").get("f-number").asDouble());
        assertFalse(change.get("times").get(1).has("f-number"));
        assertEquals(whole.get("openings").get(1).get("azimuth-deg"),
                change.get("times").get(1).get("azimuth-deg"));
    }

    /**
     * The page knows when the first opening was opened and the last one closed; the others are as planned.
     */
    @Test
    void suchASheetIsHandedOverByThePageWithAllItsOpenings() throws IOException {
        String trip = trip();
        JsonNode window = TwoOpenings.first(trip);
        Path page = Files.writeString(folder.resolve("page.json"), """
                {"schema": "gloam-page/1", "identity": "a", "title": "Two on one", "skipped": [],
                 "nights": [{"night": "2027-01-05", "site": "Moor gate", "windows": [{"sheet": 1,
                 "wish": "Last light and the wheel", "film": "instant-mono-640", "camera": "box",
                 "openAt": %s, "closeAt": %s, "azimuthDeg": 230, "altitudeDeg": 15, "fNumber": %s,
                 "note": null, "openings": %s}]}]}
                """.formatted(window.get("openAt"), window.get("closeAt"), window.get("fNumber"),
                window.get("openings")));
        JsonNode line = added(trip, "page", "--from-page", page.toString());
        assertEquals(2, line.get("openings").size());
        assertEquals(Timetables.at(window.get("openings").get(1), "openAt"),
                Instant.parse(line.get("openings").get(1).get("open").asString()));
    }

    @Test
    void aWalkOfTheNightShowsAllOpeningsAndTakesThemAsPlanned() throws IOException {
        String trip = trip();
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip);
        String journal = folder.resolve("walk.jsonl").toString();
        Run run = Run.answering(List.of("", "", "", "", "", "", "", "", "", "-", "-"), "journal", "add",
                "--journal", journal, "--trip", trip, "--plan", saved.toString(), "--night", "2027-01-05");
        assertTrue(run.err().matches("(?s).*Sheet 1, Last light and the wheel: open \\[\\d\\d:\\d\\d/"
                + "\\d\\d:\\d\\d \\d\\d:\\d\\d/\\d\\d:\\d\\d].*"), run.err());
        assertEquals(2, new ObjectMapper().readTree(Files.readString(Path.of(journal)).lines().findFirst()
                .orElseThrow()).get("openings").size());
    }

    @Test
    void openingsOutOfOrderAreToldByTheSitesClocks() throws IOException {
        Run run = Run.of("journal", "add", "--journal", folder.resolve("j.jsonl").toString(), "--place",
                "40.4,-1.2,1300", "--zone", "Europe/Madrid", "--film", "instant-mono-640", "--f-number", "11",
                "--azimuth", "0", "--altitude", "40", "--open", "2027-02-08T22:00/1h", "--open",
                "2027-02-08T21:00/1h");
        assertTrue(run.err().contains("the shutter opens at 2027-02-08T21:00+01:00 before it has closed"),
                run.err());
    }
}
