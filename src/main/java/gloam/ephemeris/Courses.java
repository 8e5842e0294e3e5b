package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Sun and Moon over a site during a span of about a day, both looked at in the same instants: where the site
 * itself then is among the stars costs as much as one of them.
 */
record Courses(SunCourse sun, MoonCourse moon) {

    /** Leaves 0.02″ of the Moon, whose parallax makes its altitude less even than the Sun's. */
    private static final int POINTS_A_DAY = 19;

    static Courses of(Ephemeris ephemeris, Site site, Interval span) {
        List<Instant> instants = ChebyshevCurve.instants(span, POINTS_A_DAY);
        double[] sunSines = new double[instants.size()];
        List<Sightline> moons = new ArrayList<>();
        for (int i = 0; i < sunSines.length; i++) {
            sunSines[i] = ephemeris.sightline(Body.SUN, site, instants.get(i)).up();
            moons.add(ephemeris.sightline(Body.MOON, site, instants.get(i)));
        }
        return new Courses(SunCourse.of(span, sunSines), MoonCourse.of(span, moons));
    }
}
