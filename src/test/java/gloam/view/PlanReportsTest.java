package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Timetable;
import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.planner.Plan;
import gloam.planner.Progress;
import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.planner.Wish;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Interval;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a timetable says and draws, against the plan it is made of. */
class PlanReportsTest {

    private static final Instant NOW = Instant.parse("2027-01-01T10:00:00Z");
    private static final double DEG = 6e-6;
    private static final double STRIP_LEFT = 40;
    private static final double STRIP_WIDTH = 560;

    private static Timetable timetable;
    private static PlanReport report;

    /** Moonlit nights, so that the Moon's way is seen. */
    @BeforeAll
    static void plan() {
        Wish east = Trips.repeated(Trips.pointed("east", Direction.ofDegrees(100, 40), SkyKind.MOONLIT,
                new Wish.Tone.Free()), 2, 3);
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), LocalDate.of(2027, 2, 14), 2, 3, List.of(east));
        timetable = Timetable.of(new AnalyticEphemeris(), StarCatalogue.builtIn(), trip, Optional.empty(),
                NOW,
                Progress.NONE);
        report = PlanReport.of(timetable, NOW);
    }

    private static void assertSame(Instant at, Shown shown) {
        OffsetDateTime time = OffsetDateTime.parse(shown.node().asString());
        assertEquals(ZoneOffset.ofHours(1), time.getOffset());
        assertTrue(Duration.between(at, time).abs().toMillis() <= 50, at + " " + time);
    }

    @Test
    void aPlanIsTold() throws IOException {
        Shown shown = Shown.of(report);
        assertEquals(timetable.identity().toString(), shown.text("identity"));
        assertEquals(3, shown.named("sheets").node().asInt());
        assertEquals(2, shown.number("used"));
        assertEquals(timetable.nights().size(), shown.list("nights").size());
        int told = 0;
        for (int i = 0; i < timetable.nights().size(); i++) {
            Timetable.Night night = timetable.nights().get(i);
            Shown row = shown.list("nights").get(i);
            assertEquals(night.plan().night().date().toString(), row.named("night").node().asString());
            assertNight(night.plan(), row);
            for (int j = 0; j < night.windows().size(); j++) {
                assertWindow(night.windows().get(j), row.list("windows").get(j));
                told++;
            }
        }
        assertEquals(2, told);
    }

    private static void assertNight(Plan.NightPlan plan, Shown row) {
        Site site = plan.night().site();
        assertEquals(site.latitude().degrees(), row.number("latitude"), 1e-7);
        assertEquals(site.longitude().degrees(), row.number("longitude"), 1e-7);
        assertEquals("Europe/Rome", row.text("zone"));
        assertEquals(plan.night().darkness().size(), row.list("darkness").size());
        assertSame(plan.night().darkness().get(0).start(), row.list("darkness").get(0).named("from"));
        assertSame(plan.night().darkness().get(0).endExclusive(), row.list("darkness").get(0).named("to"));
        List<Interval> up = Interval.intersect(plan.night().sunDown(), plan.night().moonUp());
        assertEquals(up.size(), row.list("moonup").size());
        assertSame(up.get(0).endExclusive(), row.list("moonup").get(0).named("to"));
        assertEquals(plan.course().size(), row.list("course").size());
        for (int i = 0; i < plan.course().size(); i++) {
            Plan.SkySample sky = plan.course().get(i);
            assertSame(sky.at(), row.list("course").get(i).named("at"));
            assertEquals(sky.sunAltitude().degrees(), row.list("course").get(i).number("sun"), DEG);
            assertEquals(sky.moonAltitude().degrees(), row.list("course").get(i).number("moon"), DEG);
            assertEquals(sky.zenith().magArcsec2(), row.list("course").get(i).number("zenith"), 6e-3);
        }
    }

    private static void assertWindow(Timetable.Announced announced, Shown row) {
        Plan.Window window = announced.window();
        assertEquals(window.sheet(), row.named("sheet").node().asInt());
        assertEquals(announced.event().identity().toString(), row.text("identity"));
        assertEquals(announced.event().sequence(), row.number("sequence"));
        assertEquals("east", row.text("wish"));
        assertSame(announced.prepareAt(), row.at("prepare"));
        assertSame(window.open().start(), row.at("openat"));
        assertSame(window.open().endExclusive(), row.at("closeat"));
        assertEquals(100, row.number("azimuth"), DEG);
        assertEquals(40, row.number("altitude"), DEG);
        assertEquals(0, row.number("roll"), DEG);
        assertEquals(window.fNumber().marked(), row.number("fnumber"), 1e-4);
        assertEquals(1, row.number("metered") / window.meteredS(), 1e-4);
        assertEquals(1, row.number("corrected") / window.correctedS(), 1e-4);
        assertEquals(window.skyToneStops(), row.named("skyToneStops").node().asDouble(), 6e-4);
        assertEquals(window.skyToneSpreadStops(), row.number("tonespread"), 6e-4);
        assertEquals(window.stars().crossing(), row.number("framed"));
        assertEquals(window.stars().recorded(), row.named("recordedStars").node().asInt());
        assertEquals(window.stars().spread(), row.number("starsspread"));
        assertEquals(window.trailLengthMm(), row.number("length"), 6e-5);
        assertEquals(window.trailDirection().positive().degrees(), row.number("direction"), 6e-4);
        assertEquals(window.score(), row.number("score"), 6e-4);
        Shown moon = row.named("moon");
        assertEquals(window.moon().position().azimuth().positive().degrees(), moon.number("azimuth"), DEG);
        assertEquals(window.moon().position().apparentAltitude().degrees(), moon.number("altitude"), DEG);
        assertEquals(window.moon().illuminatedFraction(), moon.number("illuminated"), DEG);
        assertEquals(window.moon().fromAim().degrees(), moon.number("fromaim"), 6e-4);
    }

    /**
     * The Moon's way ends at the strip's lower edge when it sets and stands the higher above it the higher it
     * is.
     */
    @Test
    void theMoonIsDrawnAsHighAsItStands() {
        PlanReport.PlannedNightRow night = report.nights().get(0);
        String svg = NightStrip.of(night, "made");
        List<Plan.SkySample> up = timetable.nights().get(0).plan().course().stream()
                .filter(sky -> sky.moonAltitude().degrees() >= 0).toList();
        List<double[]> moon = Arrays.stream(first(svg, "<polyline points=\"([^\"]*)\" class=\"moon\"")
                .group(1).split(" "))
                .map(point -> Arrays.stream(point.split(",")).mapToDouble(Double::parseDouble).toArray())
                        .toList();
        assertEquals(up.size(), moon.size());
        MatchResult sky = first(svg,
                "<rect x=\"[^\"]*\" y=\"([^\"]*)\" width=\"[^\"]*\" height=\"([^\"]*)\" fill");
        double top = Double.parseDouble(sky.group(1));
        double height = Double.parseDouble(sky.group(2));
        for (int i = 0; i < up.size(); i++) {
            assertEquals(top + height * (1 - up.get(i).moonAltitude().degrees() / 90), moon.get(i)[1], 0.01);
            assertEquals(x(up.get(i).at()), moon.get(i)[0], 0.1);
        }
    }

    /** Windows stand where their times do, over the time from the first sample of the sky to the last. */
    @Test
    void windowsAreDrawnAtTheirTimes() {
        String svg = NightStrip.of(report.nights().get(0), "made");
        List<MatchResult> boxes =
                Pattern.compile("<rect x=\"([^\"]*)\" y=\"[^\"]*\" width=\"([^\"]*)\" height=\"[^\"]*\""
                + " class=\"box\"").matcher(svg).results().toList();
        List<Plan.Window> windows = timetable.nights().get(0).plan().windows();
        assertEquals(windows.size(), boxes.size());
        assertTrue(!windows.isEmpty(), "windows");
        for (int i = 0; i < windows.size(); i++) {
            double left = Double.parseDouble(boxes.get(i).group(1));
            assertEquals(x(windows.get(i).open().start()), left, 0.1);
            assertEquals(x(windows.get(i).open().endExclusive()), left
                    + Double.parseDouble(boxes.get(i).group(2)), 0.1);
        }
    }

    /** 22 mag/arcsec² and darker is the darkest, 8 and brighter the brightest. */
    @Test
    void aDarkSkyIsDrawnDark() {
        List<Plan.SkySample> course = timetable.nights().get(0).plan().course();
        List<Double> lights = Pattern.compile("--light:([0-9.]+)")
                .matcher(NightStrip.of(report.nights().get(0), "made")).results()
                .map(found -> Double.parseDouble(found.group(1))).toList();
        assertEquals(course.size() - 1, lights.size());
        for (int i = 0; i < lights.size(); i++) {
            double expected = Math.max(0, Math.min(1, (22 - course.get(i).zenith().magArcsec2()) / 14));
            assertEquals(expected, lights.get(i), 0.01);
        }
    }

    /** The zenith's curve is as high over the axis of 22 mag/arcsec² as its grey is light. */
    @Test
    void theCurveAndTheGreySayTheSame() {
        String svg = NightStrip.of(report.nights().get(0), "made");
        List<Plan.SkySample> course = timetable.nights().get(0).plan().course();
        String[] points = first(svg, "<polyline points=\"([^\"]*)\" class=\"curve\"").group(1).split(" ");
        MatchResult sky = first(svg,
                "<rect x=\"[^\"]*\" y=\"([^\"]*)\" width=\"[^\"]*\" height=\"([^\"]*)\" fill");
        double foot = Double.parseDouble(sky.group(1)) + Double.parseDouble(sky.group(2));
        assertEquals(course.size(), points.length);
        for (int i = 0; i < points.length; i++) {
            double light = Math.max(0, Math.min(1, (22 - course.get(i).zenith().magArcsec2()) / 14));
            assertEquals(foot - Double.parseDouble(sky.group(2)) * light,
                    Double.parseDouble(points[i].split(",")[1]), 0.1);
        }
    }

    private static double x(Instant at) {
        List<Plan.SkySample> course = timetable.nights().get(0).plan().course();
        Instant from = course.get(0).at();
        double whole = Duration.between(from, course.get(course.size() - 1).at()).toSeconds();
        return STRIP_LEFT + STRIP_WIDTH * Math.max(0,
                Math.min(1, Duration.between(from, at).toMillis() / 1000.0 / whole));
    }

    private static MatchResult first(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().findFirst()
                .orElseThrow(() -> new AssertionError(text));
    }
}
