package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What a timetable says of nights with nothing, of wishes not served and of sheets left over; and trails. */
class LeftOverTest {

    @TempDir
    private Path folder;
    private String trip;

    /** New Moon on 7 January 2027: no Moon to light snow before the 10th. */
    @BeforeEach
    void tripOfFourNights() throws IOException {
        trip = Files.writeString(folder.resolve("trip.yaml"), """
                title: "Moor gate"
                sites:
                  - name: "Gate"
                    latitude-deg: 54.466667
                    longitude-deg: -2.333333
                    height-m: 420
                    zone: Europe/London
                nights: {from: 2027-01-04, to: 2027-01-07}
                camera:
                  name: "Old box"
                  focal-length-mm: 120
                  frame-mm: {width: 80, height: 80}
                  f-numbers: [8, 16]
                  changeover-min: 5
                film: instant-mono-640
                sheets: 5
                wishes:
                  - name: Wheel over the gate
                    pole: {roll-deg: 0}
                    sky: dark
                    tone-at-most-stops: -1
                    exposure-min: {shortest: 90, longest: 90}
                  - name: Blue gate
                    point: {azimuth-deg: 235, altitude-deg: 10}
                    sky: dusk
                    tone-stops: 0
                    exposure-min: {shortest: 10, longest: 60}
                    repeat: 2
                  - name: Snow under the Moon
                    point: {azimuth-deg: 20, altitude-deg: 12}
                    sky: moonlit
                    tone-stops: 0
                    exposure-min: {shortest: 5, longest: 60}
                """).toString();
    }

    @Test
    void nightsWithNothingAreOneLineAndWishesNotServedStandOnce() throws Exception {
        JsonNode plan = new ObjectMapper().readTree(Timetables.json(trip));
        List<String> nothing = plan.get("nights").valueStream()
                .filter(night -> night.get("windows").isEmpty())
                .map(night -> night.get("nothing").asString()).toList();
        assertFalse(nothing.isEmpty());
        assertEquals(1, nothing.stream().distinct().count(), nothing::toString);
        assertTrue(plan.get("nights").valueStream().filter(night -> !night.get("windows").isEmpty())
                .allMatch(night -> night.get("nothing").isNull()));
        String text = Timetables.plan("text", trip);
        assertEquals(plan.get("nights").size() - nothing.size(), text.split("\\ndark ").length - 1, text);
        assertEquals(2, text.split(nothing.get(0)).length, text);
        assertEquals(2, text.split("Snow under the Moon").length - 1, text);
        JsonNode unserved = plan.get("unserved");
        assertEquals(1, unserved.size(), unserved::toString);
        assertEquals("Snow under the Moon", unserved.get(0).get("wish").asString());
        assertEquals(0, unserved.get(0).get("served").asInt());
        assertTrue(text.replaceAll("\\s+", " ").contains("- Snow under the Moon: "
                + day(unserved.get(0).get("night").asString())
                + ": " + unserved.get(0).get("reason").asString().replaceAll("\\s+", " ")), text);
    }

    private static String day(String date) {
        return LocalDate.parse(date).format(DateTimeFormatter
                .ofPattern("EEE uuuu-MM-dd", Locale.ENGLISH));
    }

    @Test
    void sheetsLeftOverAreNamedWithWhatWouldUseThem() throws Exception {
        JsonNode plan = new ObjectMapper().readTree(Timetables.json(trip));
        assertEquals(plan.get("sheets").asInt() - plan.get("sheetsUsed").asInt(),
                plan.get("sheetsLeft").asInt());
        String text = Timetables.plan("text", trip).replaceAll("\\s+", " ");
        assertTrue(text.contains(plan.get("sheetsLeft").asInt()
                + " sheets left over: Snow under the Moon would use 1 of them"), text);
    }

    /**
     * The sky turns 15.04° an hour: 22.6° in an hour and a half. In the south-west stars go down, rightwards.
     */
    @Test
    void aWheelHasArcsAndATrailADirection() throws Exception {
        String text = Timetables.plan("text", trip);
        assertTrue(text.lines().anyMatch(line -> line.contains("Wheel over the gate")
                && line.contains(" 23° arcs ")), text);
        assertTrue(text.lines().anyMatch(line -> line.contains("Blue gate") && line.contains(" mm ↘ ")),
                text);
        assertTrue(text.replaceAll("\\s+", " ").contains(" mm ↘ down and right"), text);
        assertFalse(text.contains(" 0 mm"), text);
    }
}
