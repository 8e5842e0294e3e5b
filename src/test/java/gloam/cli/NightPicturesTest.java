package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Drawings of a night and of a tone through it, against the figures of other questions. */
class NightPicturesTest {

    private static final String SKY = " --place 41.05,-2.15,1080 --zone Europe/Madrid";
    private static final String SHEET = SKY + " --film instant-mono-640 --focal-length 120 --f-number 8"
            + " --azimuth 200 --altitude 40";

    /** Every tone of the course is that of a sheet closed then. */
    @Test
    void theCourseIsThatOfSheetsClosedThen() {
        JsonNode course = Run.json("expose --from 2027-02-14T22:00 --tone -1" + SHEET).at("/course");
        assertEquals("8", course.get("fNumber").asString());
        assertTrue(course.get("points").size() > 20);
        for (int i : new int[] {5, 20, 40}) {
            JsonNode point = course.at("/points/" + i);
            Duration lasts = Duration.between(
                    OffsetDateTime.parse("2027-02-14T22:00:00+01:00"),
                    OffsetDateTime.parse(point.get("closeAt").asString()));
            JsonNode alone = Run.json("expose --from 2027-02-14T22:00 --lasts " + lasts.toSeconds() + "s"
                    + SHEET)
                    .at("/exposures/0");
            assertEquals(alone.get("skyToneStops").doubleValue(), point.get("toneStops").doubleValue(), 0.01);
            assertEquals(alone.get("skyToneSpreadStops").doubleValue(), point.get("spreadStops")
                    .doubleValue(), 0.01);
        }
    }

    @Test
    void theCourseIsDrawnWithWhatChangesTheLight() {
        String svg = Run.printed("expose --from 2027-02-14T22:00 --tone -1 --format svg" + SHEET);
        for (String part : List.of("Tone against time", "stops from the mid-tone", "Europe/Madrid", "moonset",
                "at least", "best", "Gloam (")) {
            assertTrue(svg.contains(part), part);
        }
        assertTrue(Run.printed("expose --from 2027-02-14T22:00 --format svg"
                + SHEET.replace("number 8", "number 8,11"))
                .contains("Times at every f-number"));
    }

    /** No two thin lines of a night have the same dashes or colour, so that black alone tells them apart. */
    @Test
    void everyLineOfANightHasDashesOfItsOwn() {
        String svg = Run.printed("sky --trip demo-data/trip-arctic.yaml --night 2027-03-05 --format svg");
        List<MatchResult> samples = Pattern.compile("class=\"planet (\\w+)\" stroke-width=\"0.40\"/>\n"
                + "<text[^>]*>(\\w+)</text>").matcher(svg).results().toList();
        assertEquals(List.of("Mercury", "Venus", "Mars", "Jupiter", "Saturn"),
                samples.stream().map(sample -> sample.group(2)).toList());
        Set<String> seen = new HashSet<>(List.of(part(svg, "dotted", "dasharray"),
                part(svg, "broken", "dasharray")));
        for (MatchResult sample : samples) {
            assertEquals(sample.group(1), sample.group(2).toLowerCase(Locale.ROOT));
            assertTrue(seen.add(part(svg, sample.group(1), "dasharray")), sample.group(1));
            assertTrue(seen.add(part(svg, sample.group(1), "stroke")), sample.group(1));
        }
    }

    /** What a drawing's style sheet says of a line, or that it says nothing. */
    private static String part(String svg, String style, String property) {
        return Pattern.compile("\\.drawing \\." + style + " \\{[^}]*" + property + ": ([^;]+);").matcher(svg)
                .results().map(rule -> rule.group(1)).findFirst().orElse("whole");
    }

    /** Names of the curves cover neither curves nor each other; the Moon's line is as high as it stands. */
    @Test
    void theNightIsDrawnAsItIsListed() {
        String svg = Run.printed("sky --night 2027-02-14 --format svg" + SKY);
        JsonNode hours = Run.json("sky --night 2027-02-14" + SKY).get("hours");
        MatchResult moon = Pattern.compile("<path d=\"M([^\"]+)\" class=\"line\" stroke-width=\"0.90\"")
                .matcher(svg).results().findFirst().orElseThrow();
        List<Double> heights = new ArrayList<>();
        for (String part : moon.group(1).split("C")) {
            String[] numbers = part.trim().split("[ ]+");
            heights.add(Double.parseDouble(numbers[numbers.length - 1]));
        }
        double first = hours.at("/0/moonAltitudeDeg").doubleValue();
        double third = hours.at("/2/moonAltitudeDeg").doubleValue();
        assertEquals((heights.get(2) - heights.get(0)) / (first - third), 84 / 110.0, 0.01); // mm a degree
        for (String part : List.of("Moon", "Jupiter", "zenith", "sunset", "moonset", "Europe/Madrid",
                "mag/arcsec\u00b2", "Gloam (")) {
            assertTrue(svg.contains(part), part);
        }
        assertTrue(Run.printed("sky --night 2027-02-14 --format html" + SKY)
                .contains("how dark the zenith is"));
    }

    /** Digits of the serif fonts that browsers and Inkscape set are 0.5 to 0.64 of their height broad. */
    @Test
    void numbersOfSheetsKeepInsideTheirWindows() {
        String svg = Run.printed("plan --trip demo-data/trip.yaml --format svg");
        Pattern box = Pattern.compile("<rect x=\"([^\"]+)\" y=\"[^\"]+\" width=\"([^\"]+)\"[^>]*"
                + "class=\"box\"/>\\s*(?:<text x=\"([^\"]+)\" y=\"[^\"]+\" class=\"middle( fine)?\">"
                + "(\\d+)</text>)?");
        int[] kinds = new int[3];
        for (MatchResult window : box.matcher(svg).results().toList()) {
            double width = Double.parseDouble(window.group(2));
            if (window.group(3) == null) {
                assertTrue(width < 0.64 * 12, window.group());
                kinds[0]++;
            } else {
                double wide = 0.5 * window.group(5).length();
                assertTrue(12 * wide <= width, window.group());
                assertTrue(window.group(4) != null || 20 * wide <= width, window.group());
                assertEquals(Double.parseDouble(window.group(1)) + width / 2,
                        Double.parseDouble(window.group(3)), 0.01);
                kinds[window.group(4) == null ? 1 : 2]++;
            }
        }
        assertEquals(8, kinds[0] + kinds[1] + kinds[2]);
        assertTrue(kinds[0] > 0 && kinds[1] > 0, Arrays.toString(kinds));
        for (int sheet = 1; sheet <= 8; sheet++) {
            assertTrue(svg.contains("class=\"aim middle\">" + sheet + "</text>"), "sheet " + sheet);
        }
    }

    /** What comes before a sheet is no help when that sheet is clouded out. */
    @Test
    void whatCloudLeavesIsSaidForBeforeAndAfter() {
        JsonNode plan = Run.json("plan --trip demo-data/trip.yaml");
        String text = Run.printed("plan --trip demo-data/trip.yaml").replaceAll("\\s+", " ");
        Set<Boolean> seen = new HashSet<>();
        for (JsonNode night : plan.get("nights")) {
            for (JsonNode window : night.get("windows")) {
                for (JsonNode second : plan.get("cloudedOut")) {
                    if (second.get("wish").equals(window.get("wish"))) {
                        OffsetDateTime at = OffsetDateTime.parse(second.get("openAt").asString());
                        boolean before = at.isBefore(
                                OffsetDateTime.parse(window.get("openAt").asString()));
                        String words = (before ? "if cloud is forecast: " : "if clouded out: ")
                                + at.format(DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ROOT))
                                + " at " + second.get("site").asString();
                        assertTrue(text.contains(words), words);
                        seen.add(before);
                    }
                }
            }
        }
        assertEquals(Set.of(true, false), seen);
    }

    /** Circles of stars cross no figure of a measured piece of sky. */
    @Test
    void measuredFiguresKeepOffStars() {
        String svg = Run.printed("measure demo-data/frame.jpg --trip demo-data/trip.yaml --format svg");
        List<MatchResult> stars = Pattern.compile("<circle cx=\"([^\"]+)\" cy=\"([^\"]+)\" r=\"([^\"]+)\"")
                .matcher(svg).results().toList();
        List<MatchResult> figures = Pattern.compile("<text x=\"([^\"]+)\" y=\"([^\"]+)\" "
                + "class=\"name middle\"[^>]*>([^<]+)<").matcher(svg).results().toList();
        assertTrue(stars.size() > 30 && figures.size() == 48, stars.size() + " " + figures.size());
        for (MatchResult figure : figures) {
            double x = Double.parseDouble(figure.group(1));
            double y = Double.parseDouble(figure.group(2));
            for (MatchResult star : stars) {
                double radius = Double.parseDouble(star.group(3));
                double aside = Math.abs(Double.parseDouble(star.group(1)) - x)
                        - 1.5 * figure.group(3).length() / 2;
                double over = Math.max(Double.parseDouble(star.group(2)) - y,
                        y - 2.2 - Double.parseDouble(star.group(2)));
                assertTrue(Math.max(aside, over) >= radius, figure.group() + " " + star.group());
            }
        }
    }
}
