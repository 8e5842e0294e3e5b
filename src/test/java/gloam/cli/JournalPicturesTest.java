package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What the pictures of a journal show, against its list and its numbers. */
class JournalPicturesTest {

    private static final String JOURNAL = " --journal demo-data/journal.jsonl";
    private static final List<String> TONES = List.of("white", "light", "middle", "dark", "very-dark",
            "black");
    private static final Pattern SHEET = Pattern.compile("<title>entry (\\S+): [^<]*</title>\\s*"
            + "<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\" r=\"1.40\" class=\"(\\w+)\"[^>]*/>\\s*<(path|text)");

    @TempDir
    private Path folder;

    /** Each sheet once; twice the time is as far right anywhere; the lighter its sky, the higher. */
    @Test
    void everySheetStandsWhereItsTimeAndToneAre() {
        Map<String, MatchResult> marks = new HashMap<>();
        String svg = Run.printed("journal list --format svg" + JOURNAL);
        SHEET.matcher(svg).results().forEach(mark -> assertEquals(null, marks.put(mark.group(1), mark)));
        JsonNode sheets = Run.json("journal list" + JOURNAL).get("sheets");
        assertEquals(sheets.size(), marks.size());
        double octave = x(marks.get("2")) - x(marks.get("12")); // open for 4 h and for 2 h
        Map<Integer, List<Double>> heights = new HashMap<>();
        for (JsonNode sheet : sheets) {
            MatchResult mark = marks.get(sheet.get("id").asString());
            assertEquals(x(marks.get("12")) + octave * Math.log(sheet.get("openS").doubleValue() / 7200)
                    / Math.log(2), x(mark), 0.02);
            int lane = sheet.get("tone").isNull() ? TONES.size()
                    : TONES.indexOf(sheet.get("tone").asString());
            heights.computeIfAbsent(lane, none -> new ArrayList<>()).add(Double.parseDouble(mark.group(3)));
            JsonNode kept = sheet.get("kept");
            assertEquals(!kept.isNull() && kept.asBoolean() ? "entry text"
                    : kept.isNull() ? "line text" : "line path", mark.group(4) + " " + mark.group(5));
        }
        List<Integer> lanes = heights.keySet().stream().sorted().toList();
        for (int i = 0; i + 1 < lanes.size(); i++) {
            double lowest = heights.get(lanes.get(i)).stream().max(Double::compare).orElseThrow();
            double next = heights.get(lanes.get(i + 1)).stream().min(Double::compare).orElseThrow();
            assertTrue(lowest < next, "lane " + lanes.get(i) + " over " + lanes.get(i + 1));
        }
    }

    /** A sheet whose tone was measured stands among those of the word that its stops belong to. */
    @Test
    void aMeasuredToneStandsWithItsWord() throws Exception {
        Path file = folder.resolve("journal.jsonl");
        List<String> tones = List.of("--tone light", "--tone-stops 1.5", "--tone-stops 1.6");
        for (int i = 0; i < tones.size(); i++) {
            String opened = "2027-01-1" + i + "T20:00Z/1h";
            Run added = Run.of(("journal add --film instant-mono-640 --sky-mag-arcsec2 21 --f-number 8"
                    + " --open " + opened + " --journal " + file + " " + tones.get(i)).split(" "));
            assertEquals(0, added.exit(), added.err());
        }
        assertEquals(3, Files.readAllLines(file).size());
        List<MatchResult> marks = SHEET.matcher(Run.printed("journal list --format svg --journal " + file))
                .results().toList();
        double[] heights = marks.stream().mapToDouble(mark -> Double.parseDouble(mark.group(3))).sorted()
                .toArray();
        assertTrue(heights[1] - heights[0] > 8, "white over light");
        assertEquals(5, heights[2] - heights[1], 0.01, "two rows of a lane");
    }

    /** A part of a bar for each sheet of every group, and for each that is left in its pack. */
    @Test
    void everySheetIsAPartOfABar() {
        String svg = Run.printed("journal stats --pack-sheets 8 --format svg" + JOURNAL);
        JsonNode stats = Run.json("journal stats --pack-sheets 8" + JOURNAL);
        List<JsonNode> groups = new ArrayList<>(List.of(stats.get("all")));
        List.of("packs", "seasons", "wishes").forEach(kind -> stats.get(kind).forEach(groups::add));
        for (JsonNode group : groups) {
            String row = svg.substring(svg.indexOf(">" + group.get("name").asString() + ": "));
            String bar = row.substring(0, row.indexOf("<text", 1));
            int lost = group.get("sheets").asInt() - group.get("kept").asInt()
                    - group.get("undecided").asInt();
            assertEquals(group.get("kept").asInt(), parts(bar, "entry"), bar);
            assertEquals(lost, parts(bar, "dark edge"), bar);
            assertEquals(group.get("undecided").asInt(), parts(bar, "sheet edge"), bar);
        }
        String pack = svg.substring(svg.indexOf("pack B: 2 of 5 sheets kept, 1 undecided, 3 left"));
        assertEquals(3, parts(pack.substring(0, pack.indexOf("<text")), "line doubted"));
        for (String cause : List.of("bump", "cloud", "dew", "late close")) {
            assertTrue(svg.contains(">" + cause + ": 1 sheet<"), cause);
        }
    }

    @Test
    void anEmptyJournalIsNotDrawn() {
        String none = " --film nothing" + JOURNAL;
        for (String question : List.of("journal list", "journal stats")) {
            Run run = Run.of((question + " --format svg" + none).split(" "));
            assertEquals(2, run.exit());
            assertTrue(run.err().contains("cannot be written as svg"), run.err());
        }
    }

    private static long parts(String bar, String style) {
        return Pattern.compile("<rect [^>]*class=\"" + style + "\"").matcher(bar).results().count();
    }

    private static double x(MatchResult mark) {
        return Double.parseDouble(mark.group(2));
    }
}
