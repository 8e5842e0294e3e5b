package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.units.Crossings;
import gloam.units.Crossings.Crossing;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What the curves through a few places a day cost against the places themselves. */
class CourseErrorTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    /** A tenth of the 0.2 s allowed an event where the altitude changes by 1 arcsec a second. */
    private static final double ALLOWED_ARCSEC = 0.02;

    @Test
    void bodiesStandAtTheirLimitsAtTheEventsFound() {
        for (Site site : Places.all()) {
            for (int month = 1; month <= 12; month++) {
                Interval night = Night.spanOf(site, LocalDate.of(2027, month, 7 + month));
                Courses courses = Courses.of(EPHEMERIS, site, night);
                assertSun(courses.sun(), site);
                for (Crossing crossing : courses.moon().horizon().all()) {
                    Appearance moon = EPHEMERIS.appearance(Body.MOON, site, crossing.at());
                    double limbDeg = moon.position().airlessAltitude().plus(moon.semidiameter()).degrees();
                    assertEquals(0, (limbDeg + 34 / 60.0) * 3600, ALLOWED_ARCSEC, site.name());
                }
            }
        }
    }

    private static void assertSun(SunCourse sun, Site site) {
        assertAltitude(sun.horizon(), site, -50 / 60.0);
        assertAltitude(sun.civil(), site, -6);
        assertAltitude(sun.nautical(), site, -12);
        assertAltitude(sun.astronomical(), site, -18);
    }

    private static void assertAltitude(Crossings crossings, Site site, double limitDeg) {
        for (Crossing crossing : crossings.all()) {
            double altitudeDeg = EPHEMERIS.position(Body.SUN, site, crossing.at()).airlessAltitude()
                    .degrees();
            assertEquals(0, (altitudeDeg - limitDeg) * 3600, ALLOWED_ARCSEC, site.name());
        }
    }
}
