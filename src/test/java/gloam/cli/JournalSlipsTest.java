package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is noted wrong by a slip of the pen is written, since it may be true, but not without a word. */
class JournalSlipsTest extends JournalOfOneSheet {

    private static final String TWO_SITES = """
            title: A week on the moor
            sites:
              - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
              - {name: Far hill, place: "54.9,-2.5,620", zone: Europe/London}
            nights: {from: 2027-01-05, to: 2027-01-11}
            camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8]}
            film: instant-mono-640
            sheets: 4
            wishes:
              - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
            """;

    /** Sunrise at 41° N 2° W on 2027-01-11 is at 07:29 UTC, to the minute: the program's own events. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "41|2027-01-11T06:00Z/3h|the Sun is up while the shutter is open, from 2027-01-11T07:",
        "-4|2027-01-10T22:00Z/1h|the camera points below the horizon; check --altitude",
        "41|2037-01-10T22:00Z/1h|the shutter opens later than now; check --open",
        "41|2027-01-10T22:00Z/1h|"})
    void anOddSheetIsWrittenWithANote(String altitudeDeg, String open, String note) throws IOException {
        Run run = add("--film", "instant-mono-640", "--place", "41,-2,1000", "--zone", "UTC", "--f-number",
                "8", "--azimuth", "0", "--altitude", altitudeDeg, "--open", open);
        ok(run);
        assertEquals(2, sheets().size());
        assertEquals(note == null ? 0 : 1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(note == null ? "" : "note: " + note), run.err());
        assertEquals(1, correctSecond("--open", "2037-01-10T22:00Z/2h", "--place", "41,-2,1000", "--zone",
                "UTC").err().lines().filter(line -> line.contains("later than now")).count());
    }

    @Test
    void theFirstOfSeveralSitesIsNotTakenInSilence() throws IOException {
        String trip = Files.writeString(folder.resolve("trip.yaml"), TWO_SITES).toString();
        String[] sheet = {"--trip", trip, "--azimuth", "0", "--altitude", "54", "--open",
            "2027-01-07T20:00/1h"};
        assertEquals(List.of("note: the trip has 2 sites; this is for \"Moor gate\"; choose with --site"),
                add(sheet).err().lines().toList());
        assertEquals("", add(with(sheet, "--site", "Far hill")).err());
        assertEquals(List.of("Moor gate", "Far hill"), Arrays.asList(sheets().get(1).get("site").asString(),
                sheets().get(2).get("site").asString()));
    }

    /** The plan of another trip would put the light of one place on a sheet exposed at another. */
    @Test
    void aPlanOfAnotherTripIsRefused() throws IOException {
        String trip = Files.writeString(folder.resolve("trip.yaml"), TWO_SITES).toString();
        String plan = folder.resolve("plan.json").toString();
        ok(Run.of("plan", "--trip", "demo-data/trip-south.yaml", "--out", plan));
        assertRefused("the plan's site \"Stilvlakte\" is not in the trip; give the trip that was planned, or "
                + "--site NAME (--plan, --trip)", add("--trip", trip, "--plan", plan, "--sheet", "1"));
        assertTrue(add("--trip", trip, "--plan", plan, "--sheet", "1").err().startsWith("the plan's site"));
        assertEquals(1, sheets().size());
        ok(add("--trip", trip, "--plan", plan, "--sheet", "1", "--site", "Far hill"));
        assertEquals("Far hill", sheets().get(1).get("site").asString());
    }

    /** The fit's words on four sheets of two nights that all came out so. */
    private String fitted(String tone) {
        for (String open : List.of("2027-01-05T20:00Z/1h", "2027-01-05T22:00Z/30m", "2027-01-06T20:00Z/1h",
                "2027-01-06T22:00Z/20m")) {
            ok(add("--film", "instant-mono-640", "--sky-mag-arcsec2", "21.5", "--f-number", "8", "--open",
                    open, "--tone", tone));
        }
        return ok(Run.of("journal", "fit", "--journal", file().toString())).replaceAll("\\s+", " ");
    }

    /** By words alone a judge who is off looks like another film; what tells the two apart is named. */
    @Test
    void wordsFarFromPublishedAskForATone() {
        String said = fitted("light");
        assertTrue(said.contains("words alone cannot show whether the film is faster or judged too light; "
                + "measure the tone of a sheet of each night (--tone-stops), or read its scan (gloam journal "
                + "read)"), said);
        assertFalse(said.contains("fits no such film"), said);
    }

    /** White in an hour at f/8 under a dark sky is more than six stops off, as no film of this kind is. */
    @Test
    void sheetsThatFitNoSuchFilmAreNotPassedOver() {
        String said = fitted("white");
        assertTrue(said.contains("what is noted of 4 of the 4 sheets fits no such film, so that it was left "
                + "aside; check film, f-number, times and light of these entries"), said);
    }

    @Test
    void timesWithoutASiteAreMarkedAsUtc() {
        ok(add(COMPUTED));
        List<String> rows = ok(Run.of("journal", "list", "--journal", file().toString())).lines().toList();
        assertTrue(rows.get(1).contains("2027-01-10 20:00Z "), rows.get(1));
        assertTrue(rows.get(2).contains("2027-01-10 20:00  "), rows.get(2));
    }
}
