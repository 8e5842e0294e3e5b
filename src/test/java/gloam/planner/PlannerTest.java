package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlannerTest {

    /** The darkest tone the film tells from black. */
    private static final Wish.Tone DARK_SKY = new Wish.Tone.AtMost(-2);
    /**
     * Half a minute at either end of a window in which the tone of a level sky moves by far less than this.
     */
    private static final double WHOLE_MINUTES_STOPS = 0.1;

    private static final Wish SOUTH = Trips.pointed("south", Direction.ofDegrees(180, 40), SkyKind.DARK,
            DARK_SKY);

    @Test
    void makesTheToneAskedFor() {
        Wish toned = Trips.pointed("toned", Direction.ofDegrees(180, 40), SkyKind.DARK,
                new Wish.Tone.Near(-2.5));
        assertEquals(-2.5, only(plan(Places.MID_NORTH, Trips.DARK_NIGHT, toned)).skyToneStops(),
                WHOLE_MINUTES_STOPS);
    }

    @Test
    void keepsTheTrailBetweenItsLengths() {
        Plan.Window window = only(plan(Places.MID_NORTH, Trips.DARK_NIGHT, Trips.withTrail(SOUTH, 30, 35)));
        assertTrue(window.trailLengthMm() >= 29.9 && window.trailLengthMm() <= 35.1, window::toString);
                // 0.3 % for polylines
    }

    @Test
    void namesThePairOfAimsThatExcludeEachOther() {
        // 120 min at 15°/h on 120 mm draw about 62 mm at the equator of the sky, and 120 min is the longest
        // wanted
        Reason.NoDuration reason = (Reason.NoDuration) refusal(plan(Places.MID_NORTH, Trips.DARK_NIGHT,
                Trips.withTrail(SOUTH, 70, 80)));
        assertEquals(DurationLimit.TRAIL, reason.leastBy());
        assertEquals(DurationLimit.EXPOSURE, reason.mostBy());
        assertEquals(120, reason.mostMin());
        assertTrue(reason.leastMin() > 120, reason::toString);
    }

    @Test
    void saysThatTheMoonSpoilsADarkSky() {
        Reason.Exclusive reason = (Reason.Exclusive) refusal(plan(Places.MID_NORTH, Trips.MOON_NIGHT, SOUTH));
        assertEquals(Optional.of(new Requirement.OfSky(SkyKind.Part.DARK)), reason.what());
        assertEquals(new Requirement.OfSky(SkyKind.Part.NO_MOONLIGHT), reason.other());
    }

    @Test
    void findsMoonlightOnlyWithTheMoonUp() {
        Wish moonlit = Trips.pointed("moonlit", Direction.ofDegrees(0, 30), SkyKind.MOONLIT,
                new Wish.Tone.Free());
        assertTrue(only(plan(Places.MID_NORTH, Trips.MOON_NIGHT, moonlit)).moon().position()
                .apparentAltitude()
                .degrees() > 0);
        Plan.NightPlan dark = plan(Places.MID_NORTH, Trips.DARK_NIGHT, moonlit);
        Reason.Exclusive reason = (Reason.Exclusive) refusal(dark);
        assertEquals(Optional.of(Requirement.Plain.SUN_DOWN), reason.what(), "the Moon is up by day alone");
        assertEquals(dark.night().sunDown(), reason.holds(), "to the instant");
        assertEquals(new Requirement.OfSky(SkyKind.Part.MOON_UP), reason.other());
        assertEquals(dark.night().moonUp(), reason.otherHolds(), "to the instant");
    }

    @Test
    void refusesAnAimIntoTheTerrain() {
        Site site = behind(new Skyline(List.of(new Skyline.Point(0, 45))));
        assertEquals(new Reason.Never(new Requirement.AimUp(Direction.ofDegrees(180, 40),
                Angle.ofDegrees(45))), refusal(plan(site, Trips.DARK_NIGHT, SOUTH)));
    }

    @Test
    void waitsForABodyToClearTheTerrain() {
        Wish mars = Trips.followed("mars", Body.MARS, SkyKind.ANY, new Wish.Tone.Free());
        Site site = behind(new Skyline(List.of(new Skyline.Point(0, 30))));
        Plan.NightPlan night = plan(site, Trips.DARK_NIGHT, mars);
        Interval open = only(night).open();
        AnalyticEphemeris ephemeris = new AnalyticEphemeris();
        assertTrue(ephemeris.position(Body.MARS, site, open.start()).apparentAltitude().degrees() > 29.9);
        assertTrue(ephemeris.position(Body.MARS, site, open.endExclusive()).apparentAltitude()
                .degrees() > 29.9);
        assertEquals(new Reason.Never(new Requirement.TargetUp(Body.MARS)),
                refusal(plan(behind(new Skyline(List.of(new Skyline.Point(0, 80)))), Trips.DARK_NIGHT,
                mars)));
    }

    @Test
    void putsALevelTrailAtTransit() {
        Wish level = Trips.wish("level",
                Trips.following(Body.MARS, Optional.of(Angle.ofDegrees(3))),
                SkyKind.ANY, new Wish.Tone.Free(), new Wish.Records.These(List.of(Body.MARS)));
        Plan.Window window = only(plan(Places.MID_NORTH, Trips.DARK_NIGHT, level));
        double leanDeg = Math.abs(Math.IEEEremainder(window.trailDirection().degrees(), 180));
        assertTrue(leanDeg <= 3.2, window::toString);
                // the window's middle is a node of 5 min: 0.2° of turning at most
        assertEquals(180, window.aim().azimuth().degrees(), 15);
                // level means due south, within the tolerance
    }

    @Test
    void explainsThePolarDay() {
        Plan.NightPlan night = plan(Places.POLAR, LocalDate.of(2027, 6, 20), SOUTH);
        assertEquals(new Reason.Never(Requirement.Plain.SUN_DOWN), refusal(night));
    }

    @Test
    void usesThePolarNight() {
        Wish any = Trips.pointed("any hour", Direction.ofDegrees(0, 60), SkyKind.DARK, DARK_SKY);
        // new Moon on 28 December 2027, far south: below the horizon
        assertEquals(1, plan(Places.POLAR, LocalDate.of(2027, 12, 28), any).windows().size());
    }

    @Test
    void findsTheSouthernPole() {
        Wish wheel = Trips.wish("wheel", new Aim.Point(Direction.ofDegrees(180, 31.4), Angle.ZERO),
                SkyKind.DARK, DARK_SKY, new Wish.Records.AtLeast(3));
        Plan.Window window = only(plan(Places.MID_SOUTH, Trips.DARK_NIGHT, wheel));
        assertTrue(window.trailLengthMm() < 2, window::toString);
        assertTrue(window.stars().recorded() >= 3, window::toString);
    }

    @Test
    void saysWhatIsServedOnAnotherNightAndWhenSheetsAreSpent() {
        Wish dear = Trips.repeated(SOUTH, 1, 3);
        Wish plain = Trips.pointed("north", Direction.ofDegrees(0, 40), SkyKind.DARK, DARK_SKY);
        Plan plan = new Planner(new AnalyticEphemeris(), Trips.stars()).plan(
                Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 2, 1, List.of(dear, plain)));
        assertEquals(List.of("south"), plan.nights().get(0).windows().stream()
                .map(window -> window.wish().name()).toList());
        assertEquals(new Reason.Served(List.of(Trips.DARK_NIGHT)), plan.nights().get(1).refused().get(0)
                .reason());
        assertEquals(Reason.Plain.SHEETS_SPENT, plan.nights().get(1).refused().get(1).reason());
    }

    @Test
    void saysWhichWishTookTheTime() {
        Wish dusk = Trips.pointed("dusk", Direction.ofDegrees(270, 20), SkyKind.DUSK,
                new Wish.Tone.Near(-1));
        Wish dearer = Trips.repeated(Trips.pointed("dearer dusk", Direction.ofDegrees(260, 20),
                SkyKind.DUSK, new Wish.Tone.Near(-1)), 1, 2);
        Plan plan = new Planner(new AnalyticEphemeris(), Trips.stars())
                .plan(Trips.trip("crowded", List.of(Places.MID_NORTH), Trips.DARK_NIGHT, Trips.DARK_NIGHT,
                        new gloam.gear.Camera("slow to change", Trips.CAMERA.lens(), Trips.CAMERA.frame(),
                                java.time.Duration.ofMinutes(240)), 5, List.of(dusk, dearer),
                        Weather.UNKNOWN));
        assertEquals(new Reason.TimeTaken(List.of("dearer dusk")), refusal(plan.nights().get(0)));
    }

    @Test
    void goesToTheSiteWhereTheWishesCanBeServed() {
        Site walled = behind(new Skyline(List.of(new Skyline.Point(0, 60))));
        Plan plan = new Planner(new AnalyticEphemeris(), Trips.stars()).plan(
                Trips.trip(List.of(walled, Places.MID_NORTH), Trips.DARK_NIGHT, 1, 3, List.of(SOUTH)));
        assertEquals(Places.MID_NORTH, plan.nights().get(0).night().site());
    }

    private static Site behind(Skyline skyline) {
        Site open = Places.MID_NORTH;
        return new Site("walled in", open.latitude(), open.longitude(), open.heightM(), open.zone(),
                open.darkSkyMagArcsec2(), open.extinctionMag(), skyline);
    }

    private static Plan.NightPlan plan(Site site, LocalDate date, Wish wish) {
        return new Planner(new AnalyticEphemeris(), Trips.stars())
                .plan(Trips.trip(List.of(site), date, 1, 3, List.of(wish))).nights().get(0);
    }

    private static Plan.Window only(Plan.NightPlan night) {
        assertEquals(1, night.windows().size(), () -> night.refused().toString());
        return night.windows().get(0);
    }

    private static Reason refusal(Plan.NightPlan night) {
        assertEquals(1, night.refused().size(), () -> night.windows().toString());
        return night.refused().get(0).reason();
    }
}
