package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;

/** Answers where a target stands over a site at an instant. */
public interface Ephemeris {

    /** The dates it covers. */
    Interval covers();

    /**
     * Apparent topocentric place of a target.
     *
     * @throws OutsideCoverage when the instant lies outside {@link #covers()}
     */
    SkyPosition position(Target target, Site site, Instant at);

    /**
     * Airless direction of a target: all that a search for events needs of its place.
     *
     * @throws OutsideCoverage when the instant lies outside {@link #covers()}
     */
    default Sightline sightline(Target target, Site site, Instant at) {
        SkyPosition position = position(target, site, at);
        return new Sightline(new Direction(position.azimuth(), position.airlessAltitude()).vector(),
                position.distanceKm());
    }

    /**
     * Place, phase and brightness of a body.
     *
     * @throws OutsideCoverage when the instant lies outside {@link #covers()}
     */
    Appearance appearance(Body body, Site site, Instant at);
}
