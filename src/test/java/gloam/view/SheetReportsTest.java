package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.ExposureQuestion;
import gloam.answer.Exposures;
import gloam.answer.FrameQuestion;
import gloam.answer.KnownSky;
import gloam.answer.Trails;
import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.exposure.Bracket;
import gloam.exposure.TrailLimit;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.units.Interval;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What reports of a sheet's exposure and trails say, against the answers they are made of. */
class SheetReportsTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Site SITE = Places.MID_NORTH;
    private static final Instant NOW = Instant.parse("2027-01-01T10:00:00Z");
    private static final Lens LENS = new Lens(120, List.of(FNumber.exact(5.6), FNumber.exact(11)), 0.9, 10,
            40,
            0, Projection.RECTILINEAR, Vignetting.NONE);
    private static final Interval FIRST =
            Interval.lasting(Instant.parse("2027-02-08T20:00:00Z"), Duration.ofMinutes(40));
    private static final Interval SECOND =
            Interval.lasting(Instant.parse("2027-02-08T23:00:00Z"), Duration.ofMinutes(30));

    private static Trails trails() {
        Camera camera = new Camera("camera", LENS, new Frame(80, 60), Duration.ZERO);
        Framing framing = Framing.level(Direction.ofDegrees(150, 35), camera);
        Setting setting = new Setting(framing, FNumber.exact(11), List.of(FIRST, SECOND));
        return Trails.ofAll(EPHEMERIS, new FrameQuestion(SITE, setting, Duration.ofMinutes(10), false),
                Optional.of(new Sheet(SITE, Films.print(400, Reciprocity.none()), List.of(setting))),
                StarCatalogue.builtIn().stars());
    }

    @Test
    void trailsAreTold() throws IOException {
        Trails trails = trails();
        Shown shown = Shown.of(TrailReport.of(trails, NOW));
        Shown frame = shown.at("frame");
        assertEquals(150, frame.number("azimuth"), 1e-5);
        assertEquals(35, frame.number("altitude"), 1e-5);
        assertEquals(120, frame.number("focal"), 1e-4);
        assertEquals(80, frame.number("width"), 1e-4);
        assertEquals(60, frame.number("height"), 1e-4);
        assertEquals(4200, frame.number("lasts"), 1e-3);
        assertEquals(2, frame.list("openings").size());
        assertEquals(OffsetDateTime.parse("2027-02-08T21:00+01:00"),
                OffsetDateTime.parse(frame.named("openAt").node().asString()));
        assertEquals(SECOND.endExclusive(), OffsetDateTime.parse(frame.named("closeAt").node().asString())
                .toInstant());
        assertEquals(SECOND.start(), frame.list("openings").get(1).instant("open"));
        assertTrue(trails.tracks().size() > 3, "stars show");
        assertEquals(trails.tracks().size(), shown.list("tracks").size());
        for (int i = 0; i < trails.tracks().size(); i++) {
            assertTrack(trails.tracks().get(i), shown.list("tracks").get(i));
        }
        for (int i = 0; i < trails.starsHere().size(); i++) {
            Trails.PointStar here = trails.starsHere().get(i);
            Shown told = shown.list("here").get(i);
            assertEquals(here.star().point().xMm(), told.number("xmm"), 1e-4);
            assertEquals(here.star().point().yMm(), told.number("ymm"), 1e-4);
            assertEquals(3600 * here.star().motion().speedMmS(), told.number("speed"), 1e-4);
            assertEquals(here.star().motion().direction().positive().degrees(), told.number("direction"),
                    1e-3);
            assertEquals(here.star().drawn().isEmpty(), told.empty("length"));
            here.star().drawn().ifPresent(trail ->
                    assertEquals(trail.lengthMm(), told.number("length"), 1e-4));
        }
        assertEquals(trails.pole().pole().direction().altitude().degrees(), shown.at("pole")
                .number("altitude"), 1e-5);
        assertEquals(trails.pole().turnDeg(), shown.at("pole").number("turn"), 1e-5);
        assertTrue(shown.at("pole").empty("longest"));
        for (int i = 0; i < trails.edges().size(); i++) {
            Shown edge = shown.list("edges").get(i);
            assertEquals(trails.edges().get(i).point().xMm(), edge.number("xmm"), 1e-4);
            assertEquals(trails.edges().get(i).point().yMm(), edge.number("ymm"), 1e-4);
            assertEquals(trails.edges().get(i).seen().azimuth().degrees(), edge.number("azimuth"), 1e-5);
            assertEquals(trails.edges().get(i).seen().altitude().degrees(), edge.number("altitude"), 1e-5);
        }
        assertEquals(trails.sheet().orElseThrow().trailLimitMag(), shown.at("sheet").number("limit"), 6e-3);
        assertEquals(trails.sheet().orElseThrow().judged().skyToneStops(), shown.at("sheet").number("tone"),
                6e-4);
        assertEquals(11, shown.at("sheet").number("fnumber"), 1e-4);
    }

    private static void assertTrack(Trails.Track track, Shown told) {
        Trail trail = track.trail();
        assertEquals(track.name(), told.text("name"));
        assertEquals(track.magnitude(), told.number("magnitude"), 6e-3);
        assertEquals(track.mark().orElseThrow().records(), told.at("records").node().asBoolean());
        assertEquals(track.mark().orElseThrow().stopsOverSky(), told.number("stops"), 6e-4);
        assertEquals(trail.lengthMm(), told.number("length", "mm"), 6e-5);
        assertEquals(trail.arc().degrees(), told.number("length", "deg"), 6e-4);
        assertEquals(track.frameShare(), told.number("share"), 6e-5);
        assertEquals(trail.direction().positive().degrees(), told.number("direction"), 6e-4);
        assertEquals(trail.sagittaMm(), told.number("sagitta"), 6e-5);
        assertEquals(trail.leavesFrame(), told.at("leavesframe").node().asBoolean());
        assertEquals(trail.points().size(), told.list("points").size());
        Trail.Point last = trail.points().get(trail.points().size() - 1);
        Shown point = told.list("points").get(trail.points().size() - 1);
        assertEquals(last.xMm(), point.number("xmm"), 6e-5);
        assertEquals(last.yMm(), point.number("ymm"), 6e-5);
    }

    /** On the drawing x runs right as on the sheet and y down; a line for each stretch of shutter. */
    @Test
    void trailsAreDrawnAsTheyLieOnTheSheet() {
        Trails trails = trails();
        String svg = TrailDrawing.of(TrailReport.of(trails, NOW), "made");
        List<String> lines = found(svg, "<polyline points=\"([^\"]*)\"");
        assertTrue(lines.size() >= trails.tracks().size(), lines.size() + " lines");
        Trail.Point first = trails.tracks().get(0).trail().points().get(0);
        String[] start = lines.get(0).split(" ")[0].split(",");
        assertEquals(first.xMm(), Double.parseDouble(start[0]), 0.01); // as drawings are written
        assertEquals(-first.yMm(), Double.parseDouble(start[1]), 0.01);
        long drawn = lines.stream().mapToLong(line -> line.split(" ").length).sum();
        assertEquals(trails.tracks().stream().mapToLong(track -> track.trail().points().size()).sum(), drawn);
        for (Trails.EdgePoint edge : trails.edges()) {
            String tick = "M" + Markup.number(margin(svg) + 40 + edge.point().xMm()) + " "
                    + Markup.number(margin(svg) + 30 - edge.point().yMm());
            assertTrue(svg.contains(tick), tick);
        }
    }

    private static double margin(String svg) {
        return Double.parseDouble(found(svg, "<svg x=\"([^\"]*)\"").get(0));
    }

    private static List<String> found(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        return matcher.results().map(result -> result.group(1)).toList();
    }

    @Test
    void exposuresAreTold() throws IOException {
        KnownSky.Computed computed = new KnownSky.Computed(SITE, Direction.ofDegrees(150, 35), SECOND.start(),
                false);
        ExposureQuestion question = new ExposureQuestion(Films.print(640, Reciprocity.power(1.1, 1)), LENS,
                Optional.of(new Frame(80, 60)),
                List.of(computed, new KnownSky.Measured(SkyBrightness.ofMagArcsec2(20))),
                        OptionalDouble.of(0.18),
                List.of(FIRST), TrailLimit.LEAST_DIFFERENCE_DENSITY, new ExposureQuestion.TimeFor(-2, 2));
        Exposures answer = Exposures.of(() -> EPHEMERIS, question);
        Shown shown = Shown.of(ExposureReport.of(answer, NOW));
        Shown situation = shown.at("situation");
        assertEquals(answer.light().sky().magArcsec2(), situation.named("skyMagArcsec2").node().asDouble(),
                6e-3);
        assertEquals(1, situation.named("skyCdM2").node().asDouble() / answer.light().sky().cdM2(), 1e-3);
        assertEquals(answer.light().otherSkies().get(0).brighterStops(), situation.list("other").get(0)
                .number("brighter"), 6e-4);
        assertEquals(20, situation.list("other").get(0).number("mag"), 1e-6);
        assertEquals(-2, situation.number("tone"), 1e-6);
        assertEquals(2, situation.named("sheets").node().asInt());
        assertEquals(640, situation.number("iso"), 1e-6);
        assertEquals(120, situation.number("focal"), 1e-6);
        assertEquals(10, situation.number("focus"), 1e-6);
        assertEquals(0.9, situation.number("transmittance"), 1e-6);
        assertEquals(answer.light().cornerStops().orElseThrow(), situation.named("cornerStops").node()
                .asDouble(), 6e-4);
        assertEquals(150, situation.number("azimuth"), 1e-5);
        assertEquals(35, situation.named("altitudeDeg").node().asDouble(), 1e-5);
        assertEquals(answer.light().aimDeclination().degrees(), situation.number("aimdeclination"), 1e-5);
        assertEquals(answer.light().stars().lossMag(), situation.number("extinction"), 6e-4);
        assertEquals(FIRST.start(), situation.list("earlier").get(0).instant("open"));
        assertEquals(FIRST.endExclusive(), situation.list("earlier").get(0).instant("close"));
        assertEquals(SECOND.start(), OffsetDateTime.parse(situation.named("openAt").node().asString())
                .toInstant());
        assertEquals(1, situation.at("ground").number("lux") / answer.light().ground().orElseThrow().lux(),
                1e-3);
        assertEquals(0.18, situation.at("ground").number("reflectance"), 1e-6);
        assertEquals(2, shown.list("exposures").size());
        assertTrue(answer.exposures().get(0).closeAt().isPresent() && answer.exposures().get(0).bracket()
                .isPresent());
        for (int i = 0; i < 2; i++) {
            assertRow(answer.exposures().get(i), shown.list("exposures").get(i));
        }
    }

    private static void assertRow(Exposures.AtFNumber at, Shown told) {
        assertEquals(at.row().fNumber().marked(), told.number("fnumber"), 1e-4);
        assertTime(at.row().exposure().meteredS(), told.at("metered"));
        assertTime(at.row().exposure().correctedS(), told.named("correctedS"));
        assertTime(at.row().exposure().lowS(), told.at("low"));
        assertTime(at.row().exposure().highS(), told.at("high"));
        assertEquals(at.closeAt().isEmpty(), told.empty("close"));
        at.closeAt().ifPresent(close -> assertTrue(Duration.between(close, told.instant("close")).abs()
                .toMillis() <= 1));
        assertEquals(at.row().exposure().reciprocityStops(), told.number("reciprocity"), 6e-4);
        assertEquals(at.row().skyToneStops(), told.named("skyToneStops").node().asDouble(), 6e-4);
        assertEquals(at.row().exposure().toneStops(), told.number("ground"), 6e-4);
        assertEquals(at.row().exposure().spreadStops(), told.number("spread"), 6e-4);
        assertEquals(at.row().trailLimitMag(), told.number("limit"), 6e-3);
        assertEquals(at.tNumber(), told.number("tnumber"), 6e-3);
        assertEquals(at.spot().togetherUm(), told.at("spot").number("together"), 0.06);
        assertEquals(at.spot().hyperfocalM(), told.at("spot").number("hyperfocal"), 6e-3);
        assertEquals(at.bracket().isEmpty(), told.empty("bracket"));
        at.bracket().map(Bracket::exposuresS).ifPresent(times -> {
            assertTime(times.get(0), new Shown(told.at("bracket").at("exposures").node().get(0)));
            assertTime(times.get(0) + times.get(1), told.at("bracket").at("together"));
        });
    }

    /** To five digits; of what never ends nothing. */
    private static void assertTime(double seconds, Shown told) {
        assertEquals(Double.isInfinite(seconds), told.node().isNull());
        if (Double.isFinite(seconds)) {
            assertEquals(seconds, told.node().asDouble(), 1e-4 * seconds);
        }
    }
}
