package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.support.Places;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SkylinePassageTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    /** A level east and west, a wall of 60° from 170° to 175°, a slope up to the north. */
    private static final Skyline WALL = new Skyline(List.of(new Skyline.Point(0, 8), new Skyline.Point(80, 0),
            new Skyline.Point(170, 0), new Skyline.Point(170, 60), new Skyline.Point(175, 60),
            new Skyline.Point(175, 0), new Skyline.Point(280, 0)));
    private static final Site SITE = withSkyline(Places.MID_NORTH, WALL);
    private static final Interval DAY = Interval.lasting(Night.spanOf(SITE, LocalDate.of(2027, 3, 9)).start()
            .minus(Duration.ofHours(12)), Duration.ofDays(1));

    @Test
    void theSunGoesBehindTheWallAndComesBack() {
        List<SkylinePassage> passages = SkylinePassage.of(EPHEMERIS, SITE, Body.SUN, DAY);
        assertEquals(List.of("sun-over-skyline", "sun-under-skyline", "sun-over-skyline",
                "sun-under-skyline"),
                passages.stream().map(SkylinePassage::label).toList());
        assertEquals(170, azimuthDeg(passages.get(1)), 0.001, "the near edge of the wall");
        assertEquals(175, azimuthDeg(passages.get(2)), 0.001, "the far edge");
    }

    @Test
    void overALevelHorizonTheSunRisesAsConventionHasIt() {
        SkylinePassage first = SkylinePassage.of(EPHEMERIS, SITE, Body.SUN, DAY).get(0);
        Night night = Night.of(EPHEMERIS, SITE, LocalDate.of(2027, 3, 8));
        Event sunrise = night.events().stream().filter(event -> event.what() == Event.Kind.SUNRISE)
                .findFirst()
                .orElseThrow();
        // At 620 m the air lifts 2 arcmin less than the 34 of convention: later, but less than half a minute.
        double lateS = Duration.between(sunrise.at(), first.at()).toSeconds();
        assertTrue(lateS > 0 && lateS < 30, () -> lateS + " s");
    }

    @Test
    void passagesAreThoseSeenBySecond() {
        List<SkylinePassage> expected = new ArrayList<>();
        boolean before = over(0);
        for (int s = 1; s < 86_400; s++) {
            boolean now = over(s);
            if (now != before) {
                expected.add(new SkylinePassage(Body.MOON, DAY.start().plusSeconds(s), now));
            }
            before = now;
        }
        List<SkylinePassage> found = SkylinePassage.of(EPHEMERIS, SITE, Body.MOON, DAY);
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < found.size(); i++) {
            assertEquals(expected.get(i).over(), found.get(i).over());
            assertEquals(0, Duration.between(expected.get(i).at(), found.get(i).at())
                    .toMillis() / 1000.0, 1.01);
        }
    }

    private static boolean over(int second) {
        Appearance moon = EPHEMERIS.appearance(Body.MOON, SITE, DAY.start().plusSeconds(second));
        Angle limb = moon.position().airlessAltitude().plus(moon.semidiameter());
        return Refraction.ofHeight(SITE.heightM()).apparent(limb).degrees()
                >= WALL.altitudeAt(moon.position().azimuth()).degrees();
    }

    private static double azimuthDeg(SkylinePassage passage) {
        return EPHEMERIS.position(passage.body(), SITE, passage.at()).azimuth().degrees();
    }

    private static Site withSkyline(Site site, Skyline skyline) {
        return new Site(site.name(), site.latitude(), site.longitude(), site.heightM(), site.zone(),
                site.darkSkyMagArcsec2(), site.extinctionMag(), skyline);
    }
}
