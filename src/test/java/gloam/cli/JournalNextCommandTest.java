package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The advice for the next sheet, against what exposing and planning say of the same one. */
class JournalNextCommandTest {

    private static final String DEMO = "demo-data/journal.jsonl";
    private static final List<String> MEASURED = List.of("--film", "instant-mono-640", "--sky-mag-arcsec2",
            "20.5", "--f-number", "5.6,8,11", "--tone", "-1", "--journal", DEMO);
    private static final List<String> THERE = List.of("--film", "instant-mono-640", "--place", "41,-2,1000",
            "--zone", "Europe/Madrid");

    @TempDir
    private Path folder;

    @Test
    void oneBracketAndOneChanceWhereverTheyAreAskedFor() {
        JsonNode next = json("journal", "next", MEASURED, "--sheets", "3", "--longest", "20h");
        JsonNode expose = json("expose", "", MEASURED, "--sheets", "3");
        JsonNode single = json("expose", "", MEASURED);
        for (int i = 0; i < 3; i++) {
            JsonNode choice = next.get("choices").get(i);
            JsonNode row = expose.get("exposures").get(i);
            assertEquals(row.get("correctedS"), choice.get("exposureS"));
            assertEquals(row.get("bracket"), choice.get("bracket"));
            assertEquals(single.get("exposures").get(i).get("skyToneSpreadStops"), choice.get("spreadStops"));
            // 2 Φ(0.5 / s) - 1 and 2 Φ(1.5 / s) - 1: one sheet reaches a third of what three reach
            assertTrue(choice.get("rightChance").asDouble()
                    < choice.get("bracket").get("chanceOfOneHit").asDouble());
        }
    }

    @Test
    void theLongestExposureIsTriedWhereTheToneNeedsMore() {
        JsonNode next = json("journal", "next", MEASURED, "--longest", "50m");
        for (JsonNode choice : next.get("choices")) {
            double needed = choice.get("toneStops").asDouble();
            assertTrue(choice.get("exposureS").asDouble() <= 3000, choice.toString());
            assertTrue(needed <= -0.999, choice.toString());
        }
        assertEquals(3000, next.get("choices").get(2).get("exposureS").asDouble());
        assertEquals(5.6, next.get("fNumber").asDouble());
    }

    /** A published film, a site and an instant: what expose computes of the same sky. */
    @Test
    void aSiteAndAnInstantWillDo() {
        List<String> moonlit = Stream.concat(THERE.stream(), Stream.of("--from", "2027-02-18T22:00",
                "--altitude", "50", "--f-number", "8", "--tone=-2", "--journal", DEMO)).toList();
        JsonNode next = json("journal", "next", moonlit, "--longest", "9h");
        assertEquals(json("expose", "", moonlit).get("exposures").get(0).get("correctedS"),
                next.get("exposureS"));
    }

    @Test
    void aWishGivesToneAimAndTimes() {
        List<String> night = List.of("--trip", "demo-data/trip.yaml", "--site", "Loma Callada", "--from",
                "2027-02-18T22:00", "--journal", DEMO);
        JsonNode next = json("journal", "next", night, "--wish", "pond under the Moon");
        assertEquals(-1.5, next.get("toneStops").asDouble());
        JsonNode same = json("journal", "next", night, "--tone=-1.5", "--azimuth", "330", "--altitude", "14",
                "--shortest", "10m", "--longest", "1h");
        assertEquals(same.get("exposureS"), next.get("exposureS"));
        Run limit = Run.of(Stream.concat(Stream.of("journal", "next", "--wish", "Wheel about the pole"),
                night.stream()).toList());
        assertEquals(2, limit.exit());
        assertTrue(limit.err().startsWith("wish \"Wheel about the pole\" limits its tone"), limit.err());
        Run unknown = Run.of(Stream.concat(Stream.of("journal", "next", "--wish", "Wheel"),
                night.stream()).toList());
        assertTrue(unknown.err().contains("no wish is named \"Wheel\""), unknown.err());
    }

    /** What moves is aimed at where it stands in the middle of the exposure advised, as a trail has it. */
    @Test
    void aWishThatFollowsIsAimedAtMidExposure() {
        List<String> night = List.of("--trip", "demo-data/trip.yaml", "--site", "Loma Callada", "--journal",
                DEMO, "--from", "2027-02-07T22:00");
        JsonNode next = json("journal", "next", night, "--wish", "Faint stars of the Hunter", "--tone=-4",
                "--f-number", "5.6,8");
        for (JsonNode choice : next.get("choices")) {
            String open = Math.round(choice.get("exposureS").asDouble()) + "s";
            JsonNode there = json("trail", "", List.of("--trip", "demo-data/trip.yaml", "--site",
                    "Loma Callada", "--from", "2027-02-07T22:00", "--lasts", open, "--aim", "Alnilam"));
            for (String angle : List.of("azimuthDeg", "altitudeDeg")) {
                // half a minute of the sky's turn
                assertEquals(there.get("frame").get(angle).asDouble(), choice.get("aim").get(angle)
                        .asDouble(), 0.2, open);
            }
        }
        assertTrue(Run.of(Stream.concat(Stream.of("journal", "next", "--wish", "Faint stars of the Hunter",
                "--tone=-2", "--f-number", "5.6"), night.stream()).toList()).out()
                .contains("\nAim at azimuth "));
    }

    @Test
    void whatIsFollowedMustBeUp() {
        Run run = Run.of("journal", "next", "--trip", "demo-data/trip.yaml", "--site", "Loma Callada",
                "--journal", DEMO, "--at", "2027-02-07T22:00", "--wish", "Venus into the dawn", "--tone=-2");
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().startsWith("what wish \"Venus into the dawn\" follows is below the horizon"),
                run.err());
    }

    /** The one pole: where a trail on the frame turns about. */
    @Test
    void aWishAtThePoleLooksAtTheRefractedOne() throws IOException {
        String trip = new MoorTrip(folder).file();
        JsonNode next = json("journal", "next", List.of("--trip", trip, "--journal", DEMO, "--at",
                "2027-01-07T22:00", "--wish", "Wheel", "--tone=-2"));
        JsonNode trail = json("trail", "", List.of("--trip", trip, "--from", "2027-01-07T22:00", "--lasts",
                "1h", "--azimuth", "0", "--altitude", "54"));
        assertEquals(trail.at("/pole/altitudeDeg").asDouble(),
                next.at("/choices/0/aim/altitudeDeg").asDouble(), 1e-3);
    }

    /**
     * Sheets of tonight show tonight's light: after three of them less is open than after three elsewhere.
     */
    @Test
    void sheetsOfTonightShowItsLight() throws IOException {
        double other = spreadAfter("2027-01-03");
        double tonight = spreadAfter("2027-02-05");
        assertTrue(tonight < 0.9 * other, tonight + " and " + other);
    }

    private double spreadAfter(String evening) throws IOException {
        Path journal = folder.resolve(evening + ".jsonl");
        for (int hour = 20; hour < 23; hour++) {
            Run.of(Stream.concat(Stream.of("journal", "add", "--journal", journal.toString(), "--f-number",
                    "5.6", "--open", evening + "T" + hour + ":00/45m", "--altitude", "60", "--azimuth", "0",
                    "--tone", "dark"), THERE.stream()).toList());
        }
        assertEquals(3, Files.readAllLines(journal).size());
        return json("journal", "next", THERE, "--f-number", "5.6", "--altitude", "60", "--azimuth", "0",
                "--at",
                "2027-02-05T23:00", "--tone=-1", "--journal", journal.toString()).at("/choices/0/spreadStops")
                .asDouble();
    }

    private static JsonNode json(String command, String sub, List<String> args, String... more) {
        Run run = Run.of(Stream.of(Stream.of(command, sub).filter(word -> !word.isEmpty()), args.stream(),
                Stream.of(more), Stream.of("--format", "json")).flatMap(part -> part).toList());
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
