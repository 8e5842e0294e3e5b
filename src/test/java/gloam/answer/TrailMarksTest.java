package gloam.answer;

import static gloam.answer.Framed.EPHEMERIS;
import static gloam.answer.Framed.SITE;
import static gloam.answer.Framed.STAR_DEG_H;
import static gloam.answer.Framed.alike;
import static gloam.answer.Framed.question;
import static gloam.answer.Framed.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which trails show on a sheet, and what is told of them. */
class TrailMarksTest {

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
        assertEquals(new Trails.Recorded(1, Optional.empty(), List.of(), Optional.of("bright")),
                trails.recorded()
                .orElseThrow());
        assertEquals(List.of(false, true), trails.tracks().stream().map(Trails.Track::hidden).toList());
        Trails bare = Trails.of(EPHEMERIS, question, Optional.empty(), stars);
        assertTrue(bare.recorded().isEmpty());
        assertEquals(List.of(false, false), bare.tracks().stream().map(Trails.Track::hidden).toList());
    }

    /** Of a catalogue, what does not show is counted as crossing and left out. */
    @Test
    void aCatalogueIsToldAsFarAsItShows() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        Star here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere().get(0).star()
                .star();
        Trails trails = Trails.ofAll(EPHEMERIS, question, Optional.of(sheet(question, 400)),
                List.of(alike(here, "bright", 0), alike(here, "faint", 14)));
        assertEquals(List.of("bright"), trails.tracks().stream().map(Trails.Track::name).toList());
        assertEquals(2, trails.catalogue().orElseThrow().crossingStars());
        assertEquals(6, trails.catalogue().orElseThrow().toMag());
        assertEquals(Optional.of("bright"), trails.recorded().orElseThrow().brightestStar());
        assertEquals(2, Trails.ofAll(EPHEMERIS, question, Optional.empty(),
                List.of(alike(here, "bright", 0), alike(here, "faint", 14))).tracks().size());
    }

    /** Of the frame's longer side, 80 mm. */
    @Test
    void aTrailTellsItsShareOfTheFrame() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        Star here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere().get(0).star()
                .star();
        Trails.Track track = Trails.of(EPHEMERIS, question, Optional.empty(), List.of(here)).tracks().get(0);
        double mm = 100 * 2 * Math.tan(Math.toRadians(STAR_DEG_H / 2));
        assertEquals(mm, track.trail().lengthMm(), 0.01); // on the chord
        assertEquals(mm / 80, track.frameShare(), 0.01 / 80);
        assertEquals(Trails.Kind.STAR, track.kind());
    }

    /** The Moon of 15 February 2027 stands by Uranus, in a frame that is centred on it. */
    @Test
    void theMoonIsToldAsSuchAndMarksTheSheet() {
        Interval open = Interval.lasting(Instant.parse("2027-02-15T20:00:00Z"), Duration.ofMinutes(10));
        Direction there = EPHEMERIS.position(Body.MOON, SITE, open.middle()).apparentDirection();
        FrameQuestion question = question(SITE, there, open, false);
        Trails trails = Trails.ofAll(EPHEMERIS, question, Optional.of(sheet(question, 1)), List.of());
        Trails.Track moon = trails.tracks().get(0);
        assertEquals(List.of("moon", "uranus"), trails.tracks().stream().map(Trails.Track::name).toList());
        assertEquals(List.of(Trails.Kind.MOON, Trails.Kind.PLANET),
                trails.tracks().stream().map(Trails.Track::kind).toList());
        assertEquals(EPHEMERIS.appearance(Body.MOON, SITE, open.middle()).magnitude(), moon.magnitude(),
                1e-9);
        assertTrue(moon.mark().orElseThrow().records());
        assertEquals(List.of("moon"), trails.recorded().orElseThrow().bodies());
        assertEquals(0, trails.recorded().orElseThrow().stars());
        assertEquals(Optional.empty(), trails.recorded().orElseThrow().brightestStar());
    }

    @Test
    void whatHasNoKnownMagnitudeHasNoMark() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        Star here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere().get(0).star()
                .star();
        Trails.Track track = Trails.of(EPHEMERIS, question, Optional.of(sheet(question, 400)),
                List.of(alike(here, "unknown", Double.NaN))).tracks().get(0);
        assertTrue(track.mark().isEmpty());
        assertFalse(track.hidden());
    }

    /**
     * On the equator the limit is that of the centre; at the pole that of stars elsewhere in the frame,
     * half-way to its edge.
     */
    @Test
    void theLimitIsToldOfStarsThatRun() {
        FrameQuestion equator = question(SITE, Direction.ofDegrees(180, 49), Duration.ofHours(1));
        FrameQuestion pole = question(SITE, Direction.ofDegrees(0, 41), Duration.ofHours(1));
        Trails.SheetLimit running = Trails.of(EPHEMERIS, equator, Optional.of(sheet(equator, 400)), List.of())
                .sheet().orElseThrow();
        Trails.SheetLimit turning = Trails.of(EPHEMERIS, pole, Optional.of(sheet(pole, 400)), List.of())
                .sheet().orElseThrow();
        assertEquals(Optional.empty(), running.elsewhere());
        // 15 mm off the axis at 100 mm: atan(0.15) is 8.53°
        assertEquals(90 - 8.53, turning.elsewhere().orElseThrow().degrees(), 0.01);
        // slower by the sine of 8.53° its stars show fainter: 2.5 log10 of it is 2.07 mag, the sky as dark,
        // the air nearly as thick

        assertEquals(2.07, turning.trailLimitMag() - running.trailLimitMag(), 0.1);
    }

    private static Trails.Mark marked(FrameQuestion question, double iso) {
        Trails.PointStar here = Trails.of(EPHEMERIS, question, Optional.empty(), List.of()).starsHere()
                .get(0);
        Star bright = alike(here.star().star(), "bright", 0);
        return Trails.of(EPHEMERIS, question, Optional.of(sheet(question, iso)), List.of(bright)).tracks()
                .get(0).mark()
                .orElseThrow();
    }
}
