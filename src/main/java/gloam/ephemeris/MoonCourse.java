package gloam.ephemeris;

import gloam.ephemeris.Event.Kind;
import gloam.gear.Site;
import gloam.units.Interval;
import java.util.List;
import java.util.stream.Stream;

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
    /** Points of the curves: leaves 0.02″, parallax makes the Moon's altitude less even than the Sun's. */
    private static final int POINTS_A_DAY = 19;
    private static final double STEP_S = 1800;

    static MoonCourse of(Ephemeris ephemeris, Site site, Interval span) {
        List<Sightline> sightlines = SmoothCurve.instants(span, POINTS_A_DAY).stream()
                .map(at -> ephemeris.sightline(Body.MOON, site, at)).toList();
        double[] heights = sightlines.stream().mapToDouble(MoonCourse::overHorizon).toArray();
        double[] easts = sightlines.stream().mapToDouble(Sightline::east).toArray();
        return new MoonCourse(
                EventFinder.of(span, STEP_S, new SmoothCurve(span, heights)).crossings(0),
                EventFinder.of(span, STEP_S, new SmoothCurve(span, easts)).crossings(0));
    }

    /** Rise and set of the upper limb, and the upper culmination as passage of the meridian. */
    Stream<Event> events() {
        return Stream.concat(Event.ofCrossings(horizon, Kind.MOONRISE, Kind.MOONSET),
                meridian.all().stream().filter(crossing -> !crossing.rising())
                        .map(crossing -> new Event(crossing.at(), Kind.MOON_TRANSIT)));
    }

    /** Sine of the centre's altitude less what it is when the upper limb stands on the horizon. */
    private static double overHorizon(Sightline sightline) {
        double semidiameterRad = Math.asin(RADIUS_KM / sightline.distanceKm());
        return sightline.up() + Math.sin(REFRACTION_RAD + semidiameterRad);
    }
}
