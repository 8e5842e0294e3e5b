package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Approaches;
import gloam.answer.HighStands;
import gloam.answer.InstantSky;
import gloam.answer.LevelSpans;
import gloam.answer.MoonAt;
import gloam.answer.NightCourse;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Event;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.light.LightSource;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Cameras;
import gloam.units.Angle;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * What reports of the sky say, against the answers they are made of: a site in the south, two hours east of
 * Greenwich.
 */
class SkyReportsTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Site SITE = Places.MID_SOUTH;
    private static final LocalDate EVENING = LocalDate.of(2027, 2, 15);
    private static final Instant AT = Instant.parse("2027-02-15T19:00:00.1234Z");
    private static final Instant NOW = Instant.parse("2027-01-01T10:00:00.0005Z");
    private static final double DEG = 6e-6;

    private static void assertPosition(SkyPosition position, Shown shown) {
        assertEquals(position.azimuth().positive().degrees(), shown.number("azimuth"), DEG);
        assertEquals(position.apparentAltitude().degrees(), shown.number("apparent", "altitude"), DEG);
        assertEquals(position.airlessAltitude().degrees(), shown.number("airless", "altitude"), DEG);
        assertEquals(position.rightAscension().positive().degrees(), shown.number("ascension"), DEG);
        assertEquals(position.declination().degrees(), shown.number("declination"), DEG);
    }

    private static void assertMoon(MoonAt moon, Shown shown) {
        assertEquals(moon.seen().illuminatedFraction(), shown.number("illuminated"), DEG);
        assertEquals(moon.seen().phaseAngle().degrees(), shown.number("phaseangle"), 6e-5);
        assertEquals(moon.age().orElseThrow().toMillis() / 86.4e6, shown.number("age"), 6e-5);
        assertEquals(2 * moon.seen().semidiameter().degrees(), shown.number("diameter"), 6e-7);
        assertEquals(moon.seen().position().distanceKm(), shown.number("distance"), 1e-3);
        assertEquals(moon.seen().magnitude(), shown.number("magnitude"), 6e-3);
        assertEquals(4, shown.list("quarters").size());
        for (int i = 0; i < 4; i++) {
            assertEquals(moon.quarters().get(i).name().label(), shown.list("quarters").get(i).text("what"));
            assertSame(moon.quarters().get(i).at(), shown.list("quarters").get(i).named("at"));
        }
    }

    /** To a tenth of a second, by the site's clocks. */
    private static void assertSame(Instant at, Shown shown) {
        OffsetDateTime time = OffsetDateTime.parse(shown.node().asString());
        assertEquals(ZoneOffset.ofHours(2), time.getOffset());
        assertTrue(Duration.between(at, time).abs().toMillis() <= 50, at + " " + time);
    }

    @Test
    void anInstantTellsEveryBodyAndStar() throws IOException {
        Star star = Star.at("a star", 219.9, -60.8);
        InstantSky sky = InstantSky.of(EPHEMERIS, SITE, AT, List.of(star));
        Shown shown = Shown.of(InstantReport.of(sky, NOW));
        assertEquals(OffsetDateTime.parse("2027-01-01T12:00:00.001+02:00"), shown.time("generated"));
        assertEquals(OffsetDateTime.parse("2027-02-15T21:00:00.123+02:00"),
                OffsetDateTime.parse(shown.named("at").node()
                .asString()));
        List<Shown> bodies = shown.list("bodies");
        assertEquals(Body.values().length, bodies.size());
        for (int i = 0; i < bodies.size(); i++) {
            Appearance seen = EPHEMERIS.appearance(Body.values()[i], SITE, AT);
            assertEquals(Body.values()[i].label(), bodies.get(i).text("name"));
            assertPosition(seen.position(), bodies.get(i));
            assertEquals(seen.magnitude(), bodies.get(i).number("magnitude"), 6e-3);
            assertEquals(seen.illuminatedFraction(), bodies.get(i).number("illuminated"), DEG);
            assertEquals(seen.phaseAngle().degrees(), bodies.get(i).number("phase"), 6e-5);
            assertEquals(2 * seen.semidiameter().degrees(), bodies.get(i).number("diameter"), 6e-7);
            assertEquals(1, bodies.get(i).number("distance") / seen.position().distanceKm(), 1e-8);
        }
        assertPosition(EPHEMERIS.position(star, SITE, AT), shown.list("stars").get(0));
        assertMoon(sky.moon(), shown.at("moon"));
        assertEquals(sky.zenith().total().magArcsec2(), shown.at("light").number("zenith"), 6e-3);
        assertEquals(1, shown.at("light").number("ground") / sky.groundLx(), 1e-3);
        for (LightSource source : LightSource.values()) {
            assertEquals(sky.zenith().of(source).cdM2(), shown.at("light")
                    .number(source.name().toLowerCase(Locale.ROOT), "cdm2"), 1e-3 * sky.zenith().total()
                            .cdM2());
        }
    }

    @Test
    void aNightTellsItsHours() throws IOException {
        NightCourse course = NightCourse.of(EPHEMERIS, SITE, EVENING, Optional.empty());
        Shown shown = Shown.of(NightReport.of(course, NOW));
        List<Shown> hours = shown.list("hours");
        assertEquals(course.hours().size(), hours.size());
        for (int i = 0; i < hours.size(); i++) {
            NightCourse.Hour hour = course.hours().get(i);
            assertSame(hour.at(), hours.get(i).named("at"));
            assertEquals(hour.sun().apparentAltitude().degrees(), hours.get(i).number("sun", "altitude"),
                    DEG);
            assertEquals(hour.moon().apparentAltitude().degrees(), hours.get(i).number("moon", "altitude"),
                    DEG);
            assertEquals(hour.zenith().magArcsec2(), hours.get(i).number("zenith"), 6e-3);
            assertEquals(1, hours.get(i).number("ground") / hour.groundLx(), 1e-3);
            Shown planet = hours.get(i).list("planets").get(2);
            assertEquals("mars", planet.text("name"));
            SkyPosition mars = hour.planets().get(2).position();
            assertEquals(mars.azimuth().positive().degrees(), planet.number("azimuth"), DEG);
            assertEquals(mars.apparentAltitude().degrees(), planet.number("altitude"), DEG);
        }
        assertMoon(course.moon(), shown.named("moon"));
        Shown planet = shown.list("planets").get(1);
        assertEquals("venus", planet.text("name"));
        assertEquals(course.planets().get(1).magnitude(), planet.number("magnitude"), 6e-3);
        assertEquals(course.planets().get(1).illuminatedFraction(), planet.number("illuminated"), DEG);
        Shown night = shown.list("nights").get(0);
        assertEquals(EVENING.toString(), night.named("night").node().asString());
        assertEquals(course.rank().night().events().size(), night.list("events").size());
        for (int i = 0; i < night.list("events").size(); i++) {
            Event event = course.rank().night().events().get(i);
            assertEquals(event.what().label(), night.list("events").get(i).text("what"));
            assertSame(event.at(), night.list("events").get(i).named("at"));
        }
        assertEquals(course.rank().moonlessDarkHours(), night.number("moonless", "hours"), 6e-4);
        assertEquals(course.rank().darkHours(), night.named("darkHours").node().asDouble(), 6e-4);
        assertEquals(course.rank().score(), night.number("score"), 6e-4);
    }

    @Test
    void highStandsAreToldInHours() throws IOException {
        HighStands high = HighStands.of(EPHEMERIS, SITE,
                new HighStands.Wanted("south", Star.at("south", 100, -50),
                Angle.ofDegrees(30)), EVENING, EVENING.plusDays(1));
        Shown shown = Shown.of(HighReport.of(high, NOW));
        assertEquals(30, shown.number("altitude"), DEG);
        assertEquals("south", shown.text("target"));
        assertEquals(2, shown.list("nights").size());
        HighStands.HighNight night = high.nights().get(1);
        Shown told = shown.list("nights").get(1);
        assertEquals(EVENING.plusDays(1).toString(), told.text("night"));
        assertEquals(night.together().toMillis() / 3.6e6, told.named("hours").node().asDouble(), 6e-4);
        assertEquals(night.moonless().toMillis() / 3.6e6, told.number("moonless"), 6e-4);
        HighStands.Stand stand = night.stands().get(0);
        Shown span = told.list("spans").get(0);
        assertSame(stand.stand().span().start(), span.named("from"));
        assertSame(stand.stand().span().endExclusive(), span.named("to"));
        assertSame(stand.stand().highestAt(), span.named("highestAt"));
        assertEquals(stand.highest().apparentAltitude().degrees(), span.number("altitude"), DEG);
        assertEquals(stand.highest().azimuth().positive().degrees(), span.number("azimuth"), DEG);
        assertTrue(!HighReport.of(high, NOW).empty());
        assertTrue(HighReport.of(new HighStands(SITE, "none", Angle.ZERO, List.of()), NOW).empty());
    }

    @Test
    void meetingsAreTold() throws IOException {
        Approaches found = Approaches.of(EPHEMERIS, SITE, Angle.ofDegrees(8), EVENING, EVENING.plusDays(20));
        Shown shown = Shown.of(ApproachesReport.of(found, NOW));
        assertEquals(found.meetings().size(), shown.list("approaches").size());
        assertTrue(!found.meetings().isEmpty(), "a case with something to tell");
        for (int i = 0; i < found.meetings().size(); i++) {
            Approaches.Meeting meeting = found.meetings().get(i);
            Shown told = shown.list("approaches").get(i);
            assertSame(meeting.approach().at(), told.named("at"));
            assertEquals(((Body) meeting.approach().one()).label(), told.text("body"));
            assertEquals(((Body) meeting.approach().other()).label(), told.named("other").node().asString());
            assertEquals(meeting.approach().separation().degrees(), told.number("separation"), DEG);
            assertEquals(meeting.one().azimuth().positive().degrees(), told.number("azimuth"), DEG);
            assertEquals(meeting.one().apparentAltitude().degrees(), told.named("apparentAltitudeDeg").node()
                    .asDouble(), DEG);
            assertEquals(meeting.sun().apparentAltitude().degrees(), told.number("sun", "altitude"), DEG);
        }
        assertTrue(ApproachesReport.of(new Approaches(SITE, List.of()), NOW).empty());
        assertTrue(!ApproachesReport.of(found, NOW).empty());
    }

    @Test
    void levelTrailsAreTold() throws IOException {
        Camera camera = new Camera("camera",
                new Lens(100, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40,
                0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 60), Duration.ZERO);
        LevelSpans found = LevelSpans.of(EPHEMERIS, SITE, new LevelSpans.Wanted(Body.JUPITER,
                Cameras.levelTrails(camera, 10), EVENING, EVENING.plusDays(2)));
        Shown shown = Shown.of(LevelReport.of(found, NOW));
        Shown question = shown.at("question");
        assertEquals("jupiter", question.text("body"));
        assertEquals(10, question.number("within"), DEG);
        assertEquals(0, question.number("wanted"), DEG);
        assertEquals(100, question.number("focal"), DEG);
        assertEquals(EVENING.toString(), question.text("from"));
        assertEquals(EVENING.plusDays(2).toString(), question.named("to").node().asString());
        assertTrue(!found.spans().isEmpty(), "a case with something to tell");
        assertEquals(found.spans().size(), shown.list("spans").size());
        for (int i = 0; i < found.spans().size(); i++) {
            LevelSpans.Span span = found.spans().get(i);
            Shown told = shown.list("spans").get(i);
            assertEquals(span.evening().toString(), told.text("night"));
            assertSame(span.level().span().start(), told.named("from"));
            assertSame(span.level().span().endExclusive(), told.named("to"));
            assertSame(span.level().best(), told.named("bestAt"));
            assertEquals(span.level().off().degrees(), told.number("off"), 6e-4);
            assertEquals(span.level().framing().aim().azimuth().degrees(), told.number("azimuth"), DEG);
            assertEquals(span.level().framing().aim().altitude().degrees(), told.number("altitude"), DEG);
            assertEquals(span.drawn().orElseThrow().lengthMm(), told.number("length"), 6e-5);
            assertEquals(span.drawn().orElseThrow().sagittaMm(), told.number("sagitta"), 6e-5);
            assertEquals(span.moonUp(), told.at("moon").node().asBoolean());
        }
    }
}
