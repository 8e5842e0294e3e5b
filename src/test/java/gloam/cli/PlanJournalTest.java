package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the journal has seen of a trip is taken off its plan. */
class PlanJournalTest {

    @TempDir
    Path folder;

    private String trip() throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: A week on the moor
                sites:
                  - {name: Moor gate, latitude-deg: 54.5, longitude-deg: -2.3, height-m: 420, zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-11}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 4
                wishes:
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
                  - {name: South, point: {azimuth-deg: 180, altitude-deg: 40}, tone-at-most-stops: -1,
                     exposure-min: {shortest: 60, longest: 90}}
                """).toString();
    }

    private String journal() {
        return folder.resolve("journal.jsonl").toString();
    }

    private void add(String open, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", journal(), "--trip",
                trip(), "--f-number", "8", "--azimuth", "0", "--altitude", "54", "--open", open));
        args.addAll(List.of(more));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
    }

    private JsonNode plan(String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("--journal", journal()));
        args.addAll(List.of(more));
        return new ObjectMapper().readTree(Timetables.json(trip(), args.toArray(String[]::new)));
    }

    private static List<String> wishes(JsonNode plan) throws IOException {
        return Timetables.windows(plan.toString()).stream().map(window -> window.get("wish").asString())
                .toList();
    }

    @Test
    void sheetsOfTheTripAreSpentAndServeTheWishTheyName() throws IOException {
        add("2027-01-06T20:00/1h", "--wish", "Wheel");
        JsonNode plan = plan();
        assertEquals(List.of("South"), wishes(plan));
        assertEquals(2, Timetables.windows(plan.toString()).get(0).get("sheet").asInt(),
                "the first is spent");
        assertEquals("2027-01-06", plan.get("nights").get(0).get("night").asString(), "that night goes on");
        Run run = Run.of("plan", "--trip", trip(), "--journal", journal());
        assertTrue(run.err().contains("note: 1 sheet of the journal spent on this trip; served: Wheel"),
                run.err());
    }

    /** A spoiled sheet is spent, but its wish is wanted still; one that names no wish serves none. */
    @Test
    void whatFailedIsWantedAgain() throws IOException {
        add("2027-01-06T20:00/1h", "--wish", "Wheel", "--spoiled-by", "dew");
        add("2027-01-06T22:00/1h", "--wish", "South", "--no-kept");
        add("2027-01-07T22:00/1h");
        JsonNode plan = plan();
        assertEquals(1, wishes(plan).size(), "one sheet of four is left");
        assertEquals(4, Timetables.windows(plan.toString()).get(0).get("sheet").asInt());
    }

    @Test
    void otherTripsWithdrawnSheetsAndOtherPlacesDoNotCount() throws IOException {
        add("2026-12-06T20:00/1h", "--wish", "Wheel");
        add("2027-01-06T20:00/1h", "--wish", "Wheel");
        Run.of("journal", "add", "--journal", journal(), "--corrects", "2", "--withdraw");
        assertEquals(0, Run.of("journal", "add", "--journal", journal(), "--place", "41,-2,1000", "--zone",
                "UTC",
                "--film", "instant-mono-640", "--f-number", "8", "--focal-length", "120", "--azimuth", "0",
                "--altitude", "41", "--open", "2027-01-06T20:00/1h").exit());
        assertEquals(2, wishes(plan()).size());
        assertEquals(1, Timetables.windows(plan().toString()).get(0).get("sheet").asInt());
    }

    @Test
    void whatIsSaidOutranksTheJournal() throws IOException {
        add("2027-01-06T20:00/1h", "--wish", "Wheel");
        assertEquals(List.of("Wheel"), wishes(plan("--done", "South")));
        assertEquals(4, Timetables.windows(plan("--spent", "3").toString()).get(0).get("sheet").asInt());
    }

    @Test
    void aSheetOfAPlanTakesItsWish() throws IOException {
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip());
        assertEquals(0, Run.of("journal", "add", "--journal", journal(), "--trip", trip(), "--plan",
                saved.toString(), "--sheet", "1").exit());
        String wish = Timetables.windows(Files.readString(saved)).get(0).get("wish").asString();
        assertTrue(Run.of("journal", "list", "--journal", journal()).out().contains("for \"" + wish + "\""));
        assertTrue(!wishes(plan()).contains(wish));
        Run.of("journal", "add", "--journal", journal(), "--corrects", "1", "--kept");
        assertTrue(!wishes(plan()).contains(wish), "a correction keeps the wish");
        Run.of("journal", "add", "--journal", journal(), "--corrects", "1", "--clear", "wish");
        assertTrue(wishes(plan()).contains(wish));
    }
}
