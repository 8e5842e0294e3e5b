package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.HighStands.HighNight;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.MoonPhase;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkylinePassage;
import gloam.ephemeris.Star;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.planner.NightRank;
import gloam.planner.Progress;
import gloam.planner.SkyTaste;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers about nights, under a sky that stands still with the Sun 30° down and the Moon 20° up or down. */
class NightsTest {

    private static final LocalDate EVENING = LocalDate.of(2027, 2, 8);

    private static StandingSky sky(double moonDeg) {
        return new StandingSky(Direction.ofDegrees(0, -30), Direction.ofDegrees(180, moonDeg), 384_400,
                Angle.ofDegrees(90));
    }

    /** The sky stands still, so that the target, put where the Moon is, is as high all night. */
    @ParameterizedTest
    @CsvSource({"20, 20, 24, 0", "20, 20.1, 0, 0", "-20, -20.1, 24, 24"})
    void highStandsFillTheNightOrNone(double moonDeg, double leastDeg, double hours, double moonlessHours) {
        HighNight night = HighStands.of(sky(moonDeg), Places.at(50, 10, 0),
                new HighStands.Wanted("target", Star.at("target", 180, moonDeg), Angle.ofDegrees(leastDeg)),
                EVENING, EVENING).nights()
                .get(0);
        assertEquals(EVENING, night.evening());
        assertEquals(hours, night.together().toMinutes() / 60.0, 1e-9);
        assertEquals(moonlessHours, night.moonless().toMinutes() / 60.0, 1e-9);
        night.stands().forEach(stand ->
                assertEquals(moonDeg, stand.highest().apparentAltitude().degrees(), 1e-9));
    }

    /** Nights of 24, 23 and 25 hours have 25, 24 and 26 full hours, both noons among them. */
    @Test
    void aNightHasAnHourForEachFullHourOfItsClocks() {
        assertEquals(25, hours(EVENING));
        assertEquals(24, hours(Places.CLOCKS_FORWARD));
        assertEquals(26, hours(Places.CLOCKS_BACK));
    }

    private static int hours(LocalDate evening) {
        return NightCourse.of(sky(20), Places.CLOCK_CHANGE, evening, Optional.empty()).hours().size();
    }

    @Test
    void anHourTellsWhereEverythingStands() {
        NightCourse.Hour hour = course(sky(20), Places.CLOCK_CHANGE).hours().get(3);
        assertEquals(Instant.parse("2027-02-08T15:00:00Z"), hour.at());
        assertEquals(-30, hour.sun().apparentAltitude().degrees(), 1e-9);
        assertEquals(20, hour.moon().apparentAltitude().degrees(), 1e-9);
        assertEquals(List.of(Body.MERCURY, Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN, Body.URANUS,
                Body.NEPTUNE),
                hour.planets().stream().map(NightCourse.PlanetPlace::planet).toList());
        assertTrue(hour.groundLx() > 0);
    }

    /**
     * Under terrain that reaches 10°, the Moon of that night passes it later than the horizon, and no level
     * skyline is told of.
     */
    @Test
    void passagesOverTerrainAreToldBodyByBody() {
        Site open = Places.MID_NORTH;
        Site walled = new Site("walled", open.latitude(), open.longitude(), open.heightM(), open.zone(), 21.6,
                0.2,
                new Skyline(List.of(new Skyline.Point(0, 10))));
        assertEquals(List.of(), course(new AnalyticEphemeris(), open).passages());
        NightCourse course = course(new AnalyticEphemeris(), walled);
        List<Body> bodies = course.passages().stream().map(SkylinePassage::body).toList();
        assertEquals(bodies.stream().sorted().toList(), bodies);
        assertEquals(Body.SUN, bodies.get(0));
        assertFalse(course.passages().get(0).over());
        assertTrue(course.passages().get(0).at().isBefore(course.rank().night().sunDown().get(0).start()));
        assertEquals(2, bodies.stream().filter(body -> body == Body.SUN).count());
    }

    /** Full Moon 2024-01-25 17:54, new Moon 2024-04-08 18:21 UT, as almanacs print them; from memory. */
    @Test
    void theMoonIsAsOldAsTheAlmanacSays() {
        Instant at = Instant.parse("2024-04-10T18:21:00Z");
        MoonAt moon = MoonAt.of(OrekitEphemeris.builtIn(), Places.MID_NORTH, at);
        assertEquals(MoonPhase.Name.WAXING_CRESCENT, moon.phase());
        assertEquals(2 * 86_400, moon.age().orElseThrow().toSeconds(), 31); // printed to the minute
        assertEquals(List.of(MoonPhase.Name.FIRST_QUARTER, MoonPhase.Name.FULL_MOON,
        MoonPhase.Name.LAST_QUARTER,
                MoonPhase.Name.NEW_MOON), moon.quarters().stream().map(MoonPhase.Quarter::name).toList());
    }

    @Test
    void nightsLieAroundTheNextNewMoonAndNoneIsPast() {
        Instant weeksBefore = Instant.parse("2024-03-20T12:00:00Z");
        assertEquals(LocalDate.of(2024, 4, 5).datesUntil(LocalDate.of(2024, 4, 12)).toList(),
                around(weeksBefore));
        assertEquals(LocalDate.of(2024, 4, 8).datesUntil(LocalDate.of(2024, 4, 12)).toList(),
                around(Instant.parse("2024-04-08T12:00:00Z")));
    }

    private static List<LocalDate> around(Instant now) {
        return NewMoonNights.after(OrekitEphemeris.builtIn(), now, ZoneOffset.UTC, 3).evenings();
    }

    @Test
    void aStayIsWorthTheMeanOfItsNights() {
        List<LocalDate> evenings = EVENING.datesUntil(EVENING.plusDays(4)).toList();
        Ranking ranking = Ranking.of(new AnalyticEphemeris(), StarCatalogue.builtIn(),
                new Ranking.Wanted(List.of(Places.MID_NORTH), evenings,
                Optional.empty(), SkyTaste.DARK, OptionalInt.of(3), 10, true), Progress.NONE);
        assertEquals(4, ranking.nights().size());
        assertEquals(1, ranking.stays().size(), "the two that there are share dates");
        for (int i = 1; i < ranking.nights().size(); i++) {
            assertTrue(ranking.nights().get(i - 1).score() >= ranking.nights().get(i).score());
        }
        ranking.stays().stream().map(Ranking.ShownStay::stay).forEach(stay -> assertEquals(
                stay.nights().stream().mapToDouble(NightRank::score).sum() / 3, stay.score(), 1e-12));
    }

    @Test
    void everySiteIsRankedOnEveryNight() {
        List<LocalDate> evenings = List.of(EVENING, EVENING.plusDays(1));
        List<NightRank> nights = Ranking.of(new AnalyticEphemeris(), StarCatalogue.builtIn(),
                new Ranking.Wanted(List.of(Places.MID_NORTH, Places.EQUATOR), evenings, Optional.empty(),
                        SkyTaste.DARK, OptionalInt.empty(), 10, true), Progress.NONE).nights();
        assertEquals(4, nights.size());
        for (Site site : List.of(Places.MID_NORTH, Places.EQUATOR)) {
            assertEquals(evenings, nights.stream().map(NightRank::night)
                    .filter(night -> night.site().equals(site))
                    .map(Night::date).sorted().toList());
        }
    }

    @Test
    void aStayIsNoLongerThanTheNightsThereAre() {
        assertThrows(BadInput.class, () -> new Ranking.Wanted(List.of(Places.MID_NORTH), List.of(EVENING),
                Optional.empty(), SkyTaste.DARK, OptionalInt.of(2), 10, true));
    }

    @Test
    void noRunIsMadeWhereNoneIsAskedFor() {
        assertTrue(Ranking.of(new AnalyticEphemeris(), StarCatalogue.builtIn(),
                new Ranking.Wanted(List.of(Places.MID_NORTH), List.of(EVENING),
                Optional.empty(), SkyTaste.DARK, OptionalInt.empty(), 10, true), Progress.NONE).stays()
                .isEmpty());
    }

    private static NightCourse course(Ephemeris ephemeris, Site site) {
        return NightCourse.of(ephemeris, site, EVENING, Optional.empty());
    }
}
