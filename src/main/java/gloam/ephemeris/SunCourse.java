package gloam.ephemeris;

import gloam.ephemeris.Event.Kind;
import gloam.units.Angle;
import gloam.units.Crossings;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.util.List;

/**
 * How the Sun passes the horizon and the three twilights' limits during a span of about a day.
 *
 * @param horizon      its centre passing −50′
 * @param civil        passing −6°
 * @param nautical     passing −12°
 * @param astronomical passing −18°
 */
record SunCourse(Crossings horizon, Crossings civil, Crossings nautical, Crossings astronomical) {

    /**
     * Airless altitude of the Sun's centre at rise and set: 34′ of refraction and 16′ of semidiameter, by
     * convention.
     */
    private static final Angle HORIZON = Angle.ofDegrees(-50 / 60.0);
    private static final double STEP_S = 1800;

    /** The course through the sines of the Sun's altitude at the instants of a {@link ChebyshevCurve}. */
    static SunCourse of(Interval span, double[] sines) {
        FunctionOfTime finder = FunctionOfTime.ofSeconds(span, STEP_S, new ChebyshevCurve(span, sines));
        return new SunCourse(finder.crossings(HORIZON.sin()), finder.crossings(Twilight.CIVIL.limit().sin()),
                finder.crossings(Twilight.NAUTICAL.limit().sin()),
                finder.crossings(Twilight.ASTRONOMICAL.limit().sin()));
    }

    void addTo(List<Event> events) {
        Event.add(events, horizon, Kind.SUNRISE, Kind.SUNSET);
        Event.add(events, civil, Kind.CIVIL_DAWN, Kind.CIVIL_DUSK);
        Event.add(events, nautical, Kind.NAUTICAL_DAWN, Kind.NAUTICAL_DUSK);
        Event.add(events, astronomical, Kind.ASTRONOMICAL_DAWN, Kind.ASTRONOMICAL_DUSK);
    }
}
