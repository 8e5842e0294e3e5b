package gloam.answer;

import static gloam.answer.Framed.EPHEMERIS;
import static gloam.answer.Framed.EVENING;
import static gloam.answer.Framed.SITE;
import static gloam.answer.Framed.STAR_DEG_H;
import static gloam.answer.Framed.camera;
import static gloam.answer.Framed.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.FNumber;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.sheet.Setting;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What runs across a framing and where: the pole, the Moon, edges, and when nothing may. */
class TrailsTest {

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
                Places.at(first.number("latitude_deg"), first.number("longitude_deg"),
                        first.number("height_m")),
                new Setting(Framing.level(Direction.ofDegrees(first.number("camera_azimuth_deg"),
                        first.number("camera_altitude_deg")),
                                camera(first.number("focal_length_mm"), 1000, 1000)),
                        FNumber.exact(11),
                        List.of(new Interval(first.instant("utc"), rows.get(rows.size() - 1)
                                .instant("utc")))),
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

    /**
     * A level camera of 100 mm has an azimuth at the tangent of what it is off the aim, an altitude at that
     * of it as far above the middle line as the line's end is from the lens.
     */
    @Test
    void roundDirectionsAreSeenWhereTheTangentSays() {
        List<Trails.EdgePoint> edges = bare(SITE, Direction.ofDegrees(180, 0), Duration.ofHours(1)).edges();
        List<Integer> azimuths = List.of(160, 170, 180, 190, 200);
        List<Integer> altitudes = List.of(-10, 0, 10);
        assertEquals(8, edges.size());
        for (int i = 0; i < 5; i++) {
            assertEquals(Trails.Edge.BOTTOM, edges.get(i).edge());
            assertEquals(azimuths.get(i), edges.get(i).seen().azimuth().positive().degrees(), 1e-9);
            assertEquals(100 * Math.tan(Math.toRadians(azimuths.get(i) - 180)), edges.get(i).point().xMm(),
                    0.01);
            assertEquals(-30, edges.get(i).point().yMm());
        }
        assertEquals(-16.699, edges.get(2).seen().altitude().degrees(), 1e-3); // atan(0.3)
        for (int i = 0; i < 3; i++) {
            Trails.EdgePoint edge = edges.get(5 + i);
            assertEquals(Trails.Edge.LEFT, edge.edge());
            assertEquals(altitudes.get(i), edge.seen().altitude().degrees(), 1e-9);
            assertEquals(Math.hypot(100, 40) * Math.tan(Math.toRadians(altitudes.get(i))), edge.point().yMm(),
                    0.01);
            assertEquals(-40, edge.point().xMm());
        }
        assertEquals(180 - 21.801, edges.get(6).seen().azimuth().degrees(), 1e-3); // atan(0.4)
    }

    @Test
    void theMoonIsLookedForTwelveHoursAhead() {
        Trails.MoonComing moon = bare(SITE, Direction.ofDegrees(0, 41), Duration.ofHours(1)).moon();
        assertEquals(EVENING.plus(Duration.ofHours(12)), moon.lookedUntil());
        assertTrue(moon.inFrameAt().isEmpty(), "the Moon never stands at the pole");
        Direction there = EPHEMERIS.position(Body.MOON, SITE, Instant.parse("2027-02-15T22:00:00Z"))
                .apparentDirection();
        FrameQuestion towards = question(SITE, there,
                Interval.lasting(Instant.parse("2027-02-15T19:00:00Z"), Duration.ofHours(1)), false);
        Instant comes = Trails.of(EPHEMERIS, towards, Optional.empty(), List.of()).moon().inFrameAt()
                .orElseThrow();
        assertTrue(comes.isAfter(Instant.parse("2027-02-15T19:00:00Z"))
                && comes.isBefore(Instant.parse("2027-02-15T22:00:00Z")), comes::toString);
    }

    @Test
    void anOpenShutterByDayIsRefused() {
        FrameQuestion noon = question(SITE, Direction.ofDegrees(0, 41),
                Interval.lasting(Instant.parse("2027-02-08T12:00:00Z"), Duration.ofHours(1)), false);
        assertThrows(BadInput.class, () -> Trails.of(EPHEMERIS, noon, Optional.empty(), List.of()));
    }

    /**
     * The Sun has set behind the level horizon, but stands over the land below a mountain; looking away is
     * allowed.
     */
    @Test
    void theSunInTheFrameIsRefused() {
        Site mountain = new Site("mountain", SITE.latitude(), SITE.longitude(), 3000, SITE.zone(), 21.6, 0.2,
                new Skyline(List.of(new Skyline.Point(0, -1.5))));
        Instant sunset = Night.of(EPHEMERIS, mountain, LocalDate.of(2027, 2, 8)).sunDown().get(0).start();
        Interval open = Interval.lasting(sunset.plusSeconds(30), Duration.ofSeconds(30));
        Angle azimuth = EPHEMERIS.position(Body.SUN, mountain, open.middle()).azimuth();
        FrameQuestion towards = question(mountain, new Direction(azimuth, Angle.ofDegrees(5)), open, false);
        assertThrows(BadInput.class, () -> Trails.ofAll(EPHEMERIS, towards, Optional.empty(), List.of()));
        FrameQuestion away = question(mountain, Direction.ofDegrees(0, 5), open, false);
        assertEquals(List.of(), Trails.ofAll(EPHEMERIS, away, Optional.empty(), List.of()).tracks());
    }

    @Test
    void aTrailHasAtMostTenThousandPoints() {
        assertThrows(BadInput.class, () -> new FrameQuestion(SITE, new Setting(
                Framing.level(Direction.ofDegrees(0, 41), camera()),
                FNumber.exact(11), List.of(Interval.lasting(EVENING, Duration.ofHours(3)))),
                Duration.ofSeconds(1), false));
    }
}
