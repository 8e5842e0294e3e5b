package gloam.cli;

import static gloam.cli.Timetables.demo;
import static gloam.cli.Timetables.ics;
import static gloam.cli.Timetables.json;
import static gloam.cli.Timetables.read;
import static gloam.cli.Timetables.saved;
import static gloam.cli.Timetables.value;
import static gloam.cli.Timetables.windows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * A timetable that takes the place of an earlier one: who its windows are, and what calendars are told (RFC
 * 5545, 3.8.7.4).
 */
class TakenOverTimetableTest {

    /** A new timetable moves the events of the old one: what is planned again keeps its UID. */
    @Test
    void keepsTheUidsOfAChangedTimetable() throws Exception {
        List<String> before = uids(ics("demo-data/trip.yaml"));
        List<String> after = uids(ics("demo-data/trip.yaml", "--from-now", "2027-02-08T19:40"));
        assertTrue(before.containsAll(after) && !after.isEmpty(), before + " then " + after);
    }

    /** Served once, a wish goes on with its second sheet: the event of the first stays what it was. */
    @Test
    void aRepeatKeepsItsNumberWhenTheFirstIsDone() throws Exception {
        List<JsonNode> before = windows(json("demo-data/trip.yaml")).stream()
                .filter(window -> window.get("wish").asString().equals("Pond under the Moon")).toList();
        assertEquals(2, before.size());
        String later = before.get(0).get("closeAt").asString().substring(0, 10) + "T23:00";
        List<JsonNode> after = windows(json("demo-data/trip.yaml", "--from-now", later, "--spent", "1",
                "--done", "Pond under the Moon")).stream()
                .filter(window -> window.get("wish").asString().equals("Pond under the Moon")).toList();
        assertEquals(1, after.size());
        assertEquals(before.get(1).get("identity").asString(), after.get(0).get("identity").asString());
    }

    /**
     * Another site, kit or night leaves identities alone; another trip, be it of the same title, has its own.
     */
    @Test
    void identityIsTheTripsTheWishsAndTheRepeats(@TempDir Path folder) throws Exception {
        List<String> before = identities(json("demo-data/trip.yaml"));
        for (String[] change : new String[][] {{"Loma Callada", "Other name"},
                {"to: 2027-02-17", "to: 2027-02-16"},
            {"focal-length-mm: 120", "focal-length-mm: 121"}}) {
            List<String> after = identities(json(demo(folder, change[0], change[1])));
            assertTrue(before.containsAll(after) && !after.isEmpty(), change[0]);
        }
        for (String[] change : new String[][] {{"from: 2027-02-08", "from: 2027-02-09"},
            {"title: Ten nights", "title: Some nights"}}) {
            List<String> after = identities(json(demo(folder, change[0], change[1])));
            assertTrue(after.stream().noneMatch(before::contains), change[0]);
        }
    }

    /** What an earlier timetable announced is left, moved under a greater number, or cancelled under one. */
    @Test
    void takesThePlaceOfAnEarlierTimetable(@TempDir Path folder) throws Exception {
        Path first = saved(folder.resolve("first.json"), "demo-data/trip.yaml");
        Map<String, JsonNode> before = byIdentity(Files.readString(first));
        String trip = demo(folder, "shortest: 180", "shortest: 240", "title: Ten nights", "title: New title",
                "  - name: Venus into the dawn", "  - name: Venus at dawn");
        Path second = saved(folder.resolve("second.json"), trip, "--previous", first.toString());
        Map<String, JsonNode> after = byIdentity(Files.readString(second));
        assertEquals(before.size(), after.size());
        int same = 0;
        for (String identity : before.keySet()) {
            JsonNode was = before.get(identity);
            JsonNode is = after.get(identity);
            if (is == null) {
                assertEquals("Venus into the dawn", was.get("wish").asString());
            } else if (List.of("sheet", "prepareAt", "openAt", "closeAt", "fNumber", "azimuthDeg",
                    "altitudeDeg").stream()
                    .allMatch(field -> is.get(field).equals(was.get(field)))) {
                assertEquals(was.get("sequence"), is.get("sequence"));
                same++;
            } else {
                assertTrue(is.get("sequence").asInt() > was.get("sequence").asInt(), is.toString());
            }
        }
        assertTrue(same > 0 && same < before.size() - 1, "unchanged: " + same);
        String ics = ics(trip, "--previous", first.toString());
        assertFalse(read(ics).validate().hasErrors(), ics);
        List<VEvent> cancelled = read(ics).<VEvent>getComponents(Component.VEVENT).stream()
                .filter(event -> event.getProperty(Property.STATUS).isPresent()).toList();
        JsonNode venus = before.values().stream()
                .filter(window -> window.get("wish").asString().equals("Venus into the dawn")).findFirst()
                .orElseThrow();
        assertEquals(2, cancelled.size());
        assertEquals(venus.get("identity").asString(), value(cancelled.get(0), Property.UID));
        for (VEvent event : cancelled) {
            assertEquals("CANCELLED", value(event, Property.STATUS));
            assertTrue(Integer.parseInt(value(event, Property.SEQUENCE)) > venus.get("sequence").asInt());
            assertTrue(event.getAlarms().isEmpty());
        }
        assertTrue(uids(ics("demo-data/trip.yaml")).containsAll(
                cancelled.stream().map(event -> value(event, Property.UID)).toList()));
        comesBack(folder, first, second, venus);
    }

    /**
     * What was cancelled and is planned again has a greater number still; what stays cancelled keeps its own.
     */
    private static void comesBack(Path folder, Path first, Path second, JsonNode venus) throws Exception {
        JsonNode cancelled = new ObjectMapper().readTree(second.toFile()).get("cancelled");
        assertEquals(1, cancelled.size());
        Path third = saved(folder.resolve("third.json"), "demo-data/trip.yaml", "--previous",
                second.toString());
        JsonNode again = byIdentity(Files.readString(third)).get(venus.get("identity").asString());
        assertTrue(again.get("sequence").asInt() > cancelled.get(0).get("sequence").asInt());
        assertEquals(byIdentity(Files.readString(first)).keySet(), byIdentity(Files.readString(third))
                .keySet());
        Path unchanged = saved(folder.resolve("fourth.json"), "demo-data/trip.yaml", "--previous",
                third.toString());
        assertEquals(new ObjectMapper().readTree(third.toFile()),
                new ObjectMapper().readTree(unchanged.toFile()));
    }

    /** What was open before the rest of the trip is planned has been: it is not taken back. */
    @Test
    void whatIsPastIsNotCancelled(@TempDir Path folder) throws Exception {
        Path first = saved(folder.resolve("first.json"), "demo-data/trip.yaml");
        List<JsonNode> before = windows(Files.readString(first));
        String noon = "2027-02-14T12:00";
        List<String> wishes = before.stream()
                .filter(window -> window.get("openAt").asString().compareTo(noon) < 0)
                .map(window -> window.get("wish").asString()).toList();
        List<String> more = new ArrayList<>(List.of("--previous", first.toString(), "--from-now", noon,
                "--spent", String.valueOf(wishes.size())));
        wishes.forEach(wish -> more.addAll(List.of("--done", wish)));
        JsonNode rest = new ObjectMapper().readTree(json("demo-data/trip.yaml", more.toArray(String[]::new)));
        assertEquals(0, rest.get("cancelled").size(), rest.get("cancelled").toString());
        assertEquals(before.subList(wishes.size(), before.size()), windows(rest.toString()));
    }

    @Test
    void refusesAPlanThatIsNone(@TempDir Path folder) throws Exception {
        Path other = saved(folder.resolve("other.json"), "demo-data/trip-south.yaml");
        Run run = Run.of("plan", "--trip", "demo-data/trip.yaml", "--previous", other.toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("is the plan of another trip") && run.err().contains("--previous"),
                run.err());
        Path none = folder.resolve("none.json");
        for (String text : List.of("{}", "[]", "{\"identity\": 1, \"nights\": [], \"cancelled\": []}",
                Files.readString(other).replaceFirst("\"sequence\" : \\d+", "\"sequence\" : 2100000000"),
                Files.readString(other).replaceFirst("\"sequence\" : \\d+,", ""))) {
            Files.writeString(none, text);
            Run bad = Run.of("plan", "--trip", "demo-data/trip-south.yaml", "--previous", none.toString());
            assertEquals(2, bad.exit(), bad.out());
            assertTrue(bad.err().contains("none.json:"), bad.err());
        }
    }

    private static List<String> identities(String json) throws IOException {
        return windows(json).stream().map(window -> window.get("identity").asString()).toList();
    }

    private static Map<String, JsonNode> byIdentity(String json) throws IOException {
        return windows(json).stream()
                .collect(Collectors.toMap(window -> window.get("identity").asString(), window -> window));
    }

    private static List<String> uids(String ics) throws Exception {
        return read(ics).getComponents(Component.VEVENT).stream()
                .map(event -> event.getRequiredProperty(Property.UID).getValue()).toList();
    }
}
