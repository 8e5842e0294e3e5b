package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The drawing of trails against the figures of the same trails. */
class TrailPictureTest {

    private static String svg;
    private static List<JsonNode> tracks;
    private static List<MatchResult> lines;

    /** Uranus and the stars about it: the one does not show, the others do. */
    private static String aroundUranus(String format) {
        return trail("--aim", "uranus", "--f-number", "22", "--format", format);
    }

    private static String trail(String... more) {
        List<String> args = new ArrayList<>(List.of("trail", "--trip", "demo-data/trip.yaml", "--from",
                "2027-02-08T20:07", "--lasts", "10m"));
        args.addAll(List.of(more));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    @BeforeAll
    static void draw() throws Exception {
        svg = aroundUranus("svg");
        tracks = new ArrayList<>();
        new ObjectMapper().readTree(aroundUranus("json")).get("tracks").forEach(tracks::add);
        lines = Pattern.compile("<polyline [^>]*class=\"trail\" stroke-width=\"([0-9.]+)\""
                + " stroke-dasharray=\"([^\"]+)\"").matcher(svg).results().toList();
        assertEquals(tracks.size(), lines.size());
        assertTrue(tracks.stream().anyMatch(track -> track.get("records").asBoolean()));
        assertTrue(tracks.stream().anyMatch(track -> !track.get("records").asBoolean()));
    }

    @Test
    void aTrailIsAsStrongAsItShows() {
        for (int one = 0; one < lines.size(); one++) {
            boolean shows = tracks.get(one).get("records").asBoolean();
            assertEquals(shows, lines.get(one).group(2).equals("none"), tracks.get(one).toString());
            for (int other = 0; other < lines.size(); other++) {
                if (stops(one) > stops(other) && shows) {
                    assertTrue(width(one) >= width(other), tracks.get(one) + " " + tracks.get(other));
                }
            }
        }
        assertTrue(lines.stream().map(line -> line.group(1)).distinct().count() > 2);
    }

    private static double stops(int number) {
        return tracks.get(number).get("stopsOverSky").asDouble();
    }

    private static double width(int number) {
        return Double.parseDouble(lines.get(number).group(1));
    }

    @Test
    void onlyWhatShowsIsNamed() {
        List<String> names = Pattern.compile("class=\"name slanted[^>]*>([^<]+)<").matcher(svg).results()
                .map(name -> name.group(1)).toList();
        assertTrue(!names.isEmpty());
        for (String name : names) {
            assertTrue(tracks.stream().anyMatch(track -> track.get("name").asString().equals(name)
                    && track.get("records").asBoolean()), name);
        }
    }

    /** The compass has a point every 22.5 degrees; between two of them a direction has none. */
    @Test
    void compassPointsStandOnlyWhereTheyAreTrue() {
        String south = trail("--azimuth", "170", "--altitude", "46", "--f-number", "11", "--format", "svg");
        List<MatchResult> marks = Pattern.compile(">(\\d+)\u00b0( [NESW]+)?</text>").matcher(south).results()
                .toList();
        assertTrue(marks.size() > 5);
        for (MatchResult mark : marks) {
            boolean named = mark.group(2) != null;
            assertTrue(!named || Math.abs(Math.IEEEremainder(Double.parseDouble(mark.group(1)), 22.5)) <= 1,
                    mark.group());
        }
        assertTrue(south.contains(">180\u00b0 S</text>"), "south");
        assertTrue(south.contains(">160\u00b0</text>"), "between");
    }

    /** A frame of 80 mm is drawn 80 mm wide, on a drawing that says how large it is. */
    @Test
    void theSheetIsDrawnAsLargeAsItIs() {
        MatchResult whole = Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\" viewBox=\"0 0 "
                + "([0-9.]+)" + " ([0-9.]+)\"").matcher(svg).results().findFirst().orElseThrow();
        assertEquals(whole.group(1), whole.group(3));
        assertEquals(whole.group(2), whole.group(4));
        assertTrue(svg.contains("width=\"80.00\" height=\"80.00\" viewBox=\"-40.00 -40.00 80.00 80.00\""),
                svg);
        assertTrue(svg.contains("1 : 1") && svg.contains("times in Europe/Madrid"));
    }
}
