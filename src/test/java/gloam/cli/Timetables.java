package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Timetables as programs read them: JSON and iCalendar. */
final class Timetables {

    private Timetables() {
    }

    static String ics(String trip, String... more) {
        return plan("ics", trip, more);
    }

    static String json(String trip, String... more) {
        return plan("json", trip, more);
    }

    static String plan(String format, String trip, String... more) {
        List<String> args = new ArrayList<>(List.of("plan", "--trip", trip, "--format", format));
        args.addAll(List.of(more));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    /** Read by ical4j. */
    static Calendar read(String ics) throws Exception {
        return new CalendarBuilder().build(new StringReader(ics));
    }

    static String value(Component component, String property) {
        return component.getRequiredProperty(property).getValue();
    }

    static Path saved(Path file, String trip, String... more) throws IOException {
        return Files.writeString(file, json(trip, more));
    }

    static List<JsonNode> windows(String json) throws IOException {
        List<JsonNode> windows = new ArrayList<>();
        new ObjectMapper().readTree(json).get("nights")
                .forEach(night -> night.get("windows").forEach(windows::add));
        return windows;
    }

    static Instant at(JsonNode window, String field) {
        return OffsetDateTime.parse(window.get(field).asString()).toInstant();
    }

    /** The demo's trip with some of its text changed, each piece to the one after it. */
    static String demo(Path folder, String... changes) throws IOException {
        String text = Files.readString(Path.of("demo-data/trip.yaml"));
        for (int number = 0; number < changes.length; number += 2) {
            assertTrue(text.contains(changes[number]), changes[number]);
            text = text.replace(changes[number], changes[number + 1]);
        }
        Files.copy(Path.of("demo-data/skyline-loma.csv"), folder.resolve("skyline-loma.csv"),
                StandardCopyOption.REPLACE_EXISTING);
        return Files.writeString(folder.resolve("trip.yaml"), text).toString();
    }
}
