package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Fit;
import gloam.answer.Keepers;
import gloam.answer.KnownSky;
import gloam.answer.NextExposure;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.journal.CurvePoint;
import gloam.journal.Entry;
import gloam.journal.Estimate;
import gloam.journal.Journal;
import gloam.journal.Sheets;
import gloam.journal.Situation;
import gloam.journal.ToneWord;
import gloam.light.SkyBrightness;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What reports of a journal say and draw, against the answers they are made of. */
class JournalReportsTest {

    private static final Instant NOW = Instant.parse("2027-03-01T10:00:00Z");
    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));
    private static final List<Entry> ENTRIES = List.of(
            Sheets.steady("1", FILM, 100, 400, Sheets.measured(1, 0.5)),
            Sheets.steady("2", FILM, 5000, 40_000, Sheets.judged(ToneWord.BLACK)),
            Sheets.steady("3", FILM, 1000, 4000, Sheets.judged(ToneWord.WHITE)));
    private static final Journal JOURNAL = Journal.of(ENTRIES, List.of());

    private static void assertEstimate(Estimate estimate, Shown told) {
        assertEquals(estimate.mean(), told.number("mean"), 6e-4);
        assertEquals(estimate.sd(), told.number("sd"), 6e-4);
    }

    private static void assertTime(double seconds, double told) {
        assertEquals(1, told / seconds, 1e-4);
    }

    private static void assertBound(OptionalDouble bound, Shown told) {
        assertEquals(bound.isEmpty(), told.node().isNull());
        bound.ifPresent(stops -> assertEquals(stops, told.node().asDouble(), 6e-4));
    }

    @Test
    void aFitIsTold() throws IOException {
        Fit fit = Fit.of(FILM, JOURNAL, "");
        Shown shown = Shown.of(JournalFitReport.of(fit, NOW));
        assertEstimate(fit.film().posterior().speedOffsetStops(), shown.named("speedOffsetStops"));
        assertEstimate(fit.film().posterior().exponent(), shown.named("exponent"));
        assertEstimate(fit.film().prior().speedOffsetStops(), shown.at("published", "speed"));
        assertEstimate(fit.film().prior().exponent(), shown.at("published", "exponent"));
        assertEquals(fit.film().posterior().correlation(), shown.number("correlation"), 6e-4);
        assertEquals(3, shown.number("used"));
        for (int i = 0; i < fit.situations().size(); i++) {
            Situation light = fit.situations().get(i);
            Shown told = shown.list("situations").get(i);
            assertTime(light.meteredS(), told.number("metered"));
            assertTime(light.publishedS(), told.number("published"));
            assertTime(light.fittedS(), told.number("fitted"));
            assertTime(light.leastS(), told.number("least"));
            assertTime(light.mostS(), told.number("most"));
            assertEquals(light.changeStops(), told.number("change"), 6e-4);
            assertEquals(light.spreadBeforeStops(), told.number("before"), 6e-4);
            assertEquals(light.spreadStops(), told.named("spreadStops").node().asDouble(), 6e-4);
        }
        for (int i = 0; i < 3; i++) {
            Shown told = shown.list("sheets").get(i);
            Fit.Judged judged = fit.used().get(i);
            assertEquals(judged.sheet().entry().id(), told.named("id").node().asString());
            assertTime(judged.sheet().meteredS(), told.number("metered"));
            assertTime(judged.sheet().entry().exposed().openS(), told.number("opens"));
            assertBound(judged.aboveStops(), told.at("above"));
            assertBound(judged.upToStops(), told.at("upto"));
            assertEstimate(judged.sheet().toneStops(), told.at("expected"));
        }
        assertTrue(JournalFitReport.of(Fit.of(FILM, Journal.of(List.of(), List.of()), ""), NOW).empty());
    }

    @Test
    void theNextSheetIsTold() throws IOException {
        Lens lens = new Lens(120, List.of(FNumber.exact(8), FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY,
                40, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
        NextExposure next = NextExposure.of(() -> null, FILM, JOURNAL, "", new NextExposure.Wanted(lens,
                List.of(new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21))), Duration.ofMinutes(1),
                Duration.ofHours(3), -1, 2, Optional.empty()));
        Shown shown = Shown.of(JournalNextReport.of(next, NOW));
        assertEquals(-1, shown.number("tone"), 1e-9);
        assertEquals(3, shown.number("fitted"));
        assertEquals(next.chosen().fNumber().marked(), shown.named("fNumber").node().asDouble(), 1e-4);
        assertTime(next.chosen().exposureS(), shown.number("exposures"));
        assertEquals(next.chosen().rightChance(), shown.named("rightChance").node().asDouble(), 6e-5);
        for (int i = 0; i < 2; i++) {
            NextExposure.Choice choice = next.choices().get(i);
            Shown told = shown.list("choices").get(i);
            assertEquals(choice.fNumber().marked(), told.number("fnumber"), 1e-4);
            assertTime(choice.exposureS(), told.number("exposures"));
            assertEquals(choice.toneStops(), told.number("tone"), 6e-4);
            assertEquals(choice.spreadStops(), told.number("spread"), 6e-4);
            assertEquals(choice.rightChance(), told.named("rightChance").node().asDouble(), 6e-5);
            assertEquals(choice.bracket().isEmpty(), told.named("bracket").node().isNull());
        }
    }

    @Test
    void keepersAreTold() throws IOException {
        Keepers keepers = Keepers.of(JOURNAL.sheets());
        Shown all = Shown.of(JournalStatsReport.of(keepers, NOW)).at("all");
        assertEquals(3, all.number("sheets"));
        assertEquals(keepers.all().kept(), all.named("kept").node().asInt());
        assertEquals(keepers.all().undecided(), all.number("undecided"));
        assertEquals(keepers.all().keptShare(), all.number("fraction"), 6e-5);
        assertTrue(JournalStatsReport.of(Keepers.of(List.of()), NOW).empty());
    }

    /**
     * Longer times stand higher. The bar of a sheet spans the times that would have made the mid-tone: of one
     * that came
     * out a stop too light, half its time in the middle, by half a stop more and less.
     */
    @Test
    void aSheetsBarSpansTheTimesThatWouldHaveBeenRight() {
        Fit fit = Fit.of(FILM, JOURNAL, "");
        String svg = JournalCurveDrawing.of(JournalFitReport.of(fit, NOW), "made");
        List<double[]> bars = numbers(svg,
                "<path d=\"M ([-0-9.]+) ([-0-9.]+) L ([-0-9.]+) ([-0-9.]+)\" class=\"bar(?: doubted)?\"");
        assertEquals(3, bars.size());
        Scale scale = new Scale(svg, fit);
        // sheets stand in order of metered time: 1, 3, 2
        assertEquals(400 * Math.pow(2, -1.5), scale.timeS(bars.get(0)[1]), 4);
        assertEquals(400 * Math.pow(2, -0.5), scale.timeS(bars.get(0)[3]), 4);
        double whiteAbove = ToneWord.WHITE.aboveStops();
        assertEquals(4000 * Math.pow(2, -whiteAbove), scale.timeS(bars.get(1)[3]), 40,
                "white may be lighter still");
        assertTrue(bars.get(1)[1] > bars.get(1)[3]);
        double blackUpTo = ToneWord.BLACK.upToStops();
        assertEquals(40_000 * Math.pow(2, -blackUpTo), scale.timeS(bars.get(2)[1]), 800,
                "black may be darker still");
        assertTrue(bars.get(2)[3] < bars.get(2)[1]);
    }

    /** The three curves, no failure lowest; the lines are drawn in that order. */
    @Test
    void curvesAreDrawnWhereTheirTimesAre() {
        Fit fit = Fit.of(FILM, JOURNAL, "");
        String svg = JournalCurveDrawing.of(JournalFitReport.of(fit, NOW), "made");
        Scale scale = new Scale(svg, fit);
        List<List<double[]>> lines = scale.lines;
        assertEquals(3, lines.size());
        CurvePoint last = fit.curve().get(fit.curve().size() - 1);
        assertEquals(1, scale.timeS(lines.get(1).get(lines.get(1).size() - 1)[1]) / last.publishedS(), 0.01);
        assertEquals(1, scale.timeS(lines.get(2).get(lines.get(2).size() - 1)[1]) / last.fittedS(), 0.01);
        for (List<double[]> line : lines) {
            assertEquals(fit.curve().size(), line.size());
            for (int i = 1; i < line.size(); i++) {
                assertTrue(line.get(i)[0] > line.get(i - 1)[0] && line.get(i)[1] < line.get(i - 1)[1],
                        "up to the right");
            }
        }
    }

    /** Reads times off the line of no failure, which gives what is metered. */
    private static final class Scale {
        private final List<List<double[]>> lines = new ArrayList<>();
        private final double slope;
        private final double offset;

        Scale(String svg, Fit fit) {
            for (String points : Pattern.compile("<polyline points=\"([^\"]*)\"").matcher(svg).results()
                    .map(found -> found.group(1)).toList()) {
                lines.add(Arrays.stream(points.split(" ")).map(point -> Arrays.stream(point.split(","))
                        .mapToDouble(Double::parseDouble).toArray()).toList());
            }
            List<double[]> none = lines.get(0);
            double fromS = fit.curve().get(0).meteredS();
            double toS = fit.curve().get(fit.curve().size() - 1).meteredS();
            slope = Math.log(toS / fromS) / (none.get(none.size() - 1)[1] - none.get(0)[1]);
            offset = Math.log(fromS) - slope * none.get(0)[1];
        }

        double timeS(double y) {
            return Math.exp(offset + slope * y);
        }
    }

    private static List<double[]> numbers(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().map((MatchResult found) -> new double[] {
            Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2)),
            Double.parseDouble(found.group(3)), Double.parseDouble(found.group(4))})
                    .filter(bar -> bar[0] == bar[2]).toList();
    }
}
