package gloam.ephemeris;

import gloam.ephemeris.Event.Kind;
import gloam.units.Crossings;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.util.List;

/**
 * How the Moon passes the horizon and the meridian during a span of about a day.
 *
 * @param horizon  its upper limb passing −34′, airless
 * @param meridian its centre passing to the western half of the sky (falling) and to the eastern (rising)
 */
record MoonCourse(Crossings horizon, Crossings meridian) {

    /** Refraction at the horizon, by convention. */
    private static final double REFRACTION_RAD = Math.toRadians(34 / 60.0);
    private static final double RADIUS_KM = 1737.4;
    private static final double STEP_S = 1800;

    /** The course through the Moon's directions at the instants of a {@link ChebyshevCurve}. */
    static MoonCourse of(Interval span, List<Sightline> sightlines) {
        double[] heights = new double[sightlines.size()];
        double[] easts = new double[sightlines.size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = overHorizon(sightlines.get(i));
            easts[i] = sightlines.get(i).direction().getX();
        }
        return new MoonCourse(
                FunctionOfTime.ofSeconds(span, STEP_S, new ChebyshevCurve(span, heights)).crossings(0),
                FunctionOfTime.ofSeconds(span, STEP_S, new ChebyshevCurve(span, easts)).crossings(0));
    }

    /** Rise and set of the upper limb, and the upper culmination as passage of the meridian. */
    void addTo(List<Event> events) {
        Event.add(events, horizon, Kind.MOONRISE, Kind.MOONSET);
        for (Crossings.Crossing crossing : meridian.all()) {
            if (!crossing.rising()) {
                events.add(new Event(crossing.at(), Kind.MOON_TRANSIT));
            }
        }
    }

    /** Sine of the centre's altitude less what it is when the upper limb stands on the horizon. */
    private static double overHorizon(Sightline sightline) {
        double semidiameterRad = Math.asin(RADIUS_KM / sightline.distanceKm());
        return sightline.up() + Math.sin(REFRACTION_RAD + semidiameterRad);
    }
}
