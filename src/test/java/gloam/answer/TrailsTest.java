package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.gear.Vignetting;
import gloam.proof.Raster;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TrailsTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Site SITE = Places.at(41, -2.15, 1080);
    private static final Instant EVENING = Instant.parse("2027-02-08T21:00:00Z");
    private static final double STAR_DEG_H = 15.041067;

    private static Camera camera(double focalLengthMm, double widthMm, double heightMm) {
        return new Camera("camera", new Lens(focalLengthMm, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40,
                0,
                Projection.RECTILINEAR, Vignetting.NONE), new Frame(widthMm, heightMm), Duration.ZERO);
    }

    private static FrameQuestion question(Site site, Direction aim, Duration lasts) {
        return new FrameQuestion(site, new Setting(Framing.level(aim, camera(100, 80, 60)),
                FNumber.exact(11), List.of(Interval.lasting(EVENING, lasts))),
                Duration.ofMinutes(10), true);
    }

    private static Trails bare(Site site, Direction aim, Duration lasts) {
        return Trails.of(EPHEMERIS, question(site, aim, lasts), Optional.empty(), List.of());
    }

    /** The first trail of the table, on a frame that holds all of it. */
    @Test
    void pointsFallWhereTheReferencePutsThem() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("erfa/trails.csv").stream().toList();
        ReferenceTable.Row first = rows.get(0);
        rows = rows.stream().filter(row -> row.text("star").equals(first.text("star"))
                && row.text("focal_length_mm").equals(first.text("focal_length_mm"))).toList();
        FrameQuestion question = new FrameQuestion(
                Places.at(first.number("latitude_deg"), first.number("longitude_deg"), first.number("height_m")),
                new Setting(Framing.level(Direction.ofDegrees(first.number("camera_azimuth_deg"),
                        first.number("camera_altitude_deg")), camera(first.number("focal_length_mm"), 1000, 1000)),
                        FNumber.exact(11),
                        List.of(new Interval(first.instant("utc"), rows.get(rows.size() - 1).instant("utc")))),
                Duration.ofMinutes(30), true);
        List<Trail.Point> points = Trails.of(OrekitEphemeris.builtIn(), question, Optional.empty(), List.of(
                Star.at(first.text("star"), first.number("ra_icrs_deg"), first.number("dec_icrs_deg"))))
                .tracks().get(0).trail().points();
        assertEquals(rows.size(), points.size());
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(rows.get(i).number("x_mm"), points.get(i).xMm(), 0.005); // the table's tolerance
            assertEquals(rows.get(i).number("y_mm"), points.get(i).yMm(), 0.005);
        }
    }

    /** The pole stands as high as the latitude; on the axis, the sky turns about it by 15.041° an hour. */
    @Test
    void theSkyTurnsAboutThePole() {
        Trails.PoleTurn north = bare(SITE, Direction.ofDegrees(0, 41), Duration.ofHours(2)).pole();
        assertTrue(north.pole().north() && north.pole().inFrame());
        assertEquals(41, north.pole().direction().altitude().degrees(), 1e-6);
        assertEquals(0, north.pole().place().orElseThrow().xMm(), 1e-6);
        assertEquals(0, north.pole().place().orElseThrow().yMm(), 1e-6);
        assertEquals(2 * STAR_DEG_H, north.turnDeg(), 1e-6); // the rate is given to 5e-7
        assertTrue(north.longestArcMm().orElseThrow() > 0);
        Trails.PoleTurn south = bare(Places.MID_SOUTH, Direction.ofDegrees(0, 41), Duration.ofHours(1))
                .pole();
        assertTrue(!south.pole().north() && !south.pole().inFrame());
        assertTrue(south.longestArcMm().isEmpty());
    }

    /**
     * On the equator of the sky, due south at 90° less the latitude, an image runs f · 15.041°/h in radians.
     */
    @Test
    void aStarOnTheEquatorRunsByTheFocalLength() {
        Trails.PointStar centre = bare(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1)).starsHere()
                .get(0);
        assertEquals(StarHere.Where.CENTRE, centre.star().where());
        // 0.02 ‰
        assertEquals(100 * Math.toRadians(STAR_DEG_H), 3600 * centre.star().motion().speedMmS(), 1e-3);
        assertTrue(!centre.point());
        assertTrue(bare(SITE, Direction.ofDegrees(0, 41), Duration.ofHours(1)).starsHere().get(0).point());
    }

    /** Half the frame over the focal length is the tangent of the angle off the axis: 21.80° and 16.70°. */
    @Test
    void edgesAreSeenWhereTheTangentSays() {
        List<Trails.EdgePoint> edges = bare(SITE, Direction.ofDegrees(180, 0), Duration.ofHours(1)).edges();
        assertEquals(10, edges.size());
        assertEquals(Trails.Edge.BOTTOM, edges.get(2).edge());
        assertEquals(-16.699, edges.get(2).seen().altitude().degrees(), 1e-3); // atan(0.3)
        assertEquals(Trails.Edge.LEFT, edges.get(7).edge());
        assertEquals(180 - 21.801, edges.get(7).seen().azimuth().degrees(), 1e-3); // atan(0.4)
    }

    @Test
    void theMoonIsLookedForTwelveHoursAhead() {
        Trails.MoonComing moon = bare(SITE, Direction.ofDegrees(0, 41), Duration.ofHours(1)).moon();
        assertEquals(EVENING.plus(Duration.ofHours(12)), moon.lookedUntil());
        assertTrue(moon.inFrameAt().isEmpty(), "the Moon never stands at the pole");
        Direction there = EPHEMERIS.position(Body.MOON, SITE, Instant.parse("2027-02-15T22:00:00Z"))
                .apparentDirection();
        FrameQuestion towards = new FrameQuestion(SITE, new Setting(Framing.level(there, camera(100, 80, 60)),
                FNumber.exact(11), List.of(Interval.lasting(Instant.parse("2027-02-15T19:00:00Z"), Duration.ofHours(1)))),
                Duration.ofMinutes(10), false);
        Instant comes = Trails.of(EPHEMERIS, towards, Optional.empty(), List.of()).moon().inFrameAt()
                .orElseThrow();
        assertTrue(comes.isAfter(Instant.parse("2027-02-15T19:00:00Z"))
                && comes.isBefore(Instant.parse("2027-02-15T22:00:00Z")), comes::toString);
    }

    /** What stands behind terrain draws nothing, though it is in the frame. */
    @Test
    void terrainHidesWhatRunsBehindIt() {
        Site walled = new Site("walled", SITE.latitude(), SITE.longitude(), 0, SITE.zone(), 21.6, 0.2,
                new Skyline(List.of(new Skyline.Point(0, 60))));
        List<Star> sky = List.of(star(0), star(60), star(120), star(180), star(240), star(300));
        FrameQuestion open = question(SITE, Direction.ofDegrees(180, 45), Duration.ofHours(2));
        FrameQuestion hidden = question(walled, Direction.ofDegrees(180, 45), Duration.ofHours(2));
        assertTrue(Trails.ofAll(EPHEMERIS, open, Optional.empty(), sky).tracks().stream()
                .anyMatch(track -> track.kind() == Trails.Kind.STAR));
        assertTrue(Trails.ofAll(EPHEMERIS, hidden, Optional.empty(), sky).tracks().isEmpty());
    }

    private static Star star(double rightAscensionDeg) {
        return new Star("star " + rightAscensionDeg, rightAscensionDeg, 0, 0, 0, 1, 0.6);
    }

    /** A bright star shows on a fast film and not on one that is four thousand times as slow. */
    @Test
    void aSheetTellsWhatShows() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        Trails.Mark fast = marked(question, 400);
        Trails.Mark slow = marked(question, 0.1);
        assertTrue(fast.records());
        assertTrue(!slow.records());
    }

    /** Of two stars in the frame that one is counted which shows. */
    @Test
    void whatMarksTheSheetIsCounted() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        Star here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere().get(0).star()
                .star();
        List<Star> stars = List.of(alike(here, "bright", 0), alike(here, "faint", 14));
        Trails trails = Trails.of(EPHEMERIS, question, Optional.of(sheet(question, 400)), stars);
        assertEquals(2, trails.tracks().size());
        assertEquals(new Trails.Recorded(1, Optional.empty(), List.of(), Optional.of("bright")), trails.recorded()
                .orElseThrow());
        assertTrue(Trails.of(EPHEMERIS, question, Optional.empty(), stars).recorded().isEmpty());
    }

    private static Star alike(Star star, String name, double magnitude) {
        return new Star(name, star.rightAscensionDeg(), star.declinationDeg(), 0, 0, magnitude, 0.6);
    }

    private static Trails.Mark marked(FrameQuestion question, double iso) {
        Trails.PointStar here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere()
                .get(0);
        Star bright = alike(here.star().star(), "bright", 0);
        return Trails.of(EPHEMERIS, question, Optional.of(sheet(question, iso)), List.of(bright)).tracks()
                .get(0).mark()
                .orElseThrow();
    }

    private static Sheet sheet(FrameQuestion question, double iso) {
        return new Sheet(question.site(), Films.print(iso, Reciprocity.none()), List.of(question.setting()));
    }

    @Test
    void anOpenShutterByDayIsRefused() {
        FrameQuestion noon = new FrameQuestion(SITE, new Setting(
                Framing.level(Direction.ofDegrees(0, 41), camera(100, 80, 60)),
                FNumber.exact(11), List.of(Interval.lasting(Instant.parse("2027-02-08T12:00:00Z"), Duration.ofHours(1)))),
                Duration.ofMinutes(10), false);
        assertThrows(BadInput.class, () -> Trails.of(EPHEMERIS, noon, Optional.empty(), List.of()));
    }

    @Test
    void aTrailHasAtMostTenThousandPoints() {
        assertThrows(BadInput.class, () -> new FrameQuestion(SITE, new Setting(
                Framing.level(Direction.ofDegrees(0, 41), camera(100, 80, 60)),
                FNumber.exact(11), List.of(Interval.lasting(EVENING, Duration.ofHours(3)))),
                Duration.ofSeconds(1), false));
    }

    /**
     * The corner's tone is less than the centre's by the fall-off, 4 log2 of the cosine, under an even sky
     * without film failure.
     */
    @Test
    void aProofTellsTheToneAtCentreAndCorners() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(0, 80), Duration.ofHours(1));
        SheetProof proof = SheetProof.of(EPHEMERIS, sheet(question, 400), OptionalDouble.empty(), List.of(),
                Raster.of(question.framing().camera().frame(), 64));
        assertEquals(64, proof.picture().widthPx());
        assertEquals(48, proof.picture().heightPx());
        assertEquals(List.of(StarHere.Where.values()), proof.tones().stream().map(SheetProof.PointTone::where)
                .toList());
        assertEquals(new Framing.Point(-40, 30), proof.tones().get(1).point());
        double fallOffStops = 2 * Math.log(1 / (1 + 0.25)) / Math.log(2); // 50 mm off the axis at 100 mm
        // the sky itself varies over the frame by less, and the corner's pixel is half a pixel inside
        assertEquals(fallOffStops, proof.tones().get(1).toneStops().get(0) - proof.tones().get(0).toneStops()
                .get(0), 0.25);
        assertEquals(Duration.ofMinutes(5), proof.trails().question().every());
    }

    /**
     * Towards a direction the aim is that; towards a target the camera turns until it stands at its place.
     */
    @Test
    void aPointingPutsItsTargetAtItsPlace() {
        Star vega = Star.at("Vega", 279.2347, 38.7837);
        Pointing.Standpoint from = new Pointing.Standpoint(EPHEMERIS, SITE, true);
        Pointing kept = new Pointing(camera(100, 80, 60), Angle.ZERO,
                new Pointing.Keeping(vega, new Framing.Point(10, -5)));
        Framing framing = kept.framing(from, EVENING.plus(Duration.ofHours(8)));
        SkyPosition there = EPHEMERIS.position(vega, SITE, EVENING.plus(Duration.ofHours(8)));
        Framing.Point at = framing.toFrame(new Direction(there.azimuth(), there.airlessAltitude()))
                .orElseThrow();
        assertEquals(10, at.xMm(), 1e-6);
        assertEquals(-5, at.yMm(), 1e-6);
        Direction south = Direction.ofDegrees(180, 49);
        assertEquals(south, new Pointing(camera(100, 80, 60), Angle.ZERO, new Pointing.Towards(south))
                .framing(from, EVENING).aim());
    }

    /**
     * 10 mm at 100 mm on the equator of the sky are 0.1 rad on the chord of the tangent: 2 · atan(0.05) at
     * 15.041°/h.
     */
    @Test
    void aTrailIsAsLongAsAskedFor() {
        Pointing.Standpoint from = new Pointing.Standpoint(EPHEMERIS, SITE, true);
        Pointing pointing = new Pointing(camera(100, 80, 60), Angle.ZERO,
                new Pointing.Towards(Direction.ofDegrees(180, 49)));
        Interval open = pointing.untilLength(from, EVENING, 10).orElseThrow();
        double wantedS = 3600 * Math.toDegrees(2 * Math.atan(0.05)) / STAR_DEG_H;
        assertEquals(wantedS, open.seconds(), 0.5); // the equator's bend on the sheet and 0.1 s of the search
        assertTrue(pointing.untilLength(from, EVENING, 1000).isEmpty());
    }
}
