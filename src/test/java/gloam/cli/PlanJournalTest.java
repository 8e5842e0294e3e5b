package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the journal has seen of a trip is taken off its plan. */
class PlanJournalTest {

    @TempDir
    Path folder;

    private MoorTrip trip;

    @BeforeEach
    void noSheet() {
        trip = new MoorTrip(folder);
    }

    private JsonNode plan(String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("--journal", trip.journal()));
        args.addAll(List.of(more));
        return new ObjectMapper().readTree(Timetables.json(trip.file(), args.toArray(String[]::new)));
    }

    private static List<String> wishes(JsonNode plan) throws IOException {
        return Timetables.windows(plan.toString()).stream().map(window -> window.get("wish").asString())
                .toList();
    }

    @Test
    void sheetsOfTheTripAreSpentAndServeTheWishTheyName() throws IOException {
        trip.add("2027-01-06T20:00/1h", "--wish", "Wheel");
        JsonNode plan = plan();
        assertEquals(List.of("South"), wishes(plan));
        assertEquals(2, Timetables.windows(plan.toString()).get(0).get("sheet").asInt(),
                "the first is spent");
        assertEquals("2027-01-06", plan.get("nights").get(0).get("night").asString(), "that night goes on");
        Run run = Run.of("plan", "--trip", trip.file(), "--journal", trip.journal());
        assertTrue(run.err().contains("note: 1 sheet of the journal spent on this trip; served: Wheel"),
                run.err());
    }

    /** A spoiled sheet is spent, but its wish is wanted still; one that names no wish serves none. */
    @Test
    void whatFailedIsWantedAgain() throws IOException {
        trip.add("2027-01-06T20:00/1h", "--wish", "Wheel", "--spoiled-by", "dew");
        trip.add("2027-01-06T22:00/1h", "--wish", "South", "--no-kept");
        trip.add("2027-01-07T22:00/1h");
        JsonNode plan = plan();
        assertEquals(1, wishes(plan).size(), "one sheet of four is left");
        assertEquals(4, Timetables.windows(plan.toString()).get(0).get("sheet").asInt());
    }

    @Test
    void otherTripsWithdrawnSheetsAndOtherPlacesDoNotCount() throws IOException {
        trip.add("2026-12-06T20:00/1h", "--wish", "Wheel");
        trip.add("2027-01-06T20:00/1h", "--wish", "Wheel");
        Run.of("journal", "add", "--journal", trip.journal(), "--corrects", "2", "--withdraw");
        assertEquals(0, Run.of("journal", "add", "--journal", trip.journal(), "--place", "41,-2,1000",
                "--zone", "UTC",
                "--film", "instant-mono-640", "--f-number", "8", "--focal-length", "120", "--azimuth", "0",
                "--altitude", "41", "--open", "2027-01-06T20:00/1h").exit());
        assertEquals(2, wishes(plan()).size());
        assertEquals(1, Timetables.windows(plan().toString()).get(0).get("sheet").asInt());
    }

    @Test
    void whatIsSaidOutranksTheJournal() throws IOException {
        trip.add("2027-01-06T20:00/1h", "--wish", "Wheel");
        assertEquals(List.of("Wheel"), wishes(plan("--done", "South")));
        assertEquals(4, Timetables.windows(plan("--spent", "3").toString()).get(0).get("sheet").asInt());
    }

    @Test
    void aSheetOfAPlanTakesItsWish() throws IOException {
        Path saved = Timetables.saved(folder.resolve("plan.json"), trip.file());
        assertEquals(0, Run.of("journal", "add", "--journal", trip.journal(), "--trip", trip.file(), "--plan",
                saved.toString(), "--sheet", "1").exit());
        String wish = Timetables.windows(Files.readString(saved)).get(0).get("wish").asString();
        assertTrue(Run.of("journal", "list", "--journal", trip.journal()).out()
                .contains("for \"" + wish + "\""));
        assertTrue(!wishes(plan()).contains(wish));
        Run.of("journal", "add", "--journal", trip.journal(), "--corrects", "1", "--kept");
        assertTrue(!wishes(plan()).contains(wish), "a correction keeps the wish");
        Run.of("journal", "add", "--journal", trip.journal(), "--corrects", "1", "--clear", "wish");
        assertTrue(wishes(plan()).contains(wish));
    }
}
