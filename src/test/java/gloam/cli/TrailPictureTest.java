package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The drawing of trails against the figures of the same trails. */
class TrailPictureTest {

    /** The line to a name, then the name. */
    private static final Pattern LED = Pattern.compile("<path d=\"M(\\S+) (\\S+)L(\\S+) (\\S+)\" "
            + "class=\"lead\"[^>]*>\\s*<text x=\"([^\"]+)\" y=\"([^\"]+)\" class=\"name slanted ?(|end)\""
            + "[^>]*>([^<]+)<");

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

    /**
     * A thin line leads from every name to the trail that it names, a name covers neither trails nor other
     * names, and the brightest of what shows are named: as figures of the same trails have them.
     */
    @ParameterizedTest
    @ValueSource(strings = {
        "trip.yaml --azimuth 162 --altitude 46 --from 2027-02-08T20:10 --lasts 1h --f-number 11",
        "trip.yaml --azimuth 0 --altitude 41 --from 2027-02-12T02:40 --lasts 3h --f-number 22",
        "trip-arctic.yaml --azimuth 270 --altitude 12 --from 2027-03-05T18:35 --lasts 75m --f-number 4.5",
        "trip-arctic.yaml --azimuth 166 --altitude 36 --from 2027-03-05T21:01 --lasts 16m --f-number 4.5",
        "trip-arctic.yaml --azimuth 0 --altitude 69.6 --from 2027-03-05T21:25 --lasts 3h --f-number 4.5"})
    void everyNameIsLedToItsTrail(String question) throws Exception {
        String framing = " --trip demo-data/" + question + " --format ";
        Map<String, List<Line2D>> trails = new LinkedHashMap<>();
        new ObjectMapper().readTree(Run.printed("trail" + framing + "json")).get("tracks").forEach(track -> {
            if (track.get("records").asBoolean()) {
                trails.put(track.get("name").asString().toLowerCase(Locale.ROOT), trail(track.get("points")));
            }
        });
        for (String drawing : List.of("trail" + framing + "svg", "proof --size 64" + framing + "svg")) {
            String svg = Run.printed(drawing);
            double letterMm = Double.parseDouble(svg.replaceFirst("(?s).*?<svg [^>]*font-size=\"([^\"]+)\".*",
                    "$1"));
            List<Rectangle2D> places = new ArrayList<>();
            int near = 0;
            for (MatchResult led : LED.matcher(svg).results().toList()) {
                Point2D from = point(led, 1);
                Point2D to = point(led, 3);
                Point2D words = point(led, 5);
                Rectangle2D box = box(words, led.group(8), led.group(7).equals("end"), letterMm);
                assertTrue(to.distance(words) <= letterMm / 2, led.group());
                double farthest = led.group(8).endsWith(" pole") || trails.keySet().stream().limit(5)
                        .anyMatch(led.group(8)::equalsIgnoreCase) ? 9.1 : 5.1;
                assertTrue(from.distance(to) <= farthest * letterMm, led.group());
                near += from.distance(to) <= 3 * letterMm ? 1 : 0;
                assertTrue(places.stream().noneMatch(box::intersects), led.group());
                assertTrue(trails.values().stream().flatMap(List::stream).noneMatch(line ->
                        line.intersects(box)), led.group());
                places.add(box);
                if (!led.group(8).endsWith(" pole")) {
                    List<Line2D> own = trails.get(led.group(8).toLowerCase(Locale.ROOT));
                    assertTrue(own.stream().anyMatch(line -> line.ptSegDist(from) < 0.05), led.group());
                }
            }
            assertTrue(places.size() >= 6 && 3 * near >= places.size(), drawing + ": " + near + " of "
                    + places.size());
            List<String> brightest = trails.keySet().stream().limit(5).toList();
            assertTrue(brightest.stream().filter(svg.toLowerCase(Locale.ROOT)::contains).count() >= 3,
                    drawing + ": " + brightest);
        }
    }

    private static Point2D point(MatchResult of, int group) {
        return new Point2D.Double(Double.parseDouble(of.group(group)),
                Double.parseDouble(of.group(group + 1)));
    }

    /** About words whose letters are taken for narrow. */
    private static Rectangle2D box(Point2D at, String words, boolean end, double letterMm) {
        double wide = 0.45 * letterMm * words.length();
        return new Rectangle2D.Double(at.getX() - (end ? wide : 0), at.getY() - 0.6 * letterMm, wide,
                0.6 * letterMm);
    }

    private static Point2D at(JsonNode point) {
        return new Point2D.Double(point.get("xMm").asDouble(), -point.get("yMm").asDouble());
    }

    private static List<Line2D> trail(JsonNode points) {
        List<Line2D> lines = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            lines.add(new Line2D.Double(at(points.get(i)), at(points.get(i + 1))));
        }
        return lines;
    }
}
